package benchful.plans.stored;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.StockPiece;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierSpec;
import benchful.core.quantity.Quantity;
import benchful.stock.Offcuts;
import benchful.stock.StockLedger;
import benchful.web.Unusable;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The part of the catalogue that classes use, with what there is for them as what is on hand: what is free, what is kept for
 * them (reserved, or packed already), and what is ordered for them and on its way. What was cut for them already lies there as
 * it was before it was cut, so that they are planned from it and from nothing else again.
 */
@ApplicationScoped
public class AvailableStock {
    private final StockLedger ledger;
    private final Offcuts offcuts;
    private final Instance<Incoming> incoming;

    AvailableStock(StockLedger ledger, Offcuts offcuts, Instance<Incoming> incoming) {
        this.ledger = ledger;
        this.offcuts = offcuts;
        this.incoming = incoming;
    }

    /**
     * Materials and all suppliers.
     *
     * @param materials those that can be used
     * @param broken    by its name in lower case, why a material can't be used
     * @param brokenFor why what was cut for a class can't be counted with
     */
    public record Specs(List<MaterialSpec> materials, List<SupplierSpec> suppliers, Map<String, Unusable> broken, Map<Long, Unusable> brokenFor) {

        /** Those that can be used. */
        public CatalogueSpec all() {
            return new CatalogueSpec(materials, suppliers);
        }

        /**
         * All, for a class and the materials it takes.
         *
         * @param classId null for no class
         * @throws Unusable where one of them can't be used
         */
        public CatalogueSpec of(Long classId, Collection<String> names) {
            Optional.ofNullable(classId).map(brokenFor::get).ifPresent(Specs::refuse);
            names.stream().map(n -> broken.get(Material.key(n))).filter(Objects::nonNull).findFirst().ifPresent(Specs::refuse);
            return all();
        }

        private static void refuse(Unusable broken) {
            throw broken;
        }
    }

    /** The same for one class, or for none in particular; one material that can't be used makes it fail. */
    public CatalogueSpec sheetsFor(Long classId, Collection<String> names) {
        return sheets(names, classId == null ? List.of() : List.of(classId)).of(classId, names);
    }

    /** The materials with these names and all suppliers; names that are not in the catalogue are left out. */
    @Transactional
    public Specs sheets(Collection<String> names, Collection<Long> classIds) {
        List<Material> asked = Material.withVariants(names);
        List<Long> ids = asked.stream().map(Material::id).toList();
        Map<Long, BigDecimal> kept = ledger.kept(classIds);
        List<Map<Long, Quantity>> coming = incoming.stream().map(i -> i.towards(classIds, ids)).toList();
        Map<Long, BigDecimal> cutOff = ledger.cutOff(classIds);
        Offcuts.Pieces pieces = offcuts.pieces(classIds);
        List<MaterialSpec> materials = new ArrayList<>();
        Map<String, Unusable> broken = new HashMap<>();
        for (Material m : asked) {
            try {
                Quantity there = onHand(m, kept, coming).plus(m.shown(cutOff.getOrDefault(m.id(), BigDecimal.ZERO)));
                Quantity cut = pieces.opened().getOrDefault(m.id(), List.of()).stream().map(StockPiece::amount).reduce(Quantity.zero(m.unit()), Quantity::plus);
                materials.add(m.toSpec().onHand(most(Quantity.zero(m.unit()), most(cut, there)).measurable(), pieces.known().getOrDefault(m.id(), List.of())));
            } catch (Unusable e) {
                broken.put(Material.key(m.name()), e);
            }
        }
        return new Specs(materials, Supplier.all().stream().map(Supplier::toSpec).toList(), broken, pieces.broken());
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
