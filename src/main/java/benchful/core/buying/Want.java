package benchful.core.buying;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A material to be bought.
 *
 * @param need what must be there
 * @param onHand what is there already
 * @param offers packs of it, in the same kind of amount as the need
 * @param arriveBy the last day on which it can arrive; null where there is no such day
 */
public record Want(String material, Quantity need, Quantity onHand, List<PackOffer> offers, @Nullable LocalDate arriveBy) {
    private static final BigDecimal MOST_PACKS = BigDecimal.valueOf(100_000);

    public Want {
        offers = List.copyOf(offers);
        if (need.signum() < 0 || onHand.signum() < 0) {
            throw new IllegalArgumentException("Neither the need nor the stock of “%s” can be negative.".formatted(material));
        }
        onHand.in(need.unit());
        offers.forEach(offer -> reasonable(material, need, offer));
    }

    private static void reasonable(String material, Quantity need, PackOffer offer) {
        if (need.in(offer.holds().unit()).amount().divide(offer.holds().amount(), Quantity.PRECISION).compareTo(MOST_PACKS) > 0) {
            throw new IllegalArgumentException("%s of “%s” would take more than %s packs of %s from “%s”. Check both amounts."
                    .formatted(need, material, MOST_PACKS, offer.holds(), offer.supplier().name()));
        }
    }

    /** The same where another amount must be there. */
    public Want of(Quantity amount) {
        return new Want(material, amount, onHand, offers, arriveBy);
    }

    /** The same with only these offers. */
    Want from(List<PackOffer> some) {
        return new Want(material, need, onHand, some, arriveBy);
    }

    /** True where something is missing that somebody sells. */
    boolean isOpen() {
        return missing().signum() > 0 && !offers.isEmpty();
    }

    /** What stock does not cover. */
    public Quantity missing() {
        Quantity missing = need.minus(onHand);
        return missing.signum() < 0 ? Quantity.zero(need.unit()) : missing;
    }
}
