package benchful.web.door;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Says in words that what is sent is too large. A browser shows an answer only once it has sent everything, so what is too large
 * is read on and thrown away, within reason; without that it would show a page of its own about a broken connection.
 */
@ApplicationScoped
class BodyLimit {
    static final String SETTING = "quarkus.http.limits.max-body-size";
    private static final int MEGABYTE = 1024 * 1024;
    /** So many times the limit is read on for the sake of an answer. */
    private static final int PATIENCE = 40;

    private final long most;

    BodyLimit(@ConfigProperty(name = SETTING) MemorySize most) {
        this.most = most.asLongValue();
    }

    void stand(@Observes Filters filters) {
        filters.register(this::check, Order.SIZE);
    }

    Refusal refusal() {
        return new Refusal(413, "Too large", "What was sent is too large: the limit is %d MB. Nothing was stored. Make it smaller, or send it in parts.".formatted(most / MEGABYTE));
    }

    private void check(RoutingContext routing) {
        HttpServerRequest request = routing.request();
        long announced = announced(request);
        if (announced <= most) {
            routing.next();
        } else if (announced > most * PATIENCE || request.headers().contains("Expect")) {
            refusal().end(routing);
        } else {
            readOn(routing);
        }
    }

    /** [bytes]; 0 where the sender does not say, and the limit shows while it is read. */
    private static long announced(HttpServerRequest request) {
        String length = request.getHeader("Content-Length");
        return length != null && length.matches("\\d{1,18}") ? Long.parseLong(length) : 0;
    }

    private void readOn(RoutingContext routing) {
        routing.request()
                .handler(thrownAway -> { })
                .endHandler(done -> refusal().end(routing))
                .resume();
    }
}
