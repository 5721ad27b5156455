package benchful.core.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the patterns that take the fewest new lengths.
 *
 * <p>First fit and a plain bound settle most classes. Where they differ, the bound of {@link ColumnGeneration} is aimed at:
 * the patterns that its linear programme uses most are cut first, the rest is solved anew, and where the rest can no longer
 * reach the aim, the next pattern is tried. After a fixed number of such tries {@link CuttingProof} is asked, and then the
 * aim is raised by one length; so the search always ends the same way, with the least number proven or the gap known.
 */
final class CuttingSearch {
    private static final int MOST_TRIES = 400;
    private static final int WIDEST = 3;

    private final Kinds kinds;
    private List<Pattern> best;
    private int tries;
    private int aim;

    private CuttingSearch(Kinds kinds) {
        this.kinds = kinds;
        this.best = FirstFit.fill(kinds);
    }

    /** @param bound no plan takes fewer new lengths */
    record Found(List<Pattern> patterns, int bound) {}

    static Found search(Kinds kinds) {
        CuttingSearch search = new CuttingSearch(kinds);
        int plain = CuttingBound.of(kinds);
        if (search.bought(search.best) == plain) {
            return new Found(search.best, plain);
        }
        ColumnGeneration columns = new ColumnGeneration(kinds, List.of());
        return search.from(Math.max(plain, columns.bound()), columns);
    }

    /** Aims at the bound, then at one length more, and so on; raises the bound where the solver shows that the aim can't be. */
    private Found from(int least, ColumnGeneration columns) {
        int bound = least;
        for (aim = least; aim < bought(best); aim++) {
            tries = 0;
            if (!reaches(kinds, List.of(), columns)) {
                CuttingProof.Answer answer = CuttingProof.ask(kinds, aim);
                best = answer.verdict() == CuttingProof.Verdict.PLAN ? answer.patterns() : best;
                bound = answer.verdict() == CuttingProof.Verdict.NONE && bound == aim ? aim + 1 : bound;
            }
        }
        return new Found(best, bound);
    }

    private boolean reaches(Kinds rest, List<Pattern> cut, ColumnGeneration columns) {
        for (int p : mostUsed(rest, columns)) {
            Pattern pattern = columns.patterns().get(p);
            int times = Math.max(1, Math.min(rest.times(pattern), (int) Math.floor(columns.uses()[p])));
            List<Pattern> longer = new ArrayList<>(cut);
            longer.addAll(Collections.nCopies(times, pattern));
            if (goesOn(rest.without(pattern, times), longer, columns)) {
                return true;
            }
            if (tries > MOST_TRIES) {
                return false;
            }
        }
        return false;
    }

    private boolean goesOn(Kinds rest, List<Pattern> cut, ColumnGeneration columns) {
        List<Pattern> filled = new ArrayList<>(cut);
        filled.addAll(FirstFit.fill(rest));
        if (bought(filled) <= aim) {
            best = filled;
            return true;
        }
        if (tries++ > MOST_TRIES || bought(cut) + CuttingBound.of(rest) > aim) {
            return false;
        }
        ColumnGeneration next = new ColumnGeneration(rest, columns.patterns());
        return bought(cut) + next.bound() <= aim && reaches(rest, cut, next);
    }

    private static List<Integer> mostUsed(Kinds rest, ColumnGeneration columns) {
        return IntStream.range(0, columns.patterns().size()).boxed()
                .filter(p -> columns.uses()[p] > 1e-6 && rest.times(columns.patterns().get(p)) > 0)
                .sorted(Comparator.comparingDouble((Integer p) -> columns.uses()[p]).reversed())
                .limit(WIDEST)
                .toList();
    }

    private int bought(List<Pattern> patterns) {
        return (int) patterns.stream().filter(p -> kinds.isNew(p.length())).count();
    }
}
