package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.core.buying.PackOffer;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.Work;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plans the cutting of one material from what is on hand and from the stock sizes on offer. Pieces of known size on hand are cut
 * first.
 *
 * @param <S> a size that the material comes in
 * @param <P> a plan of its cutting
 */
abstract class StockCutter<S, P> {
    /** What is free counts as little as can be counted, so that no more of it is taken than needed. */
    private static final BigDecimal LEAST_COST = BigDecimal.valueOf(1, 4);

    final MaterialSpec material;
    final Need need;
    final List<Offer<S>> offers;

    /** @param offers packs with the stock size each comes in */
    StockCutter(MaterialSpec material, Need need, List<Offer<S>> offers) {
        this.material = material;
        this.need = need;
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

    /**
     * @param plan null where there is none
     * @param cost of new sizes that were not planned
     * @param bound no plan costs less
     * @param reason why there is none
     */
    record Attempt<P>(P plan, BigDecimal cost, BigDecimal bound, Sentence reason) {}

    /**
     * @param from sizes that may be bought
     * @param planned sizes that are bought anyway
     * @param work how much may still be done
     */
    abstract Attempt<P> attempt(List<S> from, List<S> onHand, List<S> planned, Work work);

    /** What all plans buy at least, those planned counted; empty where nothing is known. */
    abstract Optional<StockFloor> floor(List<S> planned, Work work);

    /** What is on hand in pieces of known size. */
    abstract List<S> known();

    /** The rest of what is on hand, as it is taken to lie there. */
    abstract List<S> rest();

    /** How many of each size a plan buys. */
    abstract Map<S, Long> bought(P plan);

    /** The plan as one that was chosen among all purchases, at this cost and bound. */
    abstract P amongPurchases(P plan, BigDecimal cost, BigDecimal bound);

    abstract Cutting cutting(P plan);

    /** What was found with all that is on hand bounds what is found with less, so where that claims more, it is not taken. */
    final Attempt<P> attempt(List<S> from, List<S> planned, Work work) {
        List<Attempt<P>> made = new ArrayList<>();
        Attempt<P> best = KnownPieces.first(known(), rest(), onHand -> {
            made.add(attempt(from, onHand, planned, work));
            return made.get(made.size() - 1);
        }, Attempt::cost);
        return best.plan() == null || best.bound().compareTo(made.get(0).bound()) <= 0 ? best : made.get(0);
    }

    final List<S> sizes() {
        return offers.stream().map(Offer::size).distinct().toList();
    }

    /** All sizes together, so that this is taken where another costs the same, those of each supplier, and each alone. */
    List<List<S>> choices() {
        return Stream.of(Stream.of(sizes()), bySupplier(), sizes().stream().map(List::of)).flatMap(choices -> choices).distinct().toList();
    }

    final Stream<List<S>> bySupplier() {
        return offers.stream().map(o -> o.pack().supplier()).distinct()
                .map(supplier -> offers.stream().filter(o -> o.pack().supplier().equals(supplier)).map(Offer::size).distinct().toList());
    }

    /** What one of a size costs, as it is sold cheapest. */
    final BigDecimal cost(S size) {
        return sold(size).stream().map(Offer::cost).min(Comparator.naturalOrder()).orElseThrow().max(LEAST_COST);
    }

    final List<Offer<S>> sold(S size) {
        return offers.stream().filter(o -> o.size().equals(size)).toList();
    }

    final List<S> allOnHand() {
        return Stream.concat(known().stream(), rest().stream()).toList();
    }

    final Quantity onHand() {
        return material.shelved();
    }

    final int pieces() {
        return (int) Math.min(need.cuts().stream().mapToLong(CutNeed::count).sum(), Integer.MAX_VALUE);
    }
}
