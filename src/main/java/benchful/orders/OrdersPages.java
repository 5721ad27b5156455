package benchful.orders;

import benchful.batches.BatchService;
import benchful.batches.KitBatch;
import benchful.classes.CraftClass;
import benchful.plans.TermPlan;
import benchful.plans.TermService;
import benchful.web.Pages;
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
    private final TermService terms;
    private final BatchService batches;
    private final Clock clock;

    OrdersPages(OrderWriter writer, TermService terms, BatchService batches, Clock clock) {
        this.writer = writer;
        this.terms = terms;
        this.batches = batches;
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

    /** Proposes orders for the classes and kits that are ticked; for all coming classes where nothing is. */
    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@QueryParam("class") List<String> classes, @QueryParam("batch") List<String> kits) {
        List<CraftClass> coming = coming();
        List<KitBatch> made = KitBatch.all();
        List<KitBatch> chosenKits = made.stream().filter(b -> among(kits, b.id())).toList();
        List<CraftClass> chosen = coming.stream().filter(c -> classes.isEmpty() && kits.isEmpty() || among(classes, c.id())).toList();
        TermPlan plan = chosen.isEmpty() && chosenKits.isEmpty() ? null : terms.plan(chosen, chosenKits.stream().map(batches::part).toList());
        return Templates.buy(new BuyPage(coming, made, chosen, chosenKits, plan));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        List<CraftClass> chosen = coming().stream().filter(c -> among(form.get("class"), c.id())).toList();
        List<KitBatch> kits = KitBatch.all().stream().filter(b -> among(form.get("batch"), b.id())).toList();
        List<PurchaseOrder> written = chosen.isEmpty() && kits.isEmpty() ? List.of() : writer.write(chosen, kits);
        return Pages.seeOther(written.size() == 1 ? "/orders/" + written.get(0).id() : "/orders");
    }

    private List<CraftClass> coming() {
        return CraftClass.from(LocalDateTime.now(clock));
    }

    private static boolean among(List<String> ticked, long id) {
        return ticked != null && ticked.contains(String.valueOf(id));
    }
}
