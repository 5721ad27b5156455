package benchful.core.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The most valuable pattern of pieces that one length gives, exactly.
 *
 * <p>States (length used, value) are built piece by piece; one that is neither shorter nor more valuable than another is
 * dropped, so the list stays short where values follow lengths. Source: Nemhauser and Ullmann, "Discrete dynamic
 * programming and capital allocation", Management Science 15 (1969).
 */
final class Knapsack {
    private final long[] sizes;
    private final int[] most;

    /**
     * @param sizes of each kind of piece, loss included [um]
     * @param most how many of each kind there are
     */
    Knapsack(long[] sizes, int[] most) {
        this.sizes = sizes.clone();
        this.most = most.clone();
    }

    /**
     * @param value of the pattern, the sum of its pieces' worths
     * @param counts pieces of each kind
     */
    record Best(long value, int[] counts) {}

    private record State(long used, long value, int kind, State before) {}

    /** Fills lengths, by their number. */
    Filler filling(List<Lengths> lengths) {
        return (length, worths) -> best(lengths.get(length).capacity(), worths);
    }

    /** @param worths of each kind; kinds that are worth nothing are left out */
    Best best(long capacity, long[] worths) {
        List<State> states = List.of(new State(0, 0, -1, null));
        for (int kind = 0; kind < sizes.length; kind++) {
            if (worths[kind] > 0) {
                states = with(states, kind, worths[kind], capacity);
            }
        }
        State best = states.get(states.size() - 1);
        int[] counts = new int[sizes.length];
        for (State s = best; s.kind() >= 0; s = s.before()) {
            counts[s.kind()]++;
        }
        return new Best(best.value(), counts);
    }

    private List<State> with(List<State> states, int kind, long worth, long capacity) {
        List<State> all = states;
        List<State> latest = states;
        for (int copy = 0; copy < most[kind] && !latest.isEmpty(); copy++) {
            List<State> longer = new ArrayList<>();
            for (State s : latest) {
                if (s.used() + sizes[kind] <= capacity) {
                    longer.add(new State(s.used() + sizes[kind], s.value() + worth, kind, s));
                }
            }
            all = merged(all, longer);
            latest = longer;
        }
        return all;
    }

    /** Both lists rise in length and value; so does the answer. */
    private static List<State> merged(List<State> a, List<State> b) {
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
}
