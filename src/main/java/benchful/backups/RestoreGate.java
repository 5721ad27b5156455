package benchful.backups;

import benchful.backups.AdvisoryLock.Purpose;
import benchful.web.Pages;
import io.agroal.api.AgroalDataSource;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.sql.SQLException;
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

    private final AgroalDataSource database;

    RestoreGate(AgroalDataSource database) {
        this.database = database;
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
        return free || !isRestoring() ? Optional.empty() : Optional.of(busy());
    }

    /** Where the database can't be asked the change goes on, to fail or to wait for the tables with words of its own, and keep what was typed. */
    private boolean isRestoring() {
        try {
            return AdvisoryLock.held(database, Purpose.RESTORE);
        } catch (SQLException e) {
            return false;
        }
    }

    private static Response busy() {
        return Response.fromResponse(Pages.shown(Response.Status.SERVICE_UNAVAILABLE.getStatusCode(), Templates.busy()))
                .header(HttpHeaders.RETRY_AFTER, SECONDS).build();
    }
}
