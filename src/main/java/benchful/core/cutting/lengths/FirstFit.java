package benchful.core.cutting.lengths;

import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The longest piece first, onto the first length that still takes it, those on hand or planned before new ones. Each stock length is
 * tried as the one to open, each opened length is then exchanged for the cheapest that holds what was put on it, and the
 * cheapest plan is taken.
 */
final class FirstFit {
    private static final int NONE = -1;

    private final Kinds kinds;
    private final int preferred;
    private final int[] left;
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Long> free = new ArrayList<>();

    private FirstFit(Kinds kinds, int preferred) {
        this.kinds = kinds;
        this.preferred = preferred;
        this.left = kinds.lengths().stream().mapToInt(EqualLengths::available).toArray();
    }

    /** Patterns that give every piece; empty where the lengths do not reach. */
    static Optional<List<Pattern>> fill(Kinds kinds) {
        int[] stocks = kinds.stocks().toArray();
        return IntStream.of(stocks.length == 0 ? new int[] {NONE} : stocks)
                .mapToObj(l -> new FirstFit(kinds, l).patterns())
                .flatMap(Optional::stream)
                .min(Comparator.comparingLong(kinds::cost));
    }

    private Optional<List<Pattern>> patterns() {
        for (int kind = 0; kind < kinds.kinds(); kind++) {
            if (!put(kind)) {
                return Optional.empty();
            }
        }
        return Optional.of(patterns.stream().map(this::exchanged).toList());
    }

    /** All pieces of a kind: as many as each opened length still takes, then onto new ones. */
    private boolean put(int kind) {
        int open = kinds.demand()[kind];
        for (int at = 0; open > 0; at++) {
            if (at == free.size() && !open(kinds.sizes()[kind])) {
                return false;
            }
            int some = (int) Math.min(open, free.get(at) / kinds.sizes()[kind]);
            patterns.get(at).counts()[kind] += some;
            free.set(at, free.get(at) - some * kinds.sizes()[kind]);
            open -= some;
        }
        return true;
    }

    private boolean open(long size) {
        int[] fitting = IntStream.range(0, left.length).filter(l -> left[l] > 0 && kinds.lengths().get(l).capacity() >= size).toArray();
        if (fitting.length == 0) {
            return false;
        }
        boolean prefers = preferred != NONE && !kinds.lengths().get(fitting[0]).limited() && kinds.lengths().get(preferred).capacity() >= size;
        int length = prefers ? preferred : fitting[0];
        left[length] -= kinds.lengths().get(length).limited() ? 1 : 0;
        patterns.add(new Pattern(length, new int[kinds.kinds()]));
        free.add(kinds.lengths().get(length).capacity());
        return true;
    }

    private Pattern exchanged(Pattern pattern) {
        if (kinds.lengths().get(pattern.length()).limited()) {
            return pattern;
        }
        long used = pattern.used(kinds);
        int cheapest = IntStream.range(0, left.length).boxed()
                .filter(l -> !kinds.lengths().get(l).limited() && kinds.lengths().get(l).capacity() >= used)
                .min(Comparator.comparingLong(l -> kinds.lengths().get(l).cost()))
                .orElse(pattern.length());
        return new Pattern(cheapest, pattern.counts());
    }
}
