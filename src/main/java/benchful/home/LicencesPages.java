package benchful.home;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** What the program is built from, and under which licences. */
@Path("/licences")
@Produces(MediaType.TEXT_HTML)
public class LicencesPages {

    @CheckedTemplate(basePath = "home")
    static class Templates {
        static native TemplateInstance licences(List<Licences.Licence> licences);

        private Templates() {}
    }

    @GET
    public TemplateInstance show() {
        return Templates.licences(Licences.ofThisBuild());
    }
}
