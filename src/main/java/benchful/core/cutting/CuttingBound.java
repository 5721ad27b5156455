package benchful.core.cutting;

import java.util.Arrays;

/**
 * How many new lengths every plan needs at least, without a solver.
 *
 * <p>The greater of two: total length over stock length, what is on hand taken off; and, for a threshold a up to half the
 * stock, lengths for all pieces longer than stock - a, plus pieces longer than half, plus what the pieces from a to half
 * leave over once they fill up the rest of those. Source: Martello and Toth, "Lower bounds and reduction procedures for the
 * bin packing problem", Discrete Applied Mathematics 28 (1990), bound L2. The second is used where nothing is on hand.
 */
final class CuttingBound {
    private CuttingBound() {}

    static int of(Kinds kinds) {
        long onHand = Arrays.stream(kinds.onHand()).sum();
        long least = ceil(Math.max(0, kinds.total() - onHand), kinds.stock());
        for (int i = 0; onHand == 0 && i < kinds.kinds(); i++) {
            if (2 * kinds.sizes()[i] <= kinds.stock()) {
                least = Math.max(least, threshold(kinds, kinds.sizes()[i]));
            }
        }
        return Math.toIntExact(onHand == 0 ? Math.max(least, threshold(kinds, 0)) : least);
    }

    private static long threshold(Kinds kinds, long a) {
        long alone = 0;
        long room = 0;
        long small = 0;
        for (int i = 0; i < kinds.kinds(); i++) {
            long size = kinds.sizes()[i];
            if (2 * size > kinds.stock()) {
                alone += kinds.demand()[i];
                room += size > kinds.stock() - a ? 0 : (kinds.stock() - size) * kinds.demand()[i];
            } else if (size >= a) {
                small += size * kinds.demand()[i];
            }
        }
        return alone + ceil(Math.max(0, small - room), kinds.stock());
    }

    private static long ceil(long a, long b) {
        return -Math.floorDiv(-a, b);
    }
}
