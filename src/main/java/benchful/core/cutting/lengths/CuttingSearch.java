package benchful.core.cutting.lengths;

import benchful.core.cutting.patterns.ColumnGeneration;
import benchful.core.cutting.patterns.CuttingBound;
import benchful.core.cutting.patterns.CuttingProof;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the patterns whose new lengths cost least.
 *
 * <p>First fit and a plain bound settle most classes. Where they differ and all patterns can be listed, {@link CuttingProof}
 * settles it. Else the bound of {@link ColumnGeneration} is aimed at: all patterns that such a plan can have are listed, where they are
 * few ({@link NearPatterns}), and {@link CuttingProof} finds a plan of them or proves that there is none. Where that leaves it open, the
 * patterns that the linear programme uses most are cut first, the rest is solved anew, and where the rest can no longer reach the aim,
 * the next pattern is tried. Where that fails within a fixed number of tries, anything cheaper than the best is aimed at. What is done is
 * counted, so the search always ends the same way, with the least proven or the gap known.
 */
final class CuttingSearch {
    private static final int MOST_TRIES = 400;
    private static final int FEWER_TRIES = 100;
    private static final int WIDEST = 3;

    private final Kinds kinds;
    private final Work work;
    private List<Pattern> best;
    private int tries;
    private long aim;

    private CuttingSearch(Kinds kinds, List<Pattern> first, Work work) {
        this.work = work;
        this.kinds = kinds;
        this.best = first;
    }

    /** @param bound no plan costs less */
    record Found(List<Pattern> patterns, long bound) {}

    /** Empty where no plan was found: then nothing can be bought, and what is on hand does not reach or only by luck. */
    static Optional<Found> search(Kinds kinds, Work work) {
        Optional<List<Pattern>> first = FirstFit.fill(kinds);
        long plain = CuttingBound.of(kinds);
        if (first.isPresent() && kinds.cost(first.get()) == plain) {
            return Optional.of(new Found(first.get(), plain));
        }
        Optional<List<Pattern>> all = AllPatterns.of(kinds, work);
        if (first.isEmpty()) {
            List<Pattern> patterns = all.orElseGet(() -> new ColumnGeneration(kinds, List.of(), work).patterns());
            return CuttingProof.ask(kinds, patterns, work).plan().map(plan -> new Found(plan, 0));
        }
        CuttingSearch search = new CuttingSearch(kinds, first.get(), work);
        return Optional.of(all.map(patterns -> search.settle(patterns, plain)).orElseGet(() -> search.improve(plain)));
    }

    private Found settle(List<Pattern> all, long plain) {
        CuttingProof.Answer answer = CuttingProof.ask(kinds, all, work);
        answer.plan().ifPresent(this::keep);
        return new Found(best, Math.min(kinds.cost(best), Math.max(plain, kinds.whole(answer.bound()))));
    }

    private Found improve(long plain) {
        ColumnGeneration columns = new ColumnGeneration(kinds, best, work);
        long first = Math.max(plain, kinds.whole(columns.bound()));
        long bound = settled(first, columns).orElse(first);
        if (!reaches(bound, MOST_TRIES, columns)) {
            CuttingProof.ask(kinds, columns.patterns(), work).plan().ifPresent(this::keep);
            boolean better = true;
            while (better) {
                better = reaches(kinds.cost(best) - kinds.step(), FEWER_TRIES, columns);
            }
        }
        return new Found(best, bound);
    }

    /** Tries all plans that cost so much or less, where few patterns come into question, and answers what no plan is below then. */
    private Optional<Long> settled(long cost, ColumnGeneration columns) {
        Optional<CuttingProof.Answer> answer = columns.prices().flatMap(prices -> NearPatterns.of(kinds, prices, cost, work)).map(near -> CuttingProof.ask(kinds, near, work));
        answer.flatMap(CuttingProof.Answer::plan).ifPresent(this::keep);
        return answer.filter(CuttingProof.Answer::settled).map(all -> Math.min(kinds.cost(best), cost + kinds.step()));
    }

    private void keep(List<Pattern> plan) {
        best = kinds.cost(plan) < kinds.cost(best) ? plan : best;
    }

    private boolean reaches(long cost, int most, ColumnGeneration columns) {
        aim = cost;
        tries = most;
        return kinds.cost(best) <= aim || reaches(kinds, List.of(), columns);
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
            if (tries < 0 || work.isSpent()) {
                return false;
            }
        }
        return false;
    }

    private boolean goesOn(Kinds rest, List<Pattern> cut, ColumnGeneration columns) {
        Optional<List<Pattern>> filled = FirstFit.fill(rest);
        if (filled.isPresent() && kinds.cost(cut) + kinds.cost(filled.get()) <= aim) {
            best = new ArrayList<>(cut);
            best.addAll(filled.get());
            return true;
        }
        if (tries-- < 0 || work.isSpent() || kinds.cost(cut) + CuttingBound.of(rest) > aim) {
            return false;
        }
        work.spend(filled.map(List::size).orElse(0));
        ColumnGeneration next = new ColumnGeneration(rest, columns.patterns(), work);
        return kinds.cost(cut) + next.bound() <= aim && reaches(rest, cut, next);
    }

    private static List<Integer> mostUsed(Kinds rest, ColumnGeneration columns) {
        return IntStream.range(0, columns.uses().length).boxed()
                .filter(p -> columns.uses()[p] > 1e-6 && rest.times(columns.patterns().get(p)) > 0)
                .sorted(Comparator.comparingDouble((Integer p) -> columns.uses()[p]).reversed())
                .limit(WIDEST)
                .toList();
    }
}
