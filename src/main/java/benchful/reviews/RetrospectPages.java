package benchful.reviews;

import benchful.plans.stored.ClassTroubles;
import benchful.web.tasks.Tried;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** What all classes have shown over time. */
@Path("/reviews")
@Produces(MediaType.TEXT_HTML)
class RetrospectPages {
    private final ClassTroubles troubles;

    RetrospectPages(ClassTroubles troubles) {
        this.troubles = troubles;
    }

    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance retrospect(Retrospect page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        List<Review> reviews = Review.lately();
        List<Tried<Retrospect.Part>> parts = reviews.stream().map(r -> troubles.tried(r.craftClass().line(), () -> Retrospect.Part.of(r))).toList();
        return Templates.retrospect(Retrospect.of(Tried.worked(parts), Retrospect.sayings(reviews), Tried.troubles(parts)));
    }
}
