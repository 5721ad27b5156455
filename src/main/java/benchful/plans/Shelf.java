package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialSheet;
import benchful.catalogue.StockPiece;
import benchful.catalogue.Supplier;
import benchful.core.quantity.Quantity;
import benchful.stock.Offcuts;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * The part of the catalogue that classes use, with what there is for them as what is on hand: what is free, what is kept for
 * them (reserved, or packed already), and what is ordered for them and on its way. What was cut for them already lies there as
 * it was before it was cut, so that they are planned from it and from nothing else again.
 */
@ApplicationScoped
public class Shelf {
    private final StockLedger ledger;
    private final Offcuts offcuts;
    private final Instance<Incoming> incoming;

    Shelf(StockLedger ledger, Offcuts offcuts, Instance<Incoming> incoming) {
        this.ledger = ledger;
        this.offcuts = offcuts;
        this.incoming = incoming;
    }

    /** The materials with these names and all suppliers; names that are not in the catalogue are left out. */
    public CatalogueSheet sheets(Collection<String> names, Collection<Long> classIds) {
        Map<Long, BigDecimal> kept = ledger.kept(classIds);
        List<Map<Long, Quantity>> coming = incoming.stream().map(i -> i.towards(classIds)).toList();
        Map<Long, BigDecimal> cutOff = ledger.cutOff(classIds);
        Map<Long, List<StockPiece>> opened = offcuts.opened(classIds);
        Map<Long, List<StockPiece>> known = offcuts.known(classIds);
        List<MaterialSheet> materials = Material.named(names).stream().map(m -> {
            Quantity there = onHand(m, kept, coming).plus(m.shown(cutOff.getOrDefault(m.id(), BigDecimal.ZERO)));
            Quantity cut = opened.getOrDefault(m.id(), List.of()).stream().map(StockPiece::amount).reduce(Quantity.zero(m.unit()), Quantity::plus);
            return m.toSheet().onHand(most(Quantity.zero(m.unit()), most(cut, there)).measurable(), known.getOrDefault(m.id(), List.of()));
        }).toList();
        return new CatalogueSheet(materials, Supplier.all().stream().map(Supplier::toSheet).toList());
    }

    private static Quantity most(Quantity a, Quantity b) {
        return a.compareTo(b) < 0 ? b : a;
    }

    private static Quantity onHand(Material material, Map<Long, BigDecimal> kept, List<Map<Long, Quantity>> coming) {
        Quantity onHand = material.free().plus(material.shown(kept.getOrDefault(material.id(), BigDecimal.ZERO)));
        for (Map<Long, Quantity> c : coming) {
            onHand = c.containsKey(material.id()) ? onHand.plus(c.get(material.id())) : onHand;
        }
        return onHand;
    }
}
