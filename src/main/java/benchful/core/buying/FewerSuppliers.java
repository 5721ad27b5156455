package benchful.core.buying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Good choices without a solver: each material at its least price from some of the suppliers only, so that fewer deliver. One after
 * the other is left out, or taken back, as long as that makes all cheaper, reckoned as rounded.
 */
final class FewerSuppliers {
    private static final int MOST_CHOICES = 200;

    private final List<Want> wants;
    private final CurrencyUnit currency;
    private final List<Map<Set<Supplier>, Map<PackOffer, Integer>>> known = new ArrayList<>();
    private int choices;

    private FewerSuppliers(List<Want> wants, CurrencyUnit currency) {
        this.wants = wants;
        this.currency = currency;
        wants.forEach(want -> known.add(new HashMap<>()));
    }

    /** @param apart from all of them; the answer costs no more */
    static Choice choose(List<Want> wants, Choice apart, CurrencyUnit currency) {
        return new FewerSuppliers(wants, currency).improved(apart);
    }

    private Choice improved(Choice apart) {
        Set<Supplier> all = wants.stream().flatMap(want -> want.offers().stream()).map(PackOffer::supplier).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<Supplier> taken = all;
        Choice best = apart;
        for (boolean better = true; better;) {
            better = false;
            for (Supplier supplier : all) {
                Set<Supplier> other = turned(taken, supplier);
                Choice choice = choices++ < MOST_CHOICES ? from(other, apart.bound()) : apart;
                if (choice.selection().coversAll() && best.or(choice) == choice) {
                    best = choice;
                    taken = other;
                    better = true;
                }
            }
        }
        return best;
    }

    private static Set<Supplier> turned(Set<Supplier> taken, Supplier supplier) {
        return (taken.contains(supplier) ? taken.stream().filter(s -> !s.equals(supplier)) : Stream.concat(taken.stream(), Stream.of(supplier)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Choice from(Set<Supplier> suppliers, Money bound) {
        List<Map<PackOffer, Integer>> packs = new ArrayList<>();
        for (int w = 0; w < wants.size(); w++) {
            Want want = wants.get(w);
            List<PackOffer> offers = want.offers().stream().filter(offer -> suppliers.contains(offer.supplier())).toList();
            Set<Supplier> theirs = offers.stream().map(PackOffer::supplier).collect(Collectors.toSet());
            packs.add(known.get(w).computeIfAbsent(theirs, t -> PackChooser.choose(want.from(offers), currency).packs()));
        }
        return Choice.of(new Selection(wants, packs), currency, bound, false);
    }
}
