package benchful.start;

import benchful.web.door.StartNotice;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.vertx.http.HttpServerStart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.ObservesAsync;
import jakarta.inject.Named;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

/** What was started by a double press is stopped from its pages. Elsewhere there is no such page: others may be at work there. */
@ApplicationScoped
@Named("desk")
@Path("/stop")
@Produces(MediaType.TEXT_HTML)
public class StopPages {
    /** The page that says so is sent first. */
    private static final Executor SOON = CompletableFuture.delayedExecutor(700, TimeUnit.MILLISECONDS);

    private final Optional<Desk> desk = Desk.one();

    @CheckedTemplate(basePath = "start")
    static class Templates {
        static native TemplateInstance stop();

        static native TemplateInstance stopped();

        private Templates() {}
    }

    /** Whether the program was started so. */
    public boolean isOwn() {
        return desk.isPresent();
    }

    @GET
    public TemplateInstance stop() {
        return own(Templates.stop());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public TemplateInstance stopped() {
        TemplateInstance page = own(Templates.stopped());
        SOON.execute(Quarkus::asyncExit);
        return page;
    }

    private TemplateInstance own(TemplateInstance page) {
        return desk.map(d -> page).orElseThrow(NotFoundException::new);
    }

    void ready(@ObservesAsync HttpServerStart start) throws IOException {
        if (desk.isPresent()) {
            desk.get().ready(StartNotice.address(start.options()));
        }
    }

    void over(@Observes ShutdownEvent end) throws IOException {
        if (desk.isPresent()) {
            desk.get().over();
        }
    }
}
