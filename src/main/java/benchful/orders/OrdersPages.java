package benchful.orders;

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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The list of orders, and writing new ones for any coming classes. */
@Path("/orders")
@Produces(MediaType.TEXT_HTML)
class OrdersPages {
    private final OrderWriter writer;
    private final TermService terms;
    private final Clock clock;

    OrdersPages(OrderWriter writer, TermService terms, Clock clock) {
        this.writer = writer;
        this.terms = terms;
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

    /** Proposes orders for the classes that are ticked; for all coming ones where none is. */
    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@QueryParam("class") List<String> ticked) {
        List<CraftClass> coming = coming();
        List<CraftClass> chosen = ticked.isEmpty() ? coming : among(coming, ticked);
        TermPlan plan = chosen.isEmpty() ? null : terms.plan(chosen, List.of());
        return Templates.buy(new BuyPage(coming, chosen, plan));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        List<CraftClass> chosen = among(coming(), form.getOrDefault("class", List.of()));
        List<PurchaseOrder> written = chosen.isEmpty() ? List.of() : writer.write(chosen);
        return Pages.seeOther(written.size() == 1 ? "/orders/" + written.get(0).id() : "/orders");
    }

    private List<CraftClass> coming() {
        return CraftClass.from(LocalDateTime.now(clock));
    }

    private static List<CraftClass> among(List<CraftClass> coming, List<String> ticked) {
        Set<Long> ids = ticked.stream().map(Pages::number).flatMap(Optional::stream).collect(Collectors.toSet());
        return coming.stream().filter(c -> ids.contains(c.id())).toList();
    }
}
