package benchful.projects.writing;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.HazardNames;
import benchful.web.Pages;
import benchful.web.forms.SentForm;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Projects that are being written: kept as they are, gone on with, thrown away. */
@Path("/projects/drafts")
@Produces(MediaType.TEXT_HTML)
class ProjectDraftsPages {
    private final Clock clock;
    private final HazardNames hazards;
    private final Removals removals;
    private final FormShower shower;

    ProjectDraftsPages(Clock clock, HazardNames hazards, Removals removals, FormShower shower) {
        this.clock = clock;
        this.hazards = hazards;
        this.removals = removals;
        this.shower = shower;
    }

    @GET
    @Path("{id: \\d+}")
    @Transactional
    public TemplateInstance show(@RestPath long id) {
        return shower.page(Pages.existing(ProjectDraft.class, id));
    }

    /** Whatever the form holds, whole or not. */
    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response keep(MultipartFormDataInput input) {
        ProjectFormFiller forms = ProjectFormFiller.of(SentForm.of(input), hazards.byId());
        return QuarkusTransaction.requiringNew().call(() -> Pages.seeOther(
                "/projects/drafts/" + ProjectDraft.keep(forms.draft(), forms.project().orElse(null), forms, clock.instant()).id()));
    }

    @POST
    @Path("{id: \\d+}/removal")
    @Transactional
    public Response discard(@RestPath long id) {
        ProjectDraft draft = Pages.existing(ProjectDraft.class, id);
        return removals.remove(new Thing("draft", draft.name(), "/projects/drafts/" + id), "/projects", draft::delete);
    }
}
