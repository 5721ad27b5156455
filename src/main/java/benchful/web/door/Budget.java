package benchful.web.door;

import benchful.web.Pages;
import benchful.web.Stranger;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;

/**
 * How much costly work may be under way at once. Who asks for more waits for a turn, and is told to ask again only where many
 * wait already or the turn does not come: a family, a class or all behind one proxy share an address, so a person's page is
 * never counted by it. A program is: it may ask for a little at once, so that one alone never takes all places. Work counts
 * until it is finished, also where its client has gone.
 */
@Singleton
class Budget {
    static final int OF_PROGRAM = 8;
    static final int OF_ALL = 32;
    private static final int MOST_WAITING = 64;
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int RETRY_AFTER = 5;
    private static final Refusal TOO_MUCH = new Refusal(429, "Too much at once",
            "%d pieces of work that you asked for are still under way. Wait until one is finished, and ask again in %d seconds.".formatted(OF_PROGRAM, RETRY_AFTER), RETRY_AFTER);
    private static final Refusal BUSY = new Refusal(503, "Busy just now",
            "The program is busy with other work. Try again in %d seconds.".formatted(RETRY_AFTER), RETRY_AFTER);

    private final Semaphore places = new Semaphore(OF_ALL, true);
    private final Map<String, Integer> programs = new HashMap<>();
    private final int mostWaiting;
    private final Duration patience;

    @Inject
    Budget() {
        this(MOST_WAITING, PATIENCE);
    }

    /**
     * @param mostWaiting for their turn, beside those at work
     * @param patience how long one of them waits at most
     */
    Budget(int mostWaiting, Duration patience) {
        this.mostWaiting = mostWaiting;
        this.patience = patience;
    }

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance doorstep(String address);

        private Templates() {}
    }

    @Costly
    @ServerRequestFilter
    Optional<Response> admit(ResteasyReactiveContainerRequestContext request, RoutingContext routing) {
        if (Stranger.leadsHere(routing.request())) {
            // A foreign page can send the window here again and again; a person presses the link once.
            return Optional.of(Response.ok(Templates.doorstep(Pages.own(routing.request().uri())).render(), Refusal.HTML).build());
        }
        Optional<String> program = Optional.of(routing.request().remoteAddress().hostAddress()).filter(client -> Refusal.isForPrograms(routing.request().path()));
        Optional<Refusal> refusal = begin(program);
        if (refusal.isEmpty()) {
            ((ResteasyReactiveRequestContext) request.getServerRequestContext()).registerCompletionCallback(end -> end(program));
        }
        return refusal.map(r -> r.answer(request.getUriInfo().getPath()));
    }

    /** @param program the address that a program asks from; nothing for a page */
    Optional<Refusal> begin(Optional<String> program) {
        if (!program.map(this::count).orElse(true)) {
            return Optional.of(TOO_MUCH);
        }
        if (!enter()) {
            program.ifPresent(this::forget);
            return Optional.of(BUSY);
        }
        return Optional.empty();
    }

    void end(Optional<String> program) {
        places.release();
        program.ifPresent(this::forget);
    }

    private boolean enter() {
        try {
            return places.tryAcquire() || places.getQueueLength() < mostWaiting && places.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** False where it has as much under way as it may. */
    private synchronized boolean count(String program) {
        boolean more = programs.getOrDefault(program, 0) < OF_PROGRAM;
        if (more) {
            programs.merge(program, 1, Integer::sum);
        }
        return more;
    }

    private synchronized void forget(String program) {
        programs.computeIfPresent(program, (name, count) -> count == 1 ? null : count - 1);
    }

    /** How many programs have work under way. */
    synchronized int programs() {
        return programs.size();
    }
}
