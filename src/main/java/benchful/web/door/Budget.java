package benchful.web.door;

import benchful.web.Pages;
import benchful.web.Stranger;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;

/**
 * How much costly work may be under way at once: a little for each client, which is known by its address, and a little more for
 * all together. Whoever asks for more is told so, and when to ask again; nobody else waits for it. Work counts until it is
 * finished, also where its client has gone.
 */
@Singleton
class Budget {
    static final int OF_ONE = 8;
    static final int OF_ALL = 32;
    private static final int RETRY_AFTER = 5;
    private static final Refusal TOO_MUCH = new Refusal(429, "Too much at once",
            "%d pieces of work that you asked for are still under way. Wait until one is finished, and ask again in %d seconds.".formatted(OF_ONE, RETRY_AFTER), RETRY_AFTER);
    private static final Refusal BUSY = new Refusal(503, "Busy just now",
            "The program is busy with other work. Try again in %d seconds.".formatted(RETRY_AFTER), RETRY_AFTER);

    private final Map<String, Integer> underway = new HashMap<>();
    private int all;

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
        String client = routing.request().remoteAddress().hostAddress();
        Optional<Refusal> refusal = begin(client);
        if (refusal.isEmpty()) {
            ((ResteasyReactiveRequestContext) request.getServerRequestContext()).registerCompletionCallback(end -> end(client));
        }
        return refusal.map(r -> r.answer(request.getUriInfo().getPath()));
    }

    synchronized Optional<Refusal> begin(String client) {
        if (all >= OF_ALL) {
            return Optional.of(BUSY);
        }
        if (underway.getOrDefault(client, 0) >= OF_ONE) {
            return Optional.of(TOO_MUCH);
        }
        all++;
        underway.merge(client, 1, Integer::sum);
        return Optional.empty();
    }

    synchronized void end(String client) {
        all--;
        underway.computeIfPresent(client, (name, count) -> count == 1 ? null : count - 1);
    }

    /** How many clients have work under way. */
    synchronized int clients() {
        return underway.size();
    }
}
