package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.core.buying.Buyer;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Want;
import benchful.core.cutting.patterns.Work;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Plans the cutting of one material and what must be bought for it. All stock sizes on offer are weighed against each other at
 * what one of each costs; each alone is planned too, and the plan whose whole packs cost least is taken. Pieces of known size on
 * hand are cut first.
 *
 * @param <S> a size that the material comes in
 * @param <P> a plan of its cutting
 */
abstract class StockCutter<S, P> {
    final MaterialSpec material;
    final Need need;
    final List<Offer<S>> offers;
    private final CurrencyUnit currency;
    private final LocalDate arriveBy;

    /** @param offers packs with the stock size each comes in */
    StockCutter(MaterialSpec material, Need need, CurrencyUnit currency, LocalDate arriveBy, List<Offer<S>> offers) {
        this.material = material;
        this.need = need;
        this.currency = currency;
        this.arriveBy = arriveBy;
        this.offers = offers;
    }

    /**
     * @param size of one of the things in the pack, in whole micrometres as cutting plans name it, so that it is found again in one
     * @param amount the same as it is sold
     */
    record Offer<S>(S size, Quantity amount, PackOffer pack) {
        /** One's part of the pack's price with VAT. */
        BigDecimal cost() {
            return pack.costOf(amount);
        }
    }

    /** @param plan null where there is none, for this @param reason */
    record Attempt<P>(P plan, BigDecimal cost, Sentence reason) {}

    /**
     * @param sizes that may be bought
     * @param work how much may still be done
     */
    abstract Attempt<P> attempt(List<S> sizes, List<S> onHand, Work work);

    /** What is on hand in pieces of known size. */
    abstract List<S> known();

    /** The rest of what is on hand, as it is taken to lie there. */
    abstract List<S> rest();

    /** How many of each size a plan buys, in its order. */
    abstract Map<S, Long> bought(P plan);

    abstract Cutting cutting(P plan, List<Want> wants, List<S> onHand);

    final Cutting cut() {
        List<S> known = known();
        List<S> rest = rest();
        List<S> onHand = Stream.concat(known.stream(), rest.stream()).toList();
        List<List<S>> candidates = candidates();
        List<Attempt<P>> attempts = candidates.stream().map(sizes -> attempt(sizes, known, rest, share(sizes, candidates.size()))).toList();
        return attempts.stream().map(Attempt::plan).filter(plan -> plan != null)
                .map(plan -> cutting(plan, wants(plan), onHand))
                .min(Comparator.comparing(this::cost))
                .orElseGet(() -> Cutting.none(unmet(), attempts.get(0).reason()));
    }

    /** Half of the work is for all sizes together, the other half for each alone. */
    private static Work share(List<?> sizes, int candidates) {
        return Work.among(candidates == 1 ? 1 : sizes.size() > 1 ? 2 : 2 * (candidates - 1));
    }

    private Attempt<P> attempt(List<S> sizes, List<S> known, List<S> rest, Work work) {
        return KnownPieces.first(known, rest, onHand -> attempt(sizes, onHand, work), Attempt::cost);
    }

    /** What one of a size costs, as it is sold cheapest. */
    final BigDecimal cost(S size) {
        return offers.stream().filter(o -> o.size().equals(size)).map(Offer::cost).min(Comparator.naturalOrder()).orElseThrow();
    }

    final Quantity onHand() {
        return material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand().in(material.unit());
    }

    /** All stock sizes together first, so that it is taken where another costs the same. */
    private List<List<S>> candidates() {
        List<S> all = offers.stream().map(Offer::size).distinct().toList();
        return all.size() < 2 ? List.of(all) : Stream.concat(Stream.of(all), all.stream().map(List::of)).toList();
    }

    private Money cost(Cutting cutting) {
        return cutting.wants().stream().map(want -> Buyer.alone(want, currency)).reduce(Money.zero(currency), Money::plus);
    }

    private List<Want> wants(P plan) {
        return bought(plan).entrySet().stream().map(size -> {
            List<Offer<S>> sold = offers.stream().filter(o -> o.size().equals(size.getKey())).toList();
            Quantity amount = sold.get(0).amount().times(size.getValue()).in(material.unit());
            return new Want(material.name(), amount, Quantity.zero(material.unit()), sold.stream().map(Offer::pack).toList(), arriveBy);
        }).toList();
    }

    private Want unmet() {
        return new Want(material.name(), need.total(), Quantity.zero(material.unit()), List.of(), arriveBy);
    }
}
