package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Work;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Fills sheets again and again in another order of pieces, or with what remains beside a piece divided the other way, and goes on
 * from the new plan unless it is worse; at first even from one that is a little worse. Source: a local search over the sequences
 * of a constructive heuristic. Always the same for the same pieces.
 */
final class ShakenFill {
    private static final int TRIES = 12_000;
    private static final int MOST_EXCHANGES = 3;
    private static final double HEAT = 0.002;
    /** So that most of the work is left for the bound. */
    private static final long MOST_STEPS = 20_000_000;

    private final SheetKinds kinds;
    private final Cooling cooling;
    private final SheetFill.Lot lot;
    private final Random random = new Random(1);
    private final int[] stocks;
    private List<Integer> order;
    private BitSet wideRest = new BitSet();

    private ShakenFill(SheetKinds kinds, Work work) {
        this.kinds = kinds;
        this.cooling = new Cooling(TRIES, MOST_STEPS, HEAT, work);
        this.lot = SheetFill.Lot.all(kinds);
        this.order = IntStream.range(0, kinds.shapes().size()).boxed().toList();
        this.stocks = kinds.areas().stocks().toArray();
    }

    /**
     * The cheapest plan found; empty where none was.
     *
     * @param aim nothing cheaper is looked for
     */
    static Optional<FilledSheets> of(SheetKinds kinds, long aim, Work work) {
        return kinds.areas().stocks().findAny().isEmpty() ? Optional.empty() : new ShakenFill(kinds, work).shaken(aim);
    }

    private Optional<FilledSheets> shaken(long aim) {
        Optional<FilledSheets> now = filled(order, stocks[0], wideRest);
        Optional<FilledSheets> best = now;
        while (cooling.goesOn() && best.filter(plan -> plan.cost() <= aim).isEmpty()) {
            now = next(now, cooling.next());
            best = better(best, now);
        }
        return best;
    }

    private static Optional<FilledSheets> better(Optional<FilledSheets> first, Optional<FilledSheets> second) {
        return first.isEmpty() || second.isPresent() && second.get().isNoWorseThan(first.get()) ? second : first;
    }

    private Optional<FilledSheets> next(Optional<FilledSheets> now, double heat) {
        List<Integer> otherOrder = new ArrayList<>(order);
        for (int exchange = random.nextInt(MOST_EXCHANGES); exchange >= 0; exchange--) {
            Collections.swap(otherOrder, random.nextInt(order.size()), random.nextInt(order.size()));
        }
        BitSet otherRest = otherRest();
        Optional<FilledSheets> found = filled(otherOrder, stocks[random.nextInt(stocks.length)], otherRest);
        if (found.isEmpty() || now.isPresent() && !found.get().isTakenFor(now.get(), heat, random)) {
            return now;
        }
        order = otherOrder;
        wideRest = otherRest;
        return found;
    }

    /** Now and then beside all pieces, now and then beside one. */
    private BitSet otherRest() {
        BitSet other = (BitSet) wideRest.clone();
        int which = random.nextInt(4);
        if (which == 0) {
            other.flip(0, order.size());
        } else if (which == 1) {
            other.flip(random.nextInt(order.size()));
        }
        return other;
    }

    private Optional<FilledSheets> filled(List<Integer> by, int preferred, BitSet wide) {
        cooling.spend(kinds.areas().pieces());
        return SheetFill.fill(kinds, new SheetFill.Manner(preferred, wide), lot, by).map(layouts -> FilledSheets.of(kinds, layouts));
    }
}
