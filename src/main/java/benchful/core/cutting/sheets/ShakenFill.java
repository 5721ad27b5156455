package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Fills sheets again and again in another order of pieces: a few change places, and the new order is kept unless its plan is worse. Of
 * plans that cost the same that is better which fills some sheets more and others less, so that one of them may become empty.
 * Source: a local search over the sequences of a constructive heuristic, with the measure of Falkenauer, "A hybrid grouping
 * genetic algorithm for bin packing", Journal of Heuristics 2 (1996). Always the same for the same pieces.
 */
final class ShakenFill {
    private static final int TRIES = 12_000;
    private static final int MOST_EXCHANGES = 3;
    /** So that most of the work is left for the bound. */
    private static final long MOST_STEPS = 20_000_000;

    private final SheetKinds kinds;
    private final Work work;
    private final Random random = new Random(1);
    private final int[] stocks;
    private List<Integer> order;
    private boolean wideRest;
    private long steps;

    private ShakenFill(SheetKinds kinds, Work work) {
        this.kinds = kinds;
        this.work = work;
        this.order = IntStream.range(0, kinds.shapes().size()).boxed().toList();
        this.stocks = kinds.areas().stocks().toArray();
    }

    /** A plan, how much its new sheets cost, and the sum over its sheets of the square of the share that is filled. */
    private record Filled(List<Layout> layouts, long cost, double fullness) {
        boolean isNoWorseThan(Filled other) {
            return cost < other.cost || cost == other.cost && fullness >= other.fullness;
        }
    }

    /**
     * The cheapest plan found; empty where none was.
     *
     * @param aim nothing cheaper is looked for
     */
    static Optional<List<Layout>> of(SheetKinds kinds, long aim, Work work) {
        return new ShakenFill(kinds, work).shaken(aim);
    }

    private Optional<List<Layout>> shaken(long aim) {
        if (stocks.length == 0) {
            return Optional.empty();
        }
        Optional<Filled> best = filled(order, stocks[0], false);
        for (int count = 0; count < TRIES && steps < MOST_STEPS && !work.isSpent() && best.filter(plan -> plan.cost() <= aim).isEmpty(); count++) {
            best = next(best);
        }
        return best.map(Filled::layouts);
    }

    private Optional<Filled> next(Optional<Filled> best) {
        List<Integer> other = new ArrayList<>(order);
        for (int exchange = random.nextInt(MOST_EXCHANGES); exchange >= 0; exchange--) {
            Collections.swap(other, random.nextInt(other.size()), random.nextInt(other.size()));
        }
        int otherStock = stocks[random.nextInt(stocks.length)];
        boolean otherRest = random.nextInt(4) == 0 ? !wideRest : wideRest;
        Optional<Filled> found = filled(other, otherStock, otherRest);
        if (found.isEmpty() || best.isPresent() && !found.get().isNoWorseThan(best.get())) {
            return best;
        }
        order = other;
        wideRest = otherRest;
        return found;
    }

    private Optional<Filled> filled(List<Integer> by, int preferred, boolean wide) {
        return SheetFill.fill(kinds, preferred, wide, by).map(layouts -> {
            long spent = (long) kinds.areas().pieces() * kinds.areas().pieces();
            work.spend(spent);
            steps += spent;
            return new Filled(layouts, SheetFill.cost(kinds, layouts), layouts.stream().mapToDouble(this::fullness).sum());
        });
    }

    private double fullness(Layout layout) {
        double used = IntStream.range(0, layout.counts().length).mapToDouble(kind -> (double) layout.counts()[kind] * kinds.shapes().get(kind).area()).sum();
        double share = used / kinds.sheets().get(layout.sheet()).area();
        return share * share;
    }
}
