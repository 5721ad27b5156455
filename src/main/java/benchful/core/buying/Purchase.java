package benchful.core.buying;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A line of an order.
 *
 * @param holds what one pack holds
 * @param price of one pack at this number of packs, before VAT
 * @param net packs x price, rounded
 * @param vat on the net, rounded
 * @param arriveBy the last day on which it can arrive; null where there is no such day
 */
public record Purchase(String material, int packs, Quantity holds, BigMoney price, Money net, Money vat, @Nullable LocalDate arriveBy) {
    /** @param vat percentage */
    public static Purchase of(String material, int packs, Quantity holds, BigMoney price, BigDecimal vat, @Nullable LocalDate arriveBy) {
        Money net = price.multipliedBy(packs).toMoney(RoundingMode.HALF_UP);
        return new Purchase(material, packs, holds, price, net, Vat.on(net, vat), arriveBy);
    }

    static Purchase of(Want want, PackOffer offer, int packs) {
        return of(want.material(), packs, offer.holds(), offer.priceFor(packs), offer.supplier().vat(), want.arriveBy());
    }

    public Quantity bought() {
        return holds.times(packs);
    }

    public Sentence sentence() {
        return Sentence.of("%s of %s at %s: %s before tax.", packs == 1 ? "1 pack" : packs + " packs", holds, price, net);
    }

    public Money gross() {
        return net.plus(vat);
    }
}
