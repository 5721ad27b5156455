package benchful.home;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** The page that says what each word means. */
@Path("/words")
class WordsPages {
    @CheckedTemplate(basePath = "home")
    static class Templates {
        static native TemplateInstance words(List<Words.Group> groups);

        private Templates() {}
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance index() {
        return Templates.words(Words.groups());
    }
}
