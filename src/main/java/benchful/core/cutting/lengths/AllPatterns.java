package benchful.core.cutting.lengths;

import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Every pattern that takes no further piece, of every length: few enough to list for most classes. */
final class AllPatterns {
    private static final int MOST = 4000;
    private static final int MOST_STEPS = 400_000;

    /** Counts of pieces in all patterns, which the integer programme writes out. */
    private static final long MOST_COUNTS = 400_000;

    private final Kinds kinds;
    private int steps;
    private final List<Pattern> patterns = new ArrayList<>();

    private AllPatterns(Kinds kinds) {
        this.kinds = kinds;
    }

    /** Empty where there are too many to list. */
    static Optional<List<Pattern>> of(Kinds kinds, Work work) {
        AllPatterns all = new AllPatterns(kinds);
        boolean few = IntStream.range(0, kinds.lengths().size()).allMatch(l -> all.list(l, 0, new int[kinds.kinds()], kinds.lengths().get(l).capacity()));
        work.spend(all.steps);
        return few ? Optional.of(all.patterns) : Optional.empty();
    }

    private boolean list(int length, int kind, int[] counts, long free) {
        if (kind == counts.length) {
            steps++;
            if (isFull(counts, free)) {
                patterns.add(new Pattern(length, counts.clone()));
            }
            return patterns.size() <= MOST && steps <= MOST_STEPS && (long) patterns.size() * counts.length <= MOST_COUNTS;
        }
        for (int n = (int) Math.min(kinds.demand()[kind], free / kinds.sizes()[kind]); n >= 0; n--) {
            counts[kind] = n;
            if (!list(length, kind + 1, counts, free - n * kinds.sizes()[kind])) {
                return false;
            }
        }
        counts[kind] = 0;
        return true;
    }

    private boolean isFull(int[] counts, long free) {
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] < kinds.demand()[i] && kinds.sizes()[i] <= free) {
                return false;
            }
        }
        return true;
    }
}
