package benchful.orders;

import benchful.batches.BatchService;
import benchful.batches.KitBatch;
import benchful.catalogue.Material;
import benchful.catalogue.Offer;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierOffer;
import benchful.classes.CraftClass;
import benchful.classes.Picks;
import benchful.core.Progress;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.plans.materials.TermPlan;
import benchful.plans.materials.TermRequest;
import benchful.plans.stored.TermService;
import benchful.stock.Cause;
import benchful.stock.MovementKind;
import benchful.stock.StockLedger;
import benchful.studio.Studio;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** Writes drafts for what classes still miss, and puts on the shelf what comes. */
@ApplicationScoped
class OrderWriter {
    /** Whoever writes orders waits for the one before, so that a button pressed twice does not order twice. */
    private static final String ONE_AT_A_TIME = "select 1 from pg_advisory_xact_lock(hashtext('purchase_order'))";

    private final TermService terms;
    private final BatchService batches;
    private final StockLedger ledger;
    private final EntityManager database;
    private final Clock clock;

    OrderWriter(TermService terms, BatchService batches, StockLedger ledger, EntityManager database, Clock clock) {
        this.terms = terms;
        this.batches = batches;
        this.ledger = ledger;
        this.database = database;
        this.clock = clock;
    }

    /** What to buy for the chosen, and what of it is left out; null where nothing is chosen. */
    TermService.Together plan(Choice choice) {
        Asked asked = asked(choice);
        return asked.isEmpty() ? null : plan(asked, Progress.NONE);
    }

    /**
     * What is read of a choice before anything is worked out.
     *
     * @param leftOut kits that can't be read
     */
    record Asked(TermService.Gathered gathered, List<Trouble> leftOut) {
        boolean isEmpty() {
            return gathered.size() == 0 && leftOut.isEmpty() && gathered.leftOut().isEmpty();
        }
    }

    Asked asked(Choice choice) {
        List<Tried<TermRequest.Part>> kits = choice.kits().stream().map(this::tried).toList();
        List<TermRequest.Part> others = new ArrayList<>(Tried.worked(kits));
        if (choice.fill()) {
            QuarkusTransaction.joiningExisting().call(() -> ShelfFill.part(taken(choice.classes(), others))).ifPresent(others::add);
        }
        return new Asked(terms.gathered(choice.classes(), others), Tried.troubles(kits));
    }

    /** A class that can't be read takes nothing here; it is named where it is planned. */
    private static Set<String> taken(List<CraftClass> classes, List<TermRequest.Part> others) {
        Stream<String> ofClasses = classes.stream().flatMap(c -> c.materials().stream());
        return Stream.concat(ofClasses, others.stream().flatMap(p -> Picks.names(p.file().project(), p.file().setup()).stream())).collect(Collectors.toSet());
    }

    TermService.Together plan(Asked asked, Progress progress) {
        TermService.Together plan = terms.plan(asked.gathered(), progress);
        return new TermService.Together(plan.plan(), Stream.concat(asked.leftOut().stream(), plan.leftOut().stream()).toList());
    }

    private Tried<TermRequest.Part> tried(KitBatch batch) {
        return Tried.of(() -> batches.part(batch), failure -> Trouble.of("Kits for sale “%s”".formatted(batch.title()),
                List.of(new Trouble.Mend("Change these kits", "/batches/%d/edit".formatted(batch.id()))), failure));
    }

    /** A draft to each supplier of what the chosen miss; none where nothing is missing any more. */
    @Transactional
    List<PurchaseOrder> write(Choice choice) {
        database.createNativeQuery(ONE_AT_A_TIME, Integer.class).getResultList();
        TermService.Together together = plan(choice);
        TermPlan plan = together == null ? null : together.plan();
        List<Long> ids = choice.classes().stream().map(CraftClass::id).toList();
        return plan == null ? List.of() : plan.orders().stream().map(o -> draft(o, ids)).filter(Objects::nonNull).toList();
    }

    private PurchaseOrder draft(SupplierOrder proposed, List<Long> classIds) {
        Optional<Supplier> seller = Supplier.byName(proposed.supplier());
        if (seller.isEmpty()) {
            return null;
        }
        PurchaseOrder order = PurchaseOrder.draft(seller.get(), proposed.delivery(), classIds, Studio.current(), LocalDate.now(clock));
        proposed.purchases().forEach(p -> add(order, p));
        order.changed(clock.instant());
        order.persist();
        return order;
    }

    private static void add(PurchaseOrder order, Purchase purchase) {
        Optional<Material> material = Material.byName(purchase.material());
        SupplierOffer offer = material.flatMap(m -> m.sold().stream().filter(o -> o.sold(order.seller(), purchase)).findFirst()).orElse(null);
        order.lines.add(new OrderLine(order, material.orElse(null), purchase, offer));
    }

    /** Puts packs of one more offer of the supplier on a draft, beyond what classes need. */
    void add(PurchaseOrder order, SupplierOffer offer, int packs) {
        Offer sheet = offer.toSpec();
        BigMoney price = BigMoney.of(CurrencyUnit.of(order.currency), sheet.price());
        Purchase purchase = Purchase.of(offer.material().name(), packs, sheet.holds(), price, order.vat, null);
        order.lines.add(new OrderLine(order, offer.material(), purchase, offer));
        order.changed(clock.instant());
    }

    /** Puts on the shelf what came, materials in the order of their identifiers, so that two parcels never wait for each other. */
    void receive(PurchaseOrder order, ReceiptSpec receipt) {
        Cause cause = Cause.ofOrder(order.id(), "Order %d from %s".formatted(order.id(), order.supplier()));
        order.lines.stream().filter(l -> receipt.of(l) > 0).sorted(Comparator.comparing(l -> l.stocked == null ? 0 : l.stocked.id())).forEach(l -> {
            l.received += receipt.of(l);
            if (l.stocked != null) {
                ledger.move(l.stocked.id(), MovementKind.RECEIVED, l.holds().times(receipt.of(l)), cause);
            }
        });
        order.received();
        order.changed(clock.instant());
    }
}
