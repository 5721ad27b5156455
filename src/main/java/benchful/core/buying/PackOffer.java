package benchful.core.buying;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * A pack of one material.
 *
 * @param holds how much is in it
 * @param price of one pack before VAT; may have more decimals than the currency
 * @param breaks for more packs, by rising number; the price then holds for every pack of the line
 */
public record PackOffer(Supplier supplier, Quantity holds, BigMoney price, List<Break> breaks) {
    /** From so many packs on, each costs this. */
    public record Break(int packs, BigMoney price) {}

    public PackOffer {
        Objects.requireNonNull(supplier, "supplier");
        breaks = breaks.stream().sorted(Comparator.comparingInt(Break::packs)).toList();
        if (holds.signum() <= 0) {
            throw new IllegalArgumentException("A pack from “%s” must hold something.".formatted(supplier.name()));
        }
        if (price.isNegative() || breaks.stream().anyMatch(b -> b.price().isNegative() || b.packs() < 2)) {
            throw new IllegalArgumentException("A price break from “%s” needs 2 packs or more, and no price can be negative.".formatted(supplier.name()));
        }
    }

    /** What one pack costs where so many are bought. */
    public BigMoney priceFor(int packs) {
        return breaks.stream().filter(b -> b.packs() <= packs).reduce((a, b) -> b).map(Break::price).orElse(price);
    }

    /** The line's value before VAT, rounded half up to the currency's smallest unit. */
    public Money cost(int packs) {
        return priceFor(packs).multipliedBy(packs).toMoney(RoundingMode.HALF_UP);
    }

    /** What a part of the pack, such as one of its lengths, costs with VAT where one pack is bought; to four decimals. */
    public BigDecimal costOf(Quantity part) {
        BigDecimal gross = price.getAmount().multiply(BigDecimal.ONE.add(supplier.vat().movePointLeft(2)));
        return gross.multiply(part.base()).divide(holds.base(), 4, RoundingMode.HALF_UP);
    }

    /** The fewest packs that hold {@code needed}, and the starts of later price breaks, where more may cost less. */
    IntStream worthTrying(int needed) {
        return IntStream.concat(IntStream.of(needed), breaks.stream().mapToInt(Break::packs).filter(p -> p > needed && needed > 0));
    }
}
