package benchful.core.cutting.sheets;

import benchful.core.cutting.sheets.SheetKinds.Layout;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Filled sheets, as a local search compares them. Of those that cost the same that is better which fills some sheets more and others
 * less, so that one of them may become empty. Source of the measure: Falkenauer, "A hybrid grouping genetic algorithm for bin
 * packing", Journal of Heuristics 2 (1996).
 *
 * @param cost of the new sheets
 * @param fullness the sum over the sheets of the square of the share that is filled
 */
record FilledSheets(List<Layout> layouts, long cost, double fullness) {
    FilledSheets {
        layouts = List.copyOf(layouts);
    }

    static FilledSheets of(SheetKinds kinds, List<Layout> layouts) {
        return new FilledSheets(layouts, SheetFill.cost(kinds, layouts), layouts.stream().mapToDouble(layout -> fullness(kinds, layout)).sum());
    }

    private static double fullness(SheetKinds kinds, Layout layout) {
        double used = IntStream.range(0, layout.counts().length).mapToDouble(kind -> (double) layout.counts()[kind] * kinds.shapes().get(kind).area()).sum();
        double share = used / kinds.sheets().get(layout.sheet()).area();
        return share * share;
    }

    boolean isNoWorseThan(FilledSheets other) {
        return cost < other.cost || cost == other.cost && fullness >= other.fullness;
    }

    /**
     * Whether a search goes on from here instead of the other: always if it is better, seldom if it is a little less full, never if
     * it costs more. Source: simulated annealing, Kirkpatrick, Gelatt and Vecchi, Science 220 (1983).
     *
     * @param heat how much less full it may be; nothing at 0
     */
    boolean isTakenFor(FilledSheets other, double heat, Random random) {
        return cost < other.cost || cost == other.cost && fullness >= other.fullness + heat * Math.log(1 - random.nextDouble());
    }
}
