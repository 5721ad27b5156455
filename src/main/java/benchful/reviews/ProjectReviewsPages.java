package benchful.reviews;

import benchful.classes.ClassLine;
import benchful.core.learning.Habit;
import benchful.core.learning.StepReview;
import benchful.plans.stored.ClassTroubles;
import benchful.projects.Project;
import benchful.web.Pages;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** What the classes of a project have in common: which steps run over again and again. */
@Path("/projects/{id: \\d+}/reviews")
@Produces(MediaType.TEXT_HTML)
class ProjectReviewsPages {
    private final ClassTroubles troubles;

    ProjectReviewsPages(ClassTroubles troubles) {
        this.troubles = troubles;
    }

    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance project(Project project, List<ClassLine> classes, List<Habit> habits, List<Trouble> troubles);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        Project project = Pages.existing(Project.class, id);
        List<Tried<List<StepReview>>> steps = Review.of(project).stream().map(this::tried).toList();
        return Templates.project(project, Review.reviewed(project), Habit.over(Tried.worked(steps)), Tried.troubles(steps));
    }

    private Tried<List<StepReview>> tried(Review review) {
        return troubles.tried(review.craftClass().line(), review::steps);
    }
}
