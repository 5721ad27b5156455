package benchful.orders;

import benchful.batches.KitBatch;
import benchful.classes.ClassLine;
import benchful.classes.CraftClass;
import benchful.core.Progress;
import benchful.plans.stored.TermService;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.Trouble;
import benchful.web.door.Costly;
import benchful.web.tasks.Asker;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
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
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;

/** The list of orders, and writing new ones for any coming classes. */
@Path("/orders")
@Produces(MediaType.TEXT_HTML)
class OrdersPages {
    /** Bought for at first, where nothing is chosen yet: what is needed soon. */
    private static final int AT_FIRST = 12;
    /** So many are worked out while the browser waits; more take a page that shows how far they are. */
    private static final int AT_A_GO = 14;
    private static final Duration AT_ONCE = Duration.ofMillis(1500);

    private final OrderWriter writer;
    private final BackgroundTasks tasks;
    private final Clock clock;

    OrdersPages(OrderWriter writer, BackgroundTasks tasks, Clock clock) {
        this.writer = writer;
        this.tasks = tasks;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "orders")
    static class Templates {
        static native TemplateInstance index(Paged<OrderRow> open, Paged<OrderRow> closed, List<Trouble> troubles);

        static native TemplateInstance buy(BuyView page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(UriInfo uri) {
        Paged<PurchaseOrder> closed = PurchaseOrder.closed(Sought.of(uri.getQueryParameters()));
        Paged<PurchaseOrder> open = PurchaseOrder.open(Sought.of(uri.getQueryParameters(), "find", "open"));
        List<Tried<OrderRow>> waiting = rows(open.rows());
        List<Tried<OrderRow>> done = rows(closed.rows());
        return Templates.index(open.with(Tried.worked(waiting)), closed.with(Tried.worked(done)), Stream.of(waiting, done).flatMap(all -> Tried.troubles(all).stream()).toList());
    }

    private List<Tried<OrderRow>> rows(List<PurchaseOrder> orders) {
        LocalDate today = LocalDate.now(clock);
        return orders.stream().map(o -> Tried.of(() -> OrderRow.of(o, today), failure -> Trouble.of("Order %d to %s".formatted(o.id(), o.supplier()), List.of(), failure))).toList();
    }

    /** Proposes orders for what is ticked; for the next classes and the shelf where nothing is. */
    @GET
    @Costly
    @Path("new")
    public TemplateInstance fresh(@QueryParam("class") List<String> classes, @QueryParam("batch") List<String> kits, @QueryParam("fill") String fill) {
        Offered offered = QuarkusTransaction.requiringNew().call(() -> offered(classes, kits, fill != null));
        OrderWriter.Asked asked = writer.asked(offered.choice());
        if (asked.isEmpty()) {
            return offered.page(null, null);
        }
        if (asked.gathered().size() <= AT_A_GO) {
            return offered.page(writer.plan(asked, Progress.NONE), null);
        }
        BackgroundTask<TermService.Together> task = tasks.send("what to buy for " + offered.choice().ids(), asked.gathered().question(),
                e -> Asker.during(e::isGivenUp, () -> writer.plan(asked, e)));
        return task.result(AT_ONCE).map(found -> offered.page(found, null)).orElseGet(() -> offered.page(null, task));
    }

    /** Worked out before the transaction, in which it is then remembered. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response create(MultivaluedMap<String, String> form) {
        Choice choice = QuarkusTransaction.requiringNew().call(() -> chosen(form.getOrDefault("class", List.of()), form.getOrDefault("batch", List.of()), form.containsKey("fill")));
        writer.plan(choice);
        List<PurchaseOrder> written = writer.write(choice);
        return Pages.seeOther(written.size() == 1 ? "/orders/" + written.get(0).id() : "/orders");
    }

    /** What can be chosen, and what is. */
    private record Offered(List<ClassLine> coming, long more, List<KitBatch> kits, Choice choice) {
        TemplateInstance page(TermService.Together bought, BackgroundTask<TermService.Together> underway) {
            return Templates.buy(new BuyView(coming, more, kits, choice, bought, underway));
        }
    }

    private Offered offered(List<String> classes, List<String> kits, boolean fill) {
        LocalDateTime now = LocalDateTime.now(clock);
        List<ClassLine> coming = CraftClass.linesFrom(now, Sought.LINES);
        boolean nothingTicked = classes.isEmpty() && kits.isEmpty();
        Choice choice = nothingTicked ? new Choice(CraftClass.next(now, AT_FIRST), List.of(), true) : chosen(classes, kits, fill);
        return new Offered(coming, CraftClass.countFrom(now) - coming.size(), KitBatch.all(), choice);
    }

    private Choice chosen(List<String> classes, List<String> kits, boolean fill) {
        List<Long> ids = classes.stream().flatMap(id -> Pages.number(id).stream()).toList();
        return new Choice(CraftClass.from(LocalDateTime.now(clock), ids), KitBatch.all().stream().filter(b -> kits.contains(String.valueOf(b.id()))).toList(), fill);
    }
}
