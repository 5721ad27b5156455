package benchful.core.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.TreeMap;

/**
 * A cutting problem in whole numbers: equal pieces taken together, a cut's loss added to each piece and to each length.
 *
 * @param sizes by kind, falling, loss included [um]
 * @param demand pieces of each kind
 * @param onHand each length on hand, loss included; 0 once it is used [um]
 * @param stock a new length, loss included [um]
 */
record Kinds(long[] sizes, int[] demand, long[] onHand, long stock) {
    static Kinds of(CuttingRequest request, long stock) {
        long loss = Micrometres.up(request.loss());
        TreeMap<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        request.pieces().forEach(p -> counts.merge(Micrometres.up(p.length()) + loss, p.count(), Math::addExact));
        return new Kinds(
                counts.keySet().stream().mapToLong(Long::longValue).toArray(),
                counts.values().stream().mapToInt(Integer::intValue).toArray(),
                request.onHand().stream().mapToLong(q -> Micrometres.down(q) + loss).sorted().toArray(),
                stock + loss);
    }

    int kinds() {
        return sizes.length;
    }

    int pieces() {
        return Arrays.stream(demand).reduce(0, Math::addExact);
    }

    long total() {
        long total = 0;
        for (int i = 0; i < sizes.length; i++) {
            total = Math.addExact(total, Math.multiplyExact(sizes[i], (long) demand[i]));
        }
        return total;
    }

    /** Lengths on hand are 0, 1, ...; the number after them stands for all new ones. */
    int lengths() {
        return onHand.length + 1;
    }

    boolean isNew(int length) {
        return length == onHand.length;
    }

    long capacity(int length) {
        return isNew(length) ? stock : onHand[length];
    }

    /** What is left to do once a pattern has been cut so many times. */
    Kinds without(Pattern pattern, int times) {
        int[] left = demand.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] -= times * pattern.counts()[i];
        }
        long[] lengths = onHand.clone();
        if (!isNew(pattern.length())) {
            lengths[pattern.length()] = 0;
        }
        return new Kinds(sizes, left, lengths, stock);
    }

    /** How often a pattern can be cut before it gives a piece too many or its length is used up. */
    int times(Pattern pattern) {
        int times = isNew(pattern.length()) ? Integer.MAX_VALUE : onHand[pattern.length()] > 0 ? 1 : 0;
        for (int i = 0; i < demand.length; i++) {
            if (pattern.counts()[i] > 0) {
                times = Math.min(times, demand[i] / pattern.counts()[i]);
            }
        }
        return times;
    }
}
