package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.catalogue.MaterialSheet;
import benchful.core.Fault;
import benchful.core.buying.Buyer;
import benchful.core.buying.BuyingRequest;
import benchful.core.buying.ShoppingList;
import benchful.core.buying.SupplierOrder;
import benchful.core.buying.Want;
import benchful.core.cutting.CuttingPlan;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Buys for needs, of one class or of several: what is cut to length is planned first, so that whole lengths are wanted; the
 * rest is wanted as it is. What can't be reckoned with is a fault; the rest is bought.
 */
final class Wants {
    private final Map<String, MaterialSheet> catalogue;
    private final Market market;
    private final List<Fault> faults;
    private final List<Sentence> warnings;
    private final Map<String, CuttingPlan> cuttings = new LinkedHashMap<>();

    /** @param currency its code; null for the first supplier's */
    Wants(CatalogueSheet catalogue, String currency, List<Fault> faults, List<Sentence> warnings) {
        this.catalogue = byName(catalogue.materials());
        this.market = new Market(catalogue, currency, faults, warnings);
        this.faults = faults;
        this.warnings = warnings;
    }

    static Map<String, MaterialSheet> byName(List<MaterialSheet> materials) {
        return materials.stream().collect(Collectors.toMap(MaterialSheet::name, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /**
     * @param arriveBy the last day on which a material can arrive; null for no such day
     * @param today orders whose last day is past are marked late; null where that does not matter
     */
    ShoppingList buy(Collection<Need> needs, Function<String, LocalDate> arriveBy, LocalDate today) {
        List<Want> wants = needs.stream().map(need -> want(need, arriveBy.apply(need.material()))).filter(Objects::nonNull).toList();
        ShoppingList list = Buyer.buy(new BuyingRequest(market.currency(), wants, today));
        list.orders().forEach(this::warn);
        return list;
    }

    /** How the materials that were bought are cut; null for one that is not. */
    CuttingPlan cutting(String material) {
        return cuttings.get(material);
    }

    /** Null where the material's packs can't be reckoned with; the fault then says why. */
    private Want want(Need need, LocalDate arriveBy) {
        MaterialSheet material = catalogue.get(need.material());
        if (material == null) {
            warnings.add(Sentence.of("“%s” is not in the catalogue, so it has no waste allowance and no offers.", need.material()));
            return new Want(need.material(), need.total(), Quantity.zero(need.total().unit()), List.of(), arriveBy);
        }
        try {
            return need.cuts().isEmpty() ? plain(material, need, arriveBy) : cut(material, need, arriveBy);
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(market.pointer(material), e.getMessage()));
            return null;
        }
    }

    private Want plain(MaterialSheet material, Need need, LocalDate arriveBy) {
        Quantity onHand = material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand().in(material.unit());
        return new Want(material.name(), need.total(), onHand, market.packs(material), arriveBy);
    }

    private Want cut(MaterialSheet material, Need need, LocalDate arriveBy) {
        Cutter.Cutting cutting = new Cutter(material, need, market.currency(), arriveBy).cut(market.lengths(material));
        if (cutting.plan() != null) {
            cuttings.put(material.name(), cutting.plan());
        } else {
            warnings.add(Sentence.of("“%s” can't be cut: %s", material.name(), cutting.problem().toString()));
        }
        return cutting.want();
    }

    private void warn(SupplierOrder order) {
        if (order.shortOfMinimum() != null) {
            warnings.add(Sentence.of("The order from “%s” is %s short of the minimum order.", order.supplier(), order.shortOfMinimum()));
        }
        if (order.late()) {
            warnings.add(Sentence.of("“%s” can't deliver in time: the last day to order was %s.", order.supplier(), order.orderBy()));
        }
    }
}
