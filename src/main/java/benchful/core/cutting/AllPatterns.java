package benchful.core.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every pattern that takes no further piece, of every length: few enough to list for most classes. */
final class AllPatterns {
    private static final int MOST = 4000;

    private final Kinds kinds;
    private final List<Pattern> patterns = new ArrayList<>();

    private AllPatterns(Kinds kinds) {
        this.kinds = kinds;
    }

    /** Empty where there are too many to list. */
    static Optional<List<Pattern>> of(Kinds kinds) {
        AllPatterns all = new AllPatterns(kinds);
        for (int l = 0; l < kinds.lengths().size(); l++) {
            if (!all.list(l, 0, new int[kinds.kinds()], kinds.lengths().get(l).capacity())) {
                return Optional.empty();
            }
        }
        return Optional.of(all.patterns);
    }

    private boolean list(int length, int kind, int[] counts, long free) {
        if (kind == counts.length) {
            if (isFull(counts, free)) {
                patterns.add(new Pattern(length, counts.clone()));
            }
            return patterns.size() <= MOST;
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
