package benchful.plans;

import benchful.core.buying.Bought;
import benchful.core.buying.Purchase;
import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingPlan;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Strikes the balance of a material that is cut: what was on hand and of it used, what is bought, what cuts lose, which
 * offcuts are kept. Left over are lengths not opened and offcuts kept; shorter offcuts are not counted.
 */
final class CutBalance {
    private final Need need;
    private final Cutter.Cutting cutting;
    private final List<Bought> parts;
    private final List<Purchase> purchases;
    private final Unit unit;

    /**
     * @param parts what became of the cutting's wants, in their order
     * @param purchases the lines that buy this material
     */
    CutBalance(Need need, Cutter.Cutting cutting, List<Bought> parts, List<Purchase> purchases) {
        this.need = need;
        this.cutting = cutting;
        this.parts = parts;
        this.purchases = purchases;
        this.unit = need.total().unit();
    }

    Bought bought(CurrencyUnit currency) {
        Quantity onHand = sum(cutting.onHand().stream());
        Quantity unused = onHand.minus(sum(lengths(l -> !l.bought()).map(CutLength::length)));
        Quantity bought = sum(parts.stream().map(Bought::bought));
        Quantity unopened = sum(parts.stream().map(Bought::leftover));
        Quantity left = unused.plus(unopened).plus(sum(lengths(CutLength::kept).map(CutLength::offcut)));
        Quantity leftOfBought = unopened.plus(sum(lengths(l -> l.kept() && l.bought()).map(CutLength::offcut)));
        return new Bought(need.material(), need.total(), onHand, sum(parts.stream().map(Bought::missing)), bought, left,
                value(bought, leftOfBought, currency), sum(parts.stream().map(Bought::unmet)), reasons(onHand, unused, left));
    }

    private Money value(Quantity bought, Quantity left, CurrencyUnit currency) {
        Money net = purchases.stream().map(Purchase::net).reduce(Money.zero(currency), Money::plus);
        return bought.signum() == 0 ? net
                : Money.of(currency, net.getAmount().multiply(left.base()).divide(bought.base(), net.getScale(), RoundingMode.HALF_UP));
    }

    private List<Sentence> reasons(Quantity onHand, Quantity unused, Quantity left) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(onHand.signum() == 0 ? Sentence.of("None is on hand.")
                : Sentence.of("%s are on hand, taken as " + joined(cutting.onHand()) + ".",
                        Stream.concat(Stream.of(onHand), distinct(cutting.onHand())).toArray()));
        if (unused.signum() > 0) {
            reasons.add(Sentence.of("%s of it are not cut.", unused));
        }
        purchases.forEach(purchase -> reasons.add(purchase.sentence()));
        reasons.addAll(cutting.plan().reasons());
        reasons.add(Sentence.of("%s", cutting.plan().proof()));
        Quantity lost = sum(lengths(l -> true).map(CutBalance::lost));
        Quantity scrap = sum(lengths(l -> !l.kept()).map(CutLength::offcut));
        reasons.add(Sentence.of("Cuts lose %s, and %s fall off in pieces too short to keep.", lost, scrap));
        List<Quantity> kept = lengths(CutLength::kept).map(CutLength::offcut).sorted().toList();
        if (!kept.isEmpty()) {
            reasons.add(Sentence.of("Offcuts to keep: " + joined(kept) + ".", distinct(kept).toArray()));
        }
        reasons.add(Sentence.of("%s are left over.", left));
        return reasons;
    }

    private static String joined(List<Quantity> lengths) {
        return distinct(lengths).map(q -> lengths.stream().filter(q::equals).count()).map(n -> n + " x %s").collect(Collectors.joining(" and "));
    }

    private static Stream<Quantity> distinct(List<Quantity> lengths) {
        return lengths.stream().distinct();
    }

    private static Quantity lost(CutLength length) {
        return length.cuts().stream().map(CutLength.Cut::length).reduce(length.length().minus(length.offcut()), Quantity::minus);
    }

    private Stream<CutLength> lengths(Predicate<CutLength> which) {
        CuttingPlan plan = cutting.plan();
        return plan.lengths().stream().filter(which);
    }

    private Quantity sum(Stream<Quantity> quantities) {
        return quantities.reduce(Quantity.zero(unit), Quantity::plus);
    }
}
