package benchful.orders;

import benchful.batches.KitBatch;
import benchful.classes.CraftClass;
import benchful.web.Pages;
import benchful.web.door.Costly;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** The list of orders, and writing new ones for any coming classes. */
@Path("/orders")
@Produces(MediaType.TEXT_HTML)
class OrdersPages {
    private final OrderWriter writer;
    private final Clock clock;

    OrdersPages(OrderWriter writer, Clock clock) {
        this.writer = writer;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "orders")
    static class Templates {
        static native TemplateInstance index(List<OrderRow> open, List<OrderRow> closed);

        static native TemplateInstance buy(BuyPage page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index() {
        LocalDate today = LocalDate.now(clock);
        return Templates.index(OrderRow.of(PurchaseOrder.open(), today), OrderRow.of(PurchaseOrder.closed(), today));
    }

    /** Proposes orders for what is ticked; for all coming classes and the shelf where nothing is. */
    @GET
    @Costly
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@QueryParam("class") List<String> classes, @QueryParam("batch") List<String> kits, @QueryParam("fill") String fill) {
        boolean nothingTicked = classes.isEmpty() && kits.isEmpty();
        List<CraftClass> coming = coming();
        List<KitBatch> made = KitBatch.all();
        Choice choice = new Choice(coming.stream().filter(c -> nothingTicked || among(classes, c.id())).toList(),
                made.stream().filter(b -> among(kits, b.id())).toList(), nothingTicked || fill != null);
        return Templates.buy(new BuyPage(coming, made, choice.classes(), choice.kits(), choice.fill(), writer.plan(choice)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        List<PurchaseOrder> written = writer.write(new Choice(coming().stream().filter(c -> among(form.get("class"), c.id())).toList(),
                KitBatch.all().stream().filter(b -> among(form.get("batch"), b.id())).toList(), form.containsKey("fill")));
        return Pages.seeOther(written.size() == 1 ? "/orders/" + written.get(0).id() : "/orders");
    }

    private List<CraftClass> coming() {
        return CraftClass.from(LocalDateTime.now(clock));
    }

    private static boolean among(List<String> ticked, long id) {
        return ticked != null && ticked.contains(String.valueOf(id));
    }
}
