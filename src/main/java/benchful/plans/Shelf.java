package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialSheet;
import benchful.catalogue.Supplier;
import benchful.core.quantity.Quantity;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * The part of the catalogue that classes use, with what there is for them as what is on hand: what is free, what is kept for
 * them (reserved, or packed already), and what is ordered for them and on its way.
 */
@ApplicationScoped
public class Shelf {
    private final StockLedger ledger;
    private final Instance<Incoming> incoming;

    Shelf(StockLedger ledger, Instance<Incoming> incoming) {
        this.ledger = ledger;
        this.incoming = incoming;
    }

    /** The materials with these names and all suppliers; names that are not in the catalogue are left out. */
    public CatalogueSheet sheets(Collection<String> names, Collection<Long> classIds) {
        Map<Long, BigDecimal> kept = ledger.kept(classIds);
        List<Map<Long, Quantity>> coming = incoming.stream().map(i -> i.towards(classIds)).toList();
        List<MaterialSheet> materials = Material.named(names).stream().map(m -> m.toSheet(onHand(m, kept, coming))).toList();
        return new CatalogueSheet(materials, Supplier.all().stream().map(Supplier::toSheet).toList());
    }

    private static Quantity onHand(Material material, Map<Long, BigDecimal> kept, List<Map<Long, Quantity>> coming) {
        Quantity onHand = material.free().plus(material.shown(kept.getOrDefault(material.id(), BigDecimal.ZERO)));
        for (Map<Long, Quantity> c : coming) {
            onHand = c.containsKey(material.id()) ? onHand.plus(c.get(material.id())) : onHand;
        }
        return onHand;
    }
}
