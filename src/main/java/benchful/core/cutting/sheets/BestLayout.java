package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Filler;
import benchful.core.cutting.patterns.Knapsack;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.cutting.sheets.SheetKinds.Shape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The most valuable pieces that cuts from edge to edge give from a sheet, any number of each kind, by dynamic programming over
 * all rectangles of the raster. Source: Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting", Journal of
 * the Operational Research Society 36 (1985).
 */
final class BestLayout implements Filler {
    private static final int MOST_POINTS = 400;
    private static final long MOST_STEPS = 12_000_000;

    private final SheetKinds kinds;
    private final Raster lengths;
    private final Raster widths;
    private final Work work;
    private final List<Layout> found = new ArrayList<>();
    private long[] worths = {};
    private long[][] values = {};
    private CutTree[][] trees = {};

    private BestLayout(SheetKinds kinds, Raster lengths, Raster widths, Work work) {
        this.work = work;
        this.kinds = kinds;
        this.lengths = lengths;
        this.widths = widths;
    }

    /** Empty where the raster is too fine. */
    static Optional<BestLayout> of(SheetKinds kinds, Work work) {
        Optional<Raster> lengths = Raster.of(kinds.edges(true), kinds.sheets().stream().mapToLong(Shape::length).max().orElse(0), MOST_POINTS);
        Optional<Raster> widths = Raster.of(kinds.edges(false), kinds.sheets().stream().mapToLong(Shape::width).max().orElse(0), MOST_POINTS);
        return lengths.flatMap(l -> widths.filter(w -> (long) l.size() * w.size() * (l.size() + w.size()) <= MOST_STEPS)
                .map(w -> new BestLayout(kinds, l, w, work)));
    }

    /** What was found so far. */
    List<Layout> found() {
        return found;
    }

    @Override
    public Knapsack.Best best(int sheet, long[] newWorths) {
        if (!Arrays.equals(worths, newWorths)) {
            worths = newWorths.clone();
            work();
        }
        Shape shape = kinds.sheets().get(sheet);
        int x = lengths.before(shape.length());
        int y = widths.before(shape.width());
        int[] counts = new int[worths.length];
        trees[x][y].count(counts);
        found.add(new Layout(sheet, counts, trees[x][y]));
        return new Knapsack.Best(values[x][y], values[x][y], counts);
    }

    private void work() {
        work.spend((long) lengths.size() * widths.size() * (kinds.shapes().size() + (lengths.size() + widths.size()) / 4));
        values = new long[lengths.size()][widths.size()];
        trees = new CutTree[lengths.size()][widths.size()];
        for (int x = 0; x < lengths.size(); x++) {
            for (int y = 0; y < widths.size(); y++) {
                trees[x][y] = CutTree.EMPTY;
                single(x, y);
                across(x, y);
                along(x, y);
            }
        }
    }

    private void single(int x, int y) {
        for (int kind = 0; kind < worths.length; kind++) {
            for (boolean turned : new boolean[] {false, true}) {
                if (worths[kind] > values[x][y] && kinds.shapes().get(kind).fits(lengths.at(x), widths.at(y), turned)) {
                    values[x][y] = worths[kind];
                    trees[x][y] = CutTree.piece(kind, turned);
                }
            }
        }
    }

    private void across(int x, int y) {
        for (int cut = 1; cut < x && 2 * lengths.at(cut) <= lengths.at(x); cut++) {
            int rest = lengths.before(lengths.at(x) - lengths.at(cut));
            if (values[cut][y] + values[rest][y] > values[x][y]) {
                values[x][y] = values[cut][y] + values[rest][y];
                trees[x][y] = CutTree.divided(true, lengths.at(cut), trees[cut][y], trees[rest][y]);
            }
        }
    }

    private void along(int x, int y) {
        for (int cut = 1; cut < y && 2 * widths.at(cut) <= widths.at(y); cut++) {
            int rest = widths.before(widths.at(y) - widths.at(cut));
            if (values[x][cut] + values[x][rest] > values[x][y]) {
                values[x][y] = values[x][cut] + values[x][rest];
                trees[x][y] = CutTree.divided(false, widths.at(cut), trees[x][cut], trees[x][rest]);
            }
        }
    }
}
