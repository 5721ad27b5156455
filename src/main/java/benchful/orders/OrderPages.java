package benchful.orders;

import benchful.bin.Bin;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.SupplierOffer;
import benchful.core.Fault;
import benchful.web.Pages;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The page of an order: changing a draft, sending it, receiving what comes, and cancelling the rest. */
@Path("/orders/{id: \\d+}")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
class OrderPages {
    private static final SpecReader<OrderSpec> DRAFT = new SpecReader<>(OrderSpec.class, sheet -> List.of());
    private static final int MOST_PACKS = 100_000;
    private static final String OVERTAKEN = "Somebody changed this order meanwhile, so your button was not followed. Look at it as it is now, and press again if you still want to.";
    private static final String NO_PACKS = "Choose a pack, and give how many from 1 to 100,000.";

    private final OrderWriter writer;
    private final Removals removals;
    private final Bin bin;
    private final Clock clock;

    OrderPages(OrderWriter writer, Removals removals, Bin bin, Clock clock) {
        this.writer = writer;
        this.removals = removals;
        this.bin = bin;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "orders")
    static class Templates {
        static native TemplateInstance show(OrderView page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        return page(Pages.existing(PurchaseOrder.class, id), null);
    }

    /** Changes packs, prices, delivery and note of a draft. */
    @POST
    @Path("lines")
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return changed(Pages.toChange(PurchaseOrder.class, id), form, order -> {});
    }

    /** Puts one more of the supplier's packs on a draft, with what was changed on it. */
    @POST
    @Path("additions")
    @Transactional
    public Response add(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        PurchaseOrder order = Pages.toChange(PurchaseOrder.class, id);
        Optional<SupplierOffer> offer = Pages.number(form.getFirst("offer")).flatMap(o -> SupplierOffer.<SupplierOffer>findByIdOptional(o))
                .filter(o -> o.supplier().equals(order.seller()));
        Optional<Long> packs = Pages.number(form.getFirst("packs")).filter(n -> n > 0 && n <= MOST_PACKS);
        if (offer.isEmpty() || packs.isEmpty()) {
            SpecForm typed = SpecForm.of(new FormTree(DRAFT.schema()).of(form), Pages.version(form));
            return Pages.faulty(page(order, typed, receipt(order), NO_PACKS));
        }
        return changed(order, form, draft -> writer.add(draft, offer.get(), packs.get().intValue()));
    }

    /** The order goes to the supplier as it stands in the form; lines that were taken out can’t come back into it. */
    @POST
    @Path("dispatch")
    @Transactional
    public Response send(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        PurchaseOrder order = Pages.toChange(PurchaseOrder.class, id);
        Response answer = changed(order, form, draft -> draft.send(LocalDate.now(clock)));
        if (order.status() != OrderStatus.DRAFT) {
            bin.forget(DraftTarget.LINE, "/orders/" + id);
        }
        return answer;
    }

    /** A parcel came: what is in it goes on the shelf, once. */
    @POST
    @Path("receipts")
    @Transactional
    public Response receive(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        PurchaseOrder order = Pages.toChange(PurchaseOrder.class, id);
        SpecReader<ReceiptSpec> reader = new SpecReader<>(ReceiptSpec.class, sheet -> sheet.faults(order));
        if (overtaken(order, form)) {
            return Pages.stale(page(order, OVERTAKEN));
        }
        SpecReader.Reading<ReceiptSpec> reading = reader.tree(new FormTree(reader.schema()).of(form));
        if (reading instanceof SpecReader.Read<ReceiptSpec> read) {
            writer.receive(order, read.sheet());
            return shown(id);
        }
        List<Fault> faults = ((SpecReader.Faulty<ReceiptSpec>) reading).faults();
        return Pages.faulty(page(order, draft(order), SpecForm.faulty(reading.tree(), faults, order.version()), null));
    }

    /** What has not come is not expected any more. */
    @POST
    @Path("cancellation")
    @Transactional
    public Response cancel(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        PurchaseOrder order = Pages.toChange(PurchaseOrder.class, id);
        if (overtaken(order, form) || !order.status().awaited()) {
            return Pages.stale(page(order, OVERTAKEN));
        }
        return removals.remove(new Thing("order’s rest", thing(order), "/orders/" + id), "/orders/" + id, () -> {
            order.cancel();
            order.changed(clock.instant());
        });
    }

    /** A draft that nobody wants; what was sent stays as a record. */
    @POST
    @Path("removal")
    @Transactional
    public Response delete(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        PurchaseOrder order = Pages.toChange(PurchaseOrder.class, id);
        if (overtaken(order, form) || order.status() != OrderStatus.DRAFT) {
            return Pages.stale(page(order, OVERTAKEN));
        }
        return removals.remove(new Thing("draft of an order", thing(order), "/orders/" + id), "/orders", order::delete);
    }

    @GET
    @Path("order.csv")
    @Produces("text/csv;charset=UTF-8")
    @Transactional
    public Response csv(@PathParam("id") long id) {
        String text = OrderCsv.text(Pages.existing(PurchaseOrder.class, id));
        return Response.ok(text).header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"order-%d.csv\"".formatted(id)).build();
    }

    private Response changed(PurchaseOrder order, MultivaluedMap<String, String> form, Consumer<PurchaseOrder> then) {
        return new SpecPost<>(DRAFT.pricedIn((sheet, place) -> Optional.of(order.currency)), f -> page(order, f, receipt(order), null)).answer(form, new DraftTarget(order, bin, clock, then));
    }

    private static boolean overtaken(PurchaseOrder order, MultivaluedMap<String, String> form) {
        return Pages.number(form.getFirst("version")).filter(v -> v == order.version()).isEmpty();
    }

    private static String thing(PurchaseOrder order) {
        return "Order %d to %s".formatted(order.id(), order.supplier());
    }

    private static Response shown(long id) {
        return Pages.seeOther("/orders/" + id);
    }

    private TemplateInstance page(PurchaseOrder order, String notice) {
        return page(order, draft(order), receipt(order), notice);
    }

    private TemplateInstance page(PurchaseOrder order, SpecForm form, SpecForm receipt, String notice) {
        return Templates.show(OrderView.of(order, form, receipt, notice, LocalDate.now(clock)));
    }

    private static SpecForm draft(PurchaseOrder order) {
        return SpecForm.of(DRAFT.written(OrderSpec.of(order)), order.version());
    }

    private static SpecForm receipt(PurchaseOrder order) {
        SpecReader<ReceiptSpec> reader = new SpecReader<>(ReceiptSpec.class, sheet -> List.of());
        return SpecForm.of(reader.written(ReceiptSpec.rest(order)), order.version());
    }
}
