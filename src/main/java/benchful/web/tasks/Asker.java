package benchful.web.tasks;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ArcContainer;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.ext.web.RoutingContext;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Whoever waits for what a thread works out: the client of its request, as long as the connection stands, or whom the work was
 * bound to. Long work asks now and then, so that none goes on for a page that was closed.
 */
public final class Asker {
    private static final ThreadLocal<BooleanSupplier> BOUND = new ThreadLocal<>();

    private Asker() {}

    /** @throws CancellationException where nobody waits any more */
    public static void check() {
        if (isGone()) {
            throw new CancellationException("Nobody waits for this any more.");
        }
    }

    /** Whether nobody waits any more for what this thread works out. */
    public static boolean isGone() {
        return question().getAsBoolean();
    }

    /** Asks the same from another thread. */
    static BooleanSupplier question() {
        BooleanSupplier bound = BOUND.get();
        return bound == null ? ofRequest() : bound;
    }

    /** Works for somebody else than the client of the request. */
    public static <T> T during(BooleanSupplier gone, Supplier<T> work) {
        BooleanSupplier before = BOUND.get();
        BOUND.set(gone);
        try {
            return work.get();
        } finally {
            BOUND.set(before);
        }
    }

    /** Works for the same as before, but no longer than until this is true. */
    public static <T> T until(BooleanSupplier over, Supplier<T> work) {
        BooleanSupplier gone = question();
        return during(() -> over.getAsBoolean() || gone.getAsBoolean(), work);
    }

    private static BooleanSupplier ofRequest() {
        ArcContainer container = Arc.container();
        if (container == null || !container.requestContext().isActive()) {
            return () -> false;
        }
        RoutingContext request = container.instance(CurrentVertxRequest.class).get().getCurrent();
        return request == null ? () -> false : () -> request.response().closed();
    }
}
