package benchful.web.door;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How much may be sent: what a form or a file of a page holds, and more at the few addresses that write it to the disk as it comes.
 * Says in words that what is sent is too large. A browser shows an answer only once it has sent everything, so what is too large
 * is read on and thrown away, within reason; without that it would show a page of its own about a broken connection.
 */
@ApplicationScoped
class BodyLimit {
    private static final int MEGABYTE = 1024 * 1024;
    /** So many times the limit of a page is read on for the sake of an answer. */
    private static final int PATIENCE = 40;
    private static final Refusal NO_LENGTH = new Refusal(411, "Not possible", "Say in a Content-Length header how much is sent.");

    private final long most;
    private final long largest;
    private final List<String> largeAt;

    /**
     * @param most that any page takes
     * @param largest that is taken where large files are
     * @param largeAt paths that write a form's file to the disk as it comes
     */
    BodyLimit(@ConfigProperty(name = "benchful.body.most") MemorySize most, @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize largest,
            @ConfigProperty(name = "benchful.body.large-at") List<String> largeAt) {
        this.most = most.asLongValue();
        this.largest = largest.asLongValue();
        this.largeAt = largeAt;
    }

    void stand(@Observes Filters filters) {
        filters.register(this::check, Order.SIZE);
        filters.register(this::bound, Order.AFTER_PLATFORM);
    }

    /** Of what any page takes. */
    Refusal refusal() {
        return refusal(most);
    }

    private static Refusal refusal(long most) {
        return new Refusal(413, "Too large", "What was sent is too large: the limit is %d MB. Nothing was stored. Make it smaller, or send it in parts.".formatted(most / MEGABYTE));
    }

    private long most(HttpServerRequest request) {
        return largeAt.contains(request.path()) ? largest : most;
    }

    private void check(RoutingContext routing) {
        HttpServerRequest request = routing.request();
        long announced = announced(request);
        if (announced == 0 && request.headers().contains("Transfer-Encoding") && Door.isForm(request)) {
            NO_LENGTH.end(routing);
        } else if (announced <= most(request)) {
            routing.next();
        } else if (announced > most * PATIENCE || request.headers().contains("Expect")) {
            refusal(most(request)).end(routing);
        } else {
            readOn(routing);
        }
    }

    /** Where the sender does not say how much it is, the platform counts up to what is put here; its own limit is the largest. */
    private void bound(RoutingContext routing) {
        if (routing.get(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY) != null) {
            routing.put(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY, most);
        }
        routing.next();
    }

    /** [bytes]; 0 where the sender does not say, and the limit shows while it is read. */
    private static long announced(HttpServerRequest request) {
        String length = request.getHeader("Content-Length");
        return length != null && length.matches("\\d{1,18}") ? Long.parseLong(length) : 0;
    }

    private void readOn(RoutingContext routing) {
        routing.request()
                .handler(thrownAway -> { })
                .endHandler(done -> refusal(most(routing.request())).end(routing))
                .resume();
    }
}
