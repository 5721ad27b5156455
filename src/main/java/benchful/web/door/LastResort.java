package benchful.web.door;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.jboss.logging.Logger;

/**
 * Words for what fails before a page is reached, such as a request that names no host: the platform would answer with the name
 * of its own fault.
 */
@ApplicationScoped
class LastResort {
    private static final Logger LOG = Logger.getLogger(LastResort.class);

    void stand(@Observes Router router) {
        router.route().order(-Order.HEADERS).failureHandler(LastResort::answer);
    }

    private static void answer(RoutingContext routing) {
        if (routing.response().headWritten()) {
            routing.next();
            return;
        }
        StrictHeaders.on(routing);
        refusal(routing).end(routing);
    }

    private static Refusal refusal(RoutingContext routing) {
        if (routing.request().authority() == null) {
            return Door.NO_HOST;
        }
        if (routing.statusCode() >= 400 && routing.statusCode() < 500) {
            return new Refusal(routing.statusCode(), "Not possible", "The request could not be read.");
        }
        LOG.errorf(routing.failure(), "Fault before a page was reached, at %s", routing.request().path());
        return new Refusal(500, "Something went wrong here", "This is a fault of the program, not yours. What was saved before is safe.");
    }
}
