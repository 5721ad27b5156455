package benchful.core.buying;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Strikes the balance of one want and says how it came about. */
final class BoughtWords {
    private BoughtWords() {}

    static Bought bought(Want want, List<Purchase> purchases, CurrencyUnit currency) {
        Quantity none = Quantity.zero(want.need().unit());
        Quantity bought = purchases.stream().map(Purchase::bought).reduce(none, Quantity::plus);
        Quantity balance = tidy(want.onHand().in(want.need().unit()).plus(bought).minus(want.need()));
        Quantity leftover = balance.signum() > 0 ? balance : none;
        return new Bought(want.material(), want.need(), want.onHand(), want.missing(), bought, leftover, value(purchases, bought, leftover, currency),
                balance.signum() < 0 ? balance.times(-1) : none, reasons(want, purchases, balance));
    }

    /** What is left of the packs, at what they cost before VAT: no more than they hold, since nothing is bought where stock suffices. */
    private static Money value(List<Purchase> purchases, Quantity bought, Quantity leftover, CurrencyUnit currency) {
        Money net = purchases.stream().map(Purchase::net).reduce(Money.zero(currency), Money::plus);
        if (bought.signum() == 0) {
            return net;
        }
        return Money.of(currency, net.getAmount().multiply(leftover.base()).divide(bought.base(), net.getScale(), RoundingMode.HALF_UP));
    }

    private static List<Sentence> reasons(Want want, List<Purchase> purchases, Quantity balance) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(want.onHand().signum() == 0
                ? Sentence.of("%s are needed and none is on hand.", want.need())
                : Sentence.of("%s are needed, %s are on hand, so %s are missing.", want.need(), want.onHand(), want.missing()));
        purchases.forEach(purchase -> reasons.add(purchase.sentence()));
        reasons.add(balance.signum() < 0
                ? Sentence.of("No offer in the class's currency covers %s.", balance.times(-1))
                : Sentence.of("%s are left over.", balance));
        return reasons;
    }

    private static Quantity tidy(Quantity q) {
        return q.rounded(9, RoundingMode.HALF_UP);
    }
}
