package benchful.reviews;

import benchful.core.learning.Habit;
import benchful.projects.Project;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** What the classes of a project have in common: which steps run over again and again. */
@Path("/projects/{id: \\d+}/reviews")
@Produces(MediaType.TEXT_HTML)
class ProjectReviewsPages {
    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance project(Project project, List<Review> reviews, List<Habit> habits);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        Project project = Project.byId(id).orElseThrow(NotFoundException::new);
        List<Review> reviews = Review.of(project);
        return Templates.project(project, reviews, Habit.over(reviews.stream().map(Review::steps).toList()));
    }
}
