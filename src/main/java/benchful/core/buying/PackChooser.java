package benchful.core.buying;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the packs of one material that cover what is missing at the least price with VAT, deliveries left aside.
 *
 * <p>All numbers of packs are tried, the cheapest per amount first, and a branch is left when even the best price per
 * amount for the rest can't beat what was found. Of equal prices, the choice with less left over is kept.
 */
final class PackChooser {
    private static final int MOST_TRIES = 200_000;

    private final List<PackOffer> offers;
    private final Quantity missing;
    private final int scale;
    private int[] chosen = {};
    private @Nullable Money least;
    private BigDecimal over = BigDecimal.ZERO;
    private int tries;

    private PackChooser(Want want, CurrencyUnit currency) {
        this.offers = want.offers().stream().sorted(Comparator.comparing(PackChooser::rate)).toList();
        this.missing = want.missing();
        this.scale = currency.getDecimalPlaces();
    }

    /** @param currency of all the offers */
    static Choice choose(Want want, CurrencyUnit currency) {
        if (want.offers().isEmpty() || want.missing().signum() == 0) {
            return new Choice(Map.of(), Money.zero(currency), Money.zero(currency));
        }
        PackChooser chooser = new PackChooser(want, currency);
        chooser.branch(0, new int[chooser.offers.size()], chooser.missing.base(), Money.zero(currency));
        return chooser.answer();
    }

    /**
     * @param packs by offer, only those bought
     * @param price with VAT
     * @param bound no other choice has a lower price
     */
    record Choice(Map<PackOffer, Integer> packs, Money price, Money bound) {}

    private void branch(int k, int[] packs, BigDecimal rest, Money spent) {
        if (rest.signum() <= 0) {
            keep(packs, rest, spent);
            return;
        }
        if (k == offers.size() || hopeless(k, rest, spent)) {
            return;
        }
        PackOffer offer = offers.get(k);
        numbers(k, packs(offer, rest)).takeWhile(n -> tries <= MOST_TRIES || least == null).forEach(n -> {
            tries++;
            packs[k] = n;
            Money more = n == 0 ? spent : spent.plus(gross(offer, n));
            branch(k + 1, packs, rest.subtract(offer.holds().base().multiply(BigDecimal.valueOf(n))), more);
            packs[k] = 0;
        });
    }

    /** Enough or more of this offer, then ever less of it where others may fill the rest. */
    private IntStream numbers(int k, int enough) {
        IntStream less = IntStream.iterate(enough - 1, n -> n >= 0, n -> n - 1);
        boolean last = k == offers.size() - 1;
        return last ? offers.get(k).worthTrying(enough) : IntStream.concat(offers.get(k).worthTrying(enough), less);
    }

    private boolean hopeless(int k, BigDecimal rest, Money spent) {
        return least != null && spent.getAmount().add(rate(offers.get(k)).multiply(rest))
                .subtract(slack(k)).compareTo(least.getAmount()) > 0;
    }

    /** Rounding may make each line up to one smallest unit cheaper than its rate, twice: for the net and for the VAT. */
    private BigDecimal slack(int k) {
        return BigDecimal.valueOf(2L * (offers.size() - k), scale);
    }

    private void keep(int[] packs, BigDecimal rest, Money spent) {
        boolean better = least == null || spent.isLessThan(least)
                || spent.isEqual(least) && rest.negate().compareTo(over) < 0;
        if (better) {
            chosen = packs.clone();
            least = spent;
            over = rest.negate();
        }
    }

    private Choice answer() {
        Map<PackOffer, Integer> packs = new LinkedHashMap<>();
        IntStream.range(0, chosen.length).filter(i -> chosen[i] > 0).forEach(i -> packs.merge(offers.get(i), chosen[i], Integer::sum));
        BigDecimal atBestRate = rate(offers.get(0)).multiply(missing.base()).subtract(slack(0)).max(BigDecimal.ZERO);
        Money price = requireNonNull(least);
        Money bound = tries <= MOST_TRIES ? price : Money.of(price.getCurrencyUnit(), atBestRate, RoundingMode.FLOOR);
        return new Choice(packs, price, bound);
    }

    private static int packs(PackOffer offer, BigDecimal rest) {
        return rest.divide(offer.holds().base(), 0, RoundingMode.CEILING).intValueExact();
    }

    private static Money gross(PackOffer offer, int packs) {
        Money net = offer.cost(packs);
        return net.plus(Vat.on(net, offer.supplier().vat()));
    }

    /** The best price per base unit that an offer can reach, VAT included. */
    private static BigDecimal rate(PackOffer offer) {
        BigDecimal best = IntStream.concat(IntStream.of(1), offer.breaks().stream().mapToInt(PackOffer.Break::packs))
                .mapToObj(n -> offer.priceFor(n).getAmount()).min(Comparator.naturalOrder()).orElseThrow();
        BigDecimal tax = BigDecimal.ONE.add(offer.supplier().vat().movePointLeft(2));
        return best.multiply(tax).divide(offer.holds().base(), Quantity.PRECISION);
    }
}
