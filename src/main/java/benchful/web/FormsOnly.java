package benchful.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Pages change things only through forms, whose token is checked: another kind of body, which that check passes over, is
 * turned away. The API, which takes files and no cookies, is left out.
 */
public final class FormsOnly {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    @ServerRequestFilter
    Optional<Response> filter(ContainerRequestContext request) {
        boolean free = SAFE.contains(request.getMethod()) || request.getUriInfo().getPath().startsWith("/api/");
        return free || isForm(request.getMediaType())
                ? Optional.empty()
                : Optional.of(Response.status(Response.Status.UNSUPPORTED_MEDIA_TYPE).build());
    }

    private static boolean isForm(MediaType type) {
        return type != null
                && (MediaType.APPLICATION_FORM_URLENCODED_TYPE.isCompatible(type)
                        || MediaType.MULTIPART_FORM_DATA_TYPE.isCompatible(type));
    }
}
