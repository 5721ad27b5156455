package benchful.core.buying;

import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Packs for wants that must each be met. Each alone at its least price is the start and, deliveries left aside, a bound. Where
 * suppliers charge delivery or set a minimum, {@link FewerSuppliers} and {@link OrderSolver} weigh them against each other; the
 * cheapest is taken.
 */
final class FixedNeeds {
    private FixedNeeds() {}

    static Choice choose(List<Want> wants, CurrencyUnit currency, Effort effort) {
        List<PackChooser.Choice> alone = wants.stream().map(w -> PackChooser.choose(w, currency)).toList();
        Money bound = alone.stream().map(PackChooser.Choice::bound).reduce(Money.zero(currency), Money::plus);
        Selection packs = new Selection(wants, alone.stream().map(PackChooser.Choice::packs).toList());
        Choice apart = Choice.of(packs, currency, bound, true);
        return apart.total().isEqual(bound) && packs.meetsMinimums() ? apart : together(wants, apart, currency, effort);
    }

    private static Choice together(List<Want> wants, Choice apart, CurrencyUnit currency, Effort effort) {
        Choice fewer = FewerSuppliers.choose(wants, apart, currency);
        Optional<OrderSolver.Solution> solution = OrderSolver.solve(wants, OrderSolver.Cover.each(wants, w -> true), effort);
        if (solution.isEmpty()) {
            return fewer.known(apart.bound(), false);
        }
        Selection joint = new Selection(wants, solution.get().packs());
        Money least = Money.ofMinor(currency, solution.get().bound());
        Money bound = least.isGreaterThan(apart.bound()) ? least : apart.bound();
        Choice best = joint.coversAll() ? fewer.or(Choice.of(joint, currency, bound, true)) : fewer;
        return best.known(bound, solution.get().proven());
    }
}
