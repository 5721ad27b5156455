package benchful.plans.materials.cutting;

import benchful.core.buying.Bought;
import benchful.core.buying.Purchase;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Strikes the balance of a material that is cut: what was on hand and of it used, what is bought, what cuts lose, which
 * offcuts are kept. Left over are lengths not opened and offcuts kept; shorter offcuts are not counted.
 */
final class CutBalance {
    private final Need need;
    private final CutUse use;
    private final List<Bought> parts;
    private final List<Purchase> purchases;

    /**
     * @param parts what became of the cutting's wants, in their order
     * @param purchases the lines that buy this material
     */
    CutBalance(Need need, CutUse use, List<Bought> parts, List<Purchase> purchases) {
        this.need = need;
        this.use = use;
        this.parts = parts;
        this.purchases = purchases;
    }

    Bought bought(CurrencyUnit currency) {
        Quantity unused = use.onHand().minus(use.opened());
        Quantity bought = sum(Bought::bought);
        Quantity unopened = sum(Bought::leftover);
        Quantity left = unused.plus(unopened).plus(use.kept());
        return new Bought(need.material(), need.total(), use.onHand(), sum(Bought::missing), bought, left,
                value(bought, unopened.plus(use.keptOfBought()), currency), sum(Bought::unmet), reasons(unused, left));
    }

    private Money value(Quantity bought, Quantity left, CurrencyUnit currency) {
        Money net = purchases.stream().map(Purchase::net).reduce(Money.zero(currency), Money::plus);
        return bought.signum() == 0 ? net
                : Money.of(currency, net.getAmount().multiply(left.base()).divide(bought.base(), net.getScale(), RoundingMode.HALF_UP));
    }

    private List<Sentence> reasons(Quantity unused, Quantity left) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(use.taken() == null ? Sentence.of("None is on hand.") : use.taken());
        if (unused.signum() > 0) {
            reasons.add(Sentence.of("%s of it are not cut.", unused));
        }
        purchases.forEach(purchase -> reasons.add(purchase.sentence()));
        reasons.addAll(use.made());
        reasons.add(Sentence.of("Cuts lose %s, and %s fall off in pieces too small to keep.", use.lost(), use.scrap()));
        Optional.ofNullable(use.offcuts()).ifPresent(reasons::add);
        reasons.add(Sentence.of("%s are left over.", left));
        return reasons;
    }

    private Quantity sum(Function<Bought, Quantity> amount) {
        return parts.stream().map(amount).reduce(Quantity.zero(need.total().unit()), Quantity::plus);
    }
}
