package benchful.core.cutting.lengths;

import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * For each kind of piece on, what the later kinds are worth at most in a length: lists of (length used, worth) in which both rise.
 * Source: Nemhauser and Ullmann, "Discrete dynamic programming and capital allocation", Management Science 15 (1969).
 */
final class Fronts {
    private static final int MOST_STATES = 1_000_000;

    /** By kind, from the first on: the lengths used, and what they are worth. */
    private final List<long[]> used = new ArrayList<>();
    private final List<long[]> worth = new ArrayList<>();

    private Fronts() {}

    /** Empty where there are too many, or the work is spent. */
    static Optional<Fronts> of(Kinds kinds, long[] worths, Work work) {
        Fronts fronts = new Fronts();
        long longest = kinds.lengths().stream().mapToLong(l -> l.capacity()).max().orElse(0);
        long[] sizes = {0};
        long[] values = {0};
        fronts.used.add(sizes);
        fronts.worth.add(values);
        int states = 0;
        for (int kind = kinds.kinds() - 1; kind >= 0; kind--) {
            for (int piece = 0; piece < kinds.demand()[kind] && worths[kind] > 0; piece++) {
                Front longer = Front.of(sizes, values, kinds.sizes()[kind], worths[kind], longest);
                boolean same = Arrays.equals(longer.used(), sizes) && Arrays.equals(longer.worth(), values);
                sizes = longer.used();
                values = longer.worth();
                states += sizes.length;
                if (same) {
                    break;
                }
            }
            if (states > MOST_STATES || work.isSpent()) {
                return Optional.empty();
            }
            fronts.used.add(sizes);
            fronts.worth.add(values);
        }
        work.spend(states);
        Collections.reverse(fronts.used);
        Collections.reverse(fronts.worth);
        return Optional.of(fronts);
    }

    /** What pieces of this kind and those after it are worth at most in so much of a length. */
    long best(int kind, long free) {
        int at = Arrays.binarySearch(used.get(kind), free);
        return worth.get(kind)[at >= 0 ? at : -at - 2];
    }

    /** One list with one more piece. */
    private record Front(long[] used, long[] worth) {
        static Front of(long[] used, long[] worth, long size, long value, long longest) {
            long[] newUsed = new long[2 * used.length];
            long[] newWorth = new long[2 * used.length];
            int count = 0;
            int without = 0;
            int with = 0;
            while (without < used.length || with < used.length && used[with] + size <= longest) {
                boolean first = with == used.length || used[with] + size > longest
                        || without < used.length && (used[without] < used[with] + size || used[without] == used[with] + size && worth[without] >= worth[with] + value);
                long length = first ? used[without] : used[with] + size;
                long sum = first ? worth[without++] : worth[with++] + value;
                if (count == 0 || sum > newWorth[count - 1]) {
                    newUsed[count] = length;
                    newWorth[count++] = sum;
                }
            }
            return new Front(Arrays.copyOf(newUsed, count), Arrays.copyOf(newWorth, count));
        }
    }
}
