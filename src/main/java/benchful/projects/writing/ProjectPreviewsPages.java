package benchful.projects.writing;

import benchful.catalogue.HazardNames;
import benchful.web.door.Costly;
import benchful.web.forms.SentForm;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** What the form of a project would print as it stands, for its page to show while somebody types. Nothing is stored. */
@Path("/projects/previews")
@Produces(MediaType.TEXT_HTML)
class ProjectPreviewsPages {
    private final HazardNames hazards;
    private final Previews previews;

    ProjectPreviewsPages(HazardNames hazards, Previews previews) {
        this.hazards = hazards;
        this.previews = previews;
    }

    @CheckedTemplate(basePath = "projects")
    static class Templates {
        static native TemplateInstance preview(Preview preview, SpecForm f);

        private Templates() {}
    }

    @POST
    @Costly
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public TemplateInstance show(MultipartFormDataInput input) {
        ProjectFormFiller forms = ProjectFormFiller.of(SentForm.of(input), hazards.byId());
        return Templates.preview(previews.of(forms, forms.project().orElse(null)), forms.shown());
    }
}
