package benchful.orders;

import benchful.batches.BatchService;
import benchful.catalogue.Material;
import benchful.catalogue.Offer;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierOffer;
import benchful.classes.CraftClass;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.plans.TermPlan;
import benchful.plans.TermRequest;
import benchful.plans.TermService;
import benchful.stock.Cause;
import benchful.stock.MovementKind;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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

    /** What to buy for the chosen; null where nothing is chosen. */
    TermPlan plan(Choice choice) {
        List<TermRequest.Part> others = Stream.concat(choice.kits().stream().map(batches::part),
                choice.fill() ? ShelfFill.part().stream() : Stream.empty()).toList();
        return choice.classes().isEmpty() && others.isEmpty() ? null : terms.plan(choice.classes(), others);
    }

    /** A draft to each supplier of what the chosen miss; none where nothing is missing any more. */
    @Transactional
    List<PurchaseOrder> write(Choice choice) {
        database.createNativeQuery(ONE_AT_A_TIME, Integer.class).getResultList();
        TermPlan plan = plan(choice);
        List<Long> ids = choice.classes().stream().map(CraftClass::id).toList();
        return plan == null ? List.of() : plan.orders().stream().map(o -> draft(o, ids)).filter(Objects::nonNull).toList();
    }

    private PurchaseOrder draft(SupplierOrder proposed, List<Long> classIds) {
        Optional<Supplier> seller = Supplier.byName(proposed.supplier());
        if (seller.isEmpty()) {
            return null;
        }
        PurchaseOrder order = PurchaseOrder.draft(seller.get(), proposed.delivery(), classIds, LocalDate.now(clock));
        proposed.purchases().forEach(p -> add(order, p));
        order.changed(clock.instant());
        order.persist();
        return order;
    }

    private static void add(PurchaseOrder order, Purchase purchase) {
        order.lines.add(new OrderLine(order, Material.byName(purchase.material()).orElse(null), purchase, order.vat));
    }

    /** Puts packs of one more offer of the supplier on a draft, beyond what classes need. */
    void add(PurchaseOrder order, SupplierOffer offer, int packs) {
        Offer sheet = offer.toSheet();
        BigMoney price = BigMoney.of(CurrencyUnit.of(order.currency), sheet.price());
        Purchase purchase = Purchase.of(offer.material().name(), packs, sheet.holds(), price, order.vat, null);
        order.lines.add(new OrderLine(order, offer.material(), purchase, order.vat));
        order.changed(clock.instant());
    }

    /** Puts on the shelf what came, materials in the order of their identifiers, so that two parcels never wait for each other. */
    void receive(PurchaseOrder order, ReceiptSheet receipt) {
        Cause cause = Cause.ofOrder(order.id(), "Order %d from %s".formatted(order.id(), order.supplier()));
        order.lines.stream().filter(l -> receipt.of(l) > 0).sorted(Comparator.comparing(l -> l.stocked == null ? 0 : l.stocked.id())).forEach(l -> {
            l.received += receipt.of(l);
            if (l.stocked != null) {
                ledger.move(l.stocked.id(), MovementKind.RECEIVED, l.holds.times(receipt.of(l)), cause);
            }
        });
        order.received();
        order.changed(clock.instant());
    }
}
