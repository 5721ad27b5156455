package benchful.documents;

import benchful.projects.ProjectSpec;
import benchful.projects.writing.Drafts;
import benchful.web.Pages;
import benchful.web.door.Costly;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;
import java.util.function.Supplier;

/** The handout of a project that is not finished, as far as it goes. */
@Path("/projects/drafts/{id: \\d+}/handouts")
class DraftHandoutsPages {
    private final LooseHandouts handouts;
    private final WithoutClass loose;
    private final Drafts drafts;

    DraftHandoutsPages(LooseHandouts handouts, WithoutClass loose, Drafts drafts) {
        this.handouts = handouts;
        this.loose = loose;
        this.drafts = drafts;
    }

    /** Where too much is missing, the draft says what. */
    @GET
    @Costly
    @Path("handout.pdf")
    @Produces({"application/pdf", MediaType.TEXT_HTML})
    public Response show(@PathParam("id") long id, @Context UriInfo uri) {
        String back = "/projects/drafts/" + id;
        return QuarkusTransaction.joiningExisting().call(() -> {
            Optional<ProjectSpec> sheet = drafts.printable(id);
            return sheet.isEmpty() ? (Supplier<Response>) () -> Pages.seeOther(back)
                    : handouts.printed(back, sheet.get().name(), loose.of(sheet.get()), uri.getQueryParameters());
        }).get();
    }
}
