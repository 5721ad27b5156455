package benchful.documents;

import benchful.documents.lists.OrderLetter;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.orders.PurchaseOrder;
import benchful.studio.Paper;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.web.Pages;
import benchful.web.door.Costly;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;

/** An order on paper. */
@Path("/orders/{id: \\d+}/order.pdf")
class OrderLetterPages {
    private final DocumentService documents;

    OrderLetterPages(DocumentService documents) {
        this.documents = documents;
    }

    @GET
    @Costly
    @Produces("application/pdf")
    @Transactional
    public Response show(@PathParam("id") long id, @QueryParam("paper") String asked) {
        PurchaseOrder order = Pages.existing(PurchaseOrder.class, id);
        StudioSpec studio = Studio.current();
        Paper paper = asked == null ? studio.printsOn() : Paper.of(asked).orElseThrow(NotFoundException::new);
        PictureBag bag = new PictureBag(Version.NORMAL);
        OrderLetter letter = OrderLetter.of(order, studio, Studio.sign(), paper, bag);
        return Response.ok((StreamingOutput) out -> documents.write(letter, bag, out), "application/pdf")
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"order-%d.pdf\"".formatted(id))
                .build();
    }
}
