package benchful.documents;

import benchful.projects.Project;
import benchful.web.Pages;
import benchful.web.door.Costly;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;

/** Handouts of a project alone, for whoever makes the piece without a class. */
@Path("/projects/{id: \\d+}/handouts")
class ProjectHandoutsPages {
    private final LooseHandouts handouts;
    private final WithoutClass loose;

    ProjectHandoutsPages(LooseHandouts handouts, WithoutClass loose) {
        this.handouts = handouts;
        this.loose = loose;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance index(@PathParam("id") long id, UriInfo uri) {
        Project project = Pages.existing(Project.class, id);
        return handouts.page("/projects/" + id, project.name(), loose.of(project), uri.getQueryParameters());
    }

    @GET
    @Costly
    @Path("handout.pdf")
    @Produces({"application/pdf", MediaType.TEXT_HTML})
    public Response show(@PathParam("id") long id, UriInfo uri) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            Project project = Pages.existing(Project.class, id);
            return handouts.printed("/projects/" + id, project.name(), loose.of(project), uri.getQueryParameters());
        }).get();
    }
}
