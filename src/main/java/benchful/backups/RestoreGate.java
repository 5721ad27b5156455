package benchful.backups;

import benchful.backups.tables.RestoreWatch;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Turns changes away while any instance puts a backup back: they would land in data that are about to go. Pages that only show
 * something are answered as ever.
 */
class RestoreGate {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");
    private static final String SECONDS = "30";

    private final RestoreWatch watch;

    RestoreGate(RestoreWatch watch) {
        this.watch = watch;
    }

    @CheckedTemplate(basePath = "backups")
    static class Templates {
        static native TemplateInstance busy();

        private Templates() {}
    }

    /** Before any filter that remembers what was sent: it will be sent again. */
    @ServerRequestFilter(priority = Priorities.AUTHENTICATION)
    Optional<Response> filter(ContainerRequestContext request) {
        String path = request.getUriInfo().getPath();
        boolean free = SAFE.contains(request.getMethod()) || path.startsWith("/api/") || path.startsWith("/backups");
        return free || !watch.isRestoring() ? Optional.empty() : Optional.of(busy());
    }

    private static Response busy() {
        return Response.fromResponse(Pages.shown(Response.Status.SERVICE_UNAVAILABLE.getStatusCode(), Templates.busy()))
                .header(HttpHeaders.RETRY_AFTER, SECONDS).build();
    }
}
