package benchful.core.cutting.patterns;

import java.math.BigInteger;
import java.util.List;

/**
 * What every plan costs at least, without a solver.
 *
 * <p>What is on hand taken off, the total length at the least cost per length; where one stock length is on offer, whole
 * lengths of it. Where nothing is on hand then, also, for a threshold a up to half of it: lengths for all pieces longer than stock - a, plus pieces longer
 * than half, plus what the pieces from a to half leave over once they fill up the rest of those. Source: Martello and Toth,
 * "Lower bounds and reduction procedures for the bin packing problem", Discrete Applied Mathematics 28 (1990), bound L2.
 */
public final class CuttingBound {
    private CuttingBound() {}

    public static long of(Kinds kinds) {
        long onHand = kinds.lengths().stream().filter(EqualLengths::limited).mapToLong(l -> l.capacity() * l.available()).sum();
        List<EqualLengths> stocks = kinds.lengths().stream().filter(l -> !l.limited()).toList();
        long rest = Math.max(0, kinds.total() - onHand);
        if (stocks.size() == 1) {
            long stock = stocks.get(0).capacity();
            return stocks.get(0).cost() * (onHand == 0 ? least(kinds, stock) : -Math.floorDiv(-rest, stock));
        }
        return stocks.stream().mapToLong(s -> share(rest, s)).min().orElse(0);
    }

    /** rest x cost / capacity, rounded up. */
    private static long share(long rest, EqualLengths stock) {
        BigInteger cost = BigInteger.valueOf(rest).multiply(BigInteger.valueOf(stock.cost()));
        BigInteger[] parts = cost.divideAndRemainder(BigInteger.valueOf(stock.capacity()));
        return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    }

    private static long least(Kinds kinds, long stock) {
        long least = threshold(kinds, stock, 0);
        for (int i = 0; i < kinds.kinds(); i++) {
            if (2 * kinds.sizes()[i] <= stock) {
                least = Math.max(least, threshold(kinds, stock, kinds.sizes()[i]));
            }
        }
        return least;
    }

    private static long threshold(Kinds kinds, long stock, long a) {
        long alone = 0;
        long room = 0;
        long small = 0;
        for (int i = 0; i < kinds.kinds(); i++) {
            long size = kinds.sizes()[i];
            if (2 * size > stock) {
                alone += kinds.demand()[i];
                room += size > stock - a ? 0 : (stock - size) * kinds.demand()[i];
            } else if (size >= a) {
                small += size * kinds.demand()[i];
            }
        }
        return alone - Math.floorDiv(-Math.max(0, small - room), stock);
    }
}
