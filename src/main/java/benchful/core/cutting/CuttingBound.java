package benchful.core.cutting;

/**
 * How many new lengths every plan needs at least.
 *
 * <p>The greater of two: total length over stock length, what is on hand taken off; and, for a threshold a up to half the
 * stock, lengths for all pieces longer than stock - a, plus pieces longer than half, plus what the pieces from a to half
 * leave over once they fill up the rest of those. Source: Martello and Toth, "Lower bounds and reduction procedures for the
 * bin packing problem", Discrete Applied Mathematics 28 (1990), bound L2. The second is used where nothing is on hand.
 */
final class CuttingBound {
    private CuttingBound() {}

    static int of(CuttingRequest request) {
        if (request.stock() == null) {
            return 0;
        }
        long loss = Micrometres.up(request.loss());
        long stock = Micrometres.down(request.stock()) + loss;
        long[] sizes = CuttingPlanner.items(request).stream().mapToLong(item -> item.length() + loss).toArray();
        long onHand = request.onHand().stream().mapToLong(q -> Micrometres.down(q) + loss).sum();
        long total = 0;
        for (long size : sizes) {
            total = Math.addExact(total, size);
        }
        int least = (int) ceil(Math.max(0, total - onHand), stock);
        return request.onHand().isEmpty() ? Math.max(least, thresholds(sizes, stock)) : least;
    }

    private static int thresholds(long[] sizes, long stock) {
        long best = threshold(sizes, stock, 0);
        for (long size : sizes) {
            if (2 * size <= stock) {
                best = Math.max(best, threshold(sizes, stock, size));
            }
        }
        return (int) best;
    }

    private static long threshold(long[] sizes, long stock, long a) {
        long whole = 0;
        long half = 0;
        long halfLength = 0;
        long small = 0;
        for (long size : sizes) {
            if (size > stock - a) {
                whole++;
            } else if (2 * size > stock) {
                half++;
                halfLength += size;
            } else if (size >= a) {
                small += size;
            }
        }
        return whole + half + ceil(Math.max(0, small - (half * stock - halfLength)), stock);
    }

    private static long ceil(long a, long b) {
        return -Math.floorDiv(-a, b);
    }
}
