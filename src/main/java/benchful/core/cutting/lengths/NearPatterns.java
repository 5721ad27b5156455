package benchful.core.cutting.lengths;

import benchful.core.cutting.patterns.ColumnGeneration.Prices;
import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every pattern that a plan of at most some cost can have; often some hundreds, where there are many millions in all.
 *
 * <p>By prices u of the pieces that gave a bound, each pattern of a plan falls short of the best one for its length by some worth, and all
 * that falls short together makes up the difference between the plan's cost and the bound. So a pattern that alone falls short by more is in
 * no such plan. All is counted in whole numbers. Source: the fixing of variables by reduced costs, as in Nemhauser and Wolsey, "Integer and
 * Combinatorial Optimization" (1988), section II.5.2 (from memory).
 */
final class NearPatterns {
    private static final int MOST = 6000;

    /** Counts of pieces in all patterns, which the integer programme writes out. */
    private static final long MOST_COUNTS = 1_200_000;

    private final Kinds kinds;
    private final Prices prices;
    private final Fronts fronts;
    private final List<Pattern> patterns = new ArrayList<>();

    private NearPatterns(Kinds kinds, Prices prices, Fronts fronts) {
        this.kinds = kinds;
        this.prices = prices;
        this.fronts = fronts;
    }

    /**
     * Patterns give no more of a kind than is needed. Empty where there are too many to list.
     *
     * @param cost of the plans
     */
    static Optional<List<Pattern>> of(Kinds kinds, Prices prices, long cost, Work work) {
        return prices.cheapest(kinds).filter(cheapest -> kinds.lengths().get(cheapest).cost() > 0)
                .flatMap(cheapest -> Fronts.of(kinds, prices.pieces(), work).flatMap(fronts -> new NearPatterns(kinds, prices, fronts).within(cost, cheapest)));
    }

    private Optional<List<Pattern>> within(long cost, int cheapest) {
        BigInteger each = BigInteger.valueOf(prices.lengths()[cheapest]);
        BigInteger price = BigInteger.valueOf(kinds.lengths().get(cheapest).cost());
        BigInteger over = BigInteger.valueOf(cost).multiply(each).subtract(price.multiply(prices.due(kinds, EqualLengths::limited)));
        if (over.signum() < 0) {
            return Optional.of(List.of());
        }
        boolean few = IntStream.range(0, kinds.lengths().size()).filter(l -> kinds.lengths().get(l).available() > 0).allMatch(l -> {
            EqualLengths length = kinds.lengths().get(l);
            BigInteger best = length.limited() ? price.multiply(BigInteger.valueOf(prices.lengths()[l])) : BigInteger.valueOf(length.cost()).multiply(each);
            long least = best.subtract(over).add(price).subtract(BigInteger.ONE).max(BigInteger.ZERO).divide(price).longValueExact();
            return list(l, 0, new int[kinds.kinds()], length.capacity(), least);
        });
        return few ? Optional.of(patterns) : Optional.empty();
    }

    /** @param due what the pieces from this kind on must be worth at least */
    private boolean list(int length, int kind, int[] counts, long free, long due) {
        if (fronts.best(kind, free) < due) {
            return true;
        }
        if (kind == counts.length) {
            patterns.add(new Pattern(length, counts.clone()));
            return patterns.size() <= MOST && (long) patterns.size() * counts.length <= MOST_COUNTS;
        }
        for (int n = (int) Math.min(kinds.demand()[kind], free / kinds.sizes()[kind]); n >= 0; n--) {
            counts[kind] = n;
            if (!list(length, kind + 1, counts, free - n * kinds.sizes()[kind], due - n * prices.pieces()[kind])) {
                return false;
            }
        }
        counts[kind] = 0;
        return true;
    }
}
