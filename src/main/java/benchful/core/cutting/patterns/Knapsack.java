package benchful.core.cutting.patterns;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The most valuable pattern of pieces that one length gives.
 *
 * <p>States (length used, value) are built from one, two, four... pieces of a kind; one that is neither shorter nor more valuable
 * than another is dropped, so the list stays short where values follow lengths, and the best is found exactly. Source: Nemhauser
 * and Ullmann, "Discrete dynamic programming and capital allocation", Management Science 15 (1969).
 *
 * <p>Where the lists grow too long, or the work is spent, the pieces worth most for their length are taken one kind after the
 * other, and no pattern is worth more than these with a part of the next piece. Source: Dantzig, "Discrete-variable extremum
 * problems", Operations Research 5 (1957).
 */
public final class Knapsack {
    private static final int MOST_STEPS = 1_000_000;

    private final long[] sizes;
    private final int[] most;
    private final Work work;
    private int steps;

    /**
     * @param sizes of each kind of piece, loss included [um]
     * @param most how many of each kind there are
     */
    public Knapsack(long[] sizes, int[] most, Work work) {
        this.sizes = sizes.clone();
        this.most = most.clone();
        this.work = work;
    }

    /**
     * @param value of the pattern, the sum of its pieces' worths
     * @param bound no pattern is worth more
     * @param counts pieces of each kind
     */
    public record Best(long value, long bound, int[] counts) {}

    private record State(long used, long value, int kind, int times, @Nullable State before) {}

    /** Fills lengths, by their number. */
    Filler filling(List<EqualLengths> lengths) {
        return (length, worths) -> best(lengths.get(length).capacity(), worths);
    }

    /** @param worths of each kind; kinds that are worth nothing are left out */
    public Best best(long capacity, long[] worths) {
        steps = 0;
        List<State> states = List.of(new State(0, 0, -1, 0, null));
        for (int kind = 0; kind < sizes.length && !isTooMuch(); kind++) {
            if (worths[kind] > 0) {
                states = with(states, kind, worths[kind], capacity);
            }
        }
        work.spend(steps);
        return isTooMuch() ? densest(capacity, worths) : best(states.get(states.size() - 1));
    }

    private boolean isTooMuch() {
        return steps > MOST_STEPS || work.isSpent();
    }

    private Best best(State best) {
        int[] counts = new int[sizes.length];
        for (State s = best; s != null && s.kind() >= 0; s = s.before()) {
            counts[s.kind()] += s.times();
        }
        return new Best(best.value(), best.value(), counts);
    }

    private List<State> with(List<State> states, int kind, long worth, long capacity) {
        List<State> all = states;
        int left = (int) Math.min(most[kind], capacity / sizes[kind]);
        for (int times = 1; left > 0 && !isTooMuch(); times *= 2) {
            int more = Math.min(times, left);
            left -= more;
            List<State> longer = new ArrayList<>();
            for (State s : all) {
                if (s.used() + more * sizes[kind] <= capacity) {
                    longer.add(new State(s.used() + more * sizes[kind], s.value() + more * worth, kind, more, s));
                }
            }
            all = merged(all, longer);
        }
        return all;
    }

    /** Both lists rise in length and value; so does the answer. */
    private List<State> merged(List<State> a, List<State> b) {
        steps += a.size() + b.size();
        List<State> merged = new ArrayList<>(a.size() + b.size());
        long value = -1;
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            boolean first = j == b.size() || i < a.size() && before(a.get(i), b.get(j));
            State next = first ? a.get(i++) : b.get(j++);
            if (next.value() > value) {
                merged.add(next);
                value = next.value();
            }
        }
        return merged;
    }

    private static boolean before(State a, State b) {
        return a.used() < b.used() || a.used() == b.used() && a.value() >= b.value();
    }

    private Best densest(long capacity, long[] worths) {
        int[] counts = new int[sizes.length];
        long free = capacity;
        long value = 0;
        long bound = -1;
        for (int kind : byDensity(worths)) {
            counts[kind] = (int) Math.min(most[kind], free / sizes[kind]);
            value += counts[kind] * worths[kind];
            free -= counts[kind] * sizes[kind];
            bound = bound < 0 && counts[kind] < most[kind] ? value + part(worths[kind], free, sizes[kind]) : bound;
        }
        return new Best(value, Math.max(value, bound), counts);
    }

    private int[] byDensity(long[] worths) {
        Comparator<Integer> denser = (a, b) -> product(worths[b], sizes[a]).compareTo(product(worths[a], sizes[b]));
        return IntStream.range(0, sizes.length).filter(kind -> worths[kind] > 0).boxed().sorted(denser).mapToInt(Integer::intValue).toArray();
    }

    /** worth x free / size, rounded up. */
    private static long part(long worth, long free, long size) {
        return product(worth, free).add(BigInteger.valueOf(size - 1)).divide(BigInteger.valueOf(size)).longValueExact();
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }
}
