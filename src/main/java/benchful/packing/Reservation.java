package benchful.packing;

import benchful.catalogue.Material;
import benchful.catalogue.StockPiece;
import benchful.classes.CraftClass;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.CutOut;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.stored.Incoming;
import benchful.plans.stored.PlanService;
import benchful.stock.CutMaterial;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** What there is of each material the class uses up, as far as it is in the catalogue; what comes back serves other classes too. */
    @Transactional
    List<ReservationRow> rows(CraftClass craftClass) {
        List<MaterialsPlan.MaterialPlan> used = plans.materials(plans.file(craftClass)).materials().stream().filter(m -> !m.need().lent()).toList();
        List<Long> ids = List.of(craftClass.id());
        Set<String> cut = CutMaterial.of(ids).stream().map(CutMaterial::material).collect(Collectors.toSet());
        Map<String, Material> stocked = stocked(used);
        Map<Long, BigDecimal> reserved = ledger.reserved(craftClass.id());
        Map<Long, BigDecimal> kept = ledger.kept(ids);
        List<Long> materials = stocked.values().stream().map(Material::id).toList();
        List<Map<Long, Quantity>> coming = incoming.stream().map(i -> i.towards(ids, materials)).toList();
        return used.stream().flatMap(m -> Optional.ofNullable(stocked.get(Material.key(m.name()))).filter(s -> s.unit().dimension().equals(m.unit().dimension())).stream()
                .map(s -> row(need(m, cut.contains(m.name())), s, held(s, reserved), held(s, kept), coming.stream().map(c -> c.get(s.id())).reduce(Quantity.zero(s.unit()), Reservation::plus)))).toList();
    }

    private static Map<String, Material> stocked(List<MaterialsPlan.MaterialPlan> used) {
        return Material.withVariants(used.stream().map(MaterialsPlan.MaterialPlan::name).toList()).stream().collect(Collectors.toMap(m -> Material.key(m.name()), m -> m));
    }

    /** Until it is cut, a class needs the whole sheets and lengths that it is cut from; then only its pieces. */
    private static Quantity need(MaterialsPlan.MaterialPlan material, boolean cut) {
        Optional<CutOut> out = cut ? Optional.empty() : CutOut.of(material);
        return out.map(o -> o.opened().stream().map(StockPiece::amount).reduce(Quantity.zero(material.unit()), Quantity::plus).measurable())
                .filter(whole -> whole.compareTo(material.need().total()) > 0).orElse(material.need().total());
    }

    private static Quantity plus(Quantity sum, Quantity more) {
        return Optional.ofNullable(more).map(sum::plus).orElse(sum);
    }

    private static Quantity held(Material material, Map<Long, BigDecimal> amounts) {
        return material.shown(amounts.getOrDefault(material.id(), BigDecimal.ZERO));
    }

    private static ReservationRow row(Quantity need, Material stocked, Quantity reserved, Quantity kept, Quantity coming) {
        return new ReservationRow(stocked.id(), stocked.name(), need.in(stocked.unit()).measurable(), stocked.onHand(), reserved, kept.minus(reserved),
                stocked.onHand().minus(stocked.free()).minus(reserved), stocked.free(), coming);
    }
}
