package benchful.documents;

import benchful.batches.KitBatch;
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

/** Instructions that go with kits for sale, one for each size, with what their buyers need as well and who made them. */
@Path("/batches/{id: \\d+}/handouts")
class BatchHandoutsPages {
    private final LooseHandouts handouts;
    private final WithoutClass loose;

    BatchHandoutsPages(LooseHandouts handouts, WithoutClass loose) {
        this.handouts = handouts;
        this.loose = loose;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance index(@PathParam("id") long id, UriInfo uri) {
        KitBatch batch = Pages.existing(KitBatch.class, id);
        return handouts.page("/batches/" + id, batch.title(), loose.of(batch), uri.getQueryParameters());
    }

    @GET
    @Costly
    @Path("handout.pdf")
    @Produces({"application/pdf", MediaType.TEXT_HTML})
    public Response show(@PathParam("id") long id, UriInfo uri) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            KitBatch batch = Pages.existing(KitBatch.class, id);
            return handouts.printed("/batches/" + id, batch.title(), loose.of(batch), uri.getQueryParameters());
        }).get();
    }
}
