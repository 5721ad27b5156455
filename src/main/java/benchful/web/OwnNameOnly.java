package benchful.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Answers only to this machine's own names. A page of a stranger in the tutor's browser can let its own name lead to this machine,
 * and the browser would then let it read everything here; but it cannot change the name under which it asks.
 */
public final class OwnNameOnly {
    private static final Set<String> OWN = Set.of("localhost", "127.0.0.1", "[::1]", "::1");

    private final boolean openNetwork;

    OwnNameOnly(@ConfigProperty(name = LoopbackGuard.SETTING, defaultValue = "false") boolean openNetwork) {
        this.openNetwork = openNetwork;
    }

    @ServerRequestFilter(preMatching = true)
    Optional<Response> filter(ContainerRequestContext request) {
        String name = request.getUriInfo().getRequestUri().getHost();
        return openNetwork || OWN.contains(name) ? Optional.empty() : Optional.of(refusal());
    }

    private static Response refusal() {
        return Response.status(421, "Misdirected Request")
                .type(MediaType.TEXT_PLAIN_TYPE.withCharset("UTF-8"))
                .entity("Benchful answers here only as 127.0.0.1 or localhost. Open the address that it shows when it starts.")
                .build();
    }
}
