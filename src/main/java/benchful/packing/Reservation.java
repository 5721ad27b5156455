package benchful.packing;

import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.Requirements;
import benchful.plans.stored.Incoming;
import benchful.plans.stored.PlanService;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps on the shelf what a class needs, so that no other class counts on it. */
@ApplicationScoped
class Reservation {
    private final PlanService plans;
    private final StockLedger ledger;
    private final Instance<Incoming> incoming;

    Reservation(PlanService plans, StockLedger ledger, Instance<Incoming> incoming) {
        this.plans = plans;
        this.ledger = ledger;
        this.incoming = incoming;
    }

    /** Reserves what the class needs and has not packed; what it had reserved beyond that is released. */
    @Transactional
    void reserve(CraftClass craftClass) {
        Map<String, Quantity> wanted = new LinkedHashMap<>();
        rows(craftClass).forEach(r -> wanted.put(r.name(), r.toReserve()));
        ledger.reserve(craftClass.id(), wanted, "Reserved for its needs");
    }

    @Transactional
    void release(CraftClass craftClass) {
        ledger.reserve(craftClass.id(), Map.of(), "Released");
    }

    /** What there is of each material the class needs, as far as it is in the catalogue. */
    @Transactional
    List<ReservationRow> rows(CraftClass craftClass) {
        Requirements required = plans.needs(plans.file(craftClass));
        List<Long> ids = List.of(craftClass.id());
        Map<Long, BigDecimal> reserved = ledger.reserved(craftClass.id());
        Map<Long, BigDecimal> kept = ledger.kept(ids);
        List<Map<Long, Quantity>> coming = incoming.stream().map(i -> i.towards(ids)).toList();
        return required.needs().values().stream().flatMap(need -> Material.byName(need.material()).filter(s -> s.unit().dimension().equals(need.total().unit().dimension())).stream()
                .map(s -> row(need, s, held(s, reserved), held(s, kept), coming.stream().map(c -> c.get(s.id())).reduce(Quantity.zero(s.unit()), Reservation::plus)))).toList();
    }

    private static Quantity plus(Quantity sum, Quantity more) {
        return Optional.ofNullable(more).map(sum::plus).orElse(sum);
    }

    private static Quantity held(Material material, Map<Long, BigDecimal> amounts) {
        return material.shown(amounts.getOrDefault(material.id(), BigDecimal.ZERO));
    }

    private static ReservationRow row(Need need, Material stocked, Quantity reserved, Quantity kept, Quantity coming) {
        return new ReservationRow(stocked.id(), stocked.name(), need.total().in(stocked.unit()), stocked.onHand(), reserved, kept.minus(reserved),
                stocked.onHand().minus(stocked.free()).minus(reserved), stocked.free(), coming);
    }
}
