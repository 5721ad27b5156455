package benchful.samples;

import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** Loading the sample classes and removing them. */
@Path("/samples")
@Produces(MediaType.TEXT_HTML)
class SamplesPages {
    private final Samples samples;

    SamplesPages(Samples samples) {
        this.samples = samples;
    }

    @CheckedTemplate(basePath = "samples")
    static class Templates {
        static native TemplateInstance kept(List<String> names);

        private Templates() {}
    }

    @POST
    public Response create() {
        samples.load();
        return Pages.seeOther("/");
    }

    @POST
    @Path("removal")
    public Response delete() {
        List<String> kept = samples.remove();
        return kept.isEmpty() ? Pages.seeOther("/") : Pages.again(Templates.kept(kept));
    }
}
