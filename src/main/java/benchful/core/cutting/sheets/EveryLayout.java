package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.cutting.sheets.SheetKinds.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every set of pieces that cuts from edge to edge can give from a sheet and that no other set contains: with few kinds they
 * are few, and an integer programme over them settles which sheets to take. Worked out for all rectangles of the raster, each
 * from the two parts of every cut. Pieces beyond the demand are not counted.
 */
final class EveryLayout {
    private static final int MOST_POINTS = 400;
    private static final long MOST_STEPS = 12_000_000;

    /** Bytes that all layouts at hand may take, those under way among them. */
    private static final long MOST_KEPT = 64_000_000;

    /** Of one layout with its tree and places in lists, beside four for each kind. */
    private static final long BYTES = 120;

    private final SheetKinds kinds;
    private final Raster lengths;
    private final Raster widths;
    private final List<Layout>[][] known;
    private long steps;
    private long kept;

    @SuppressWarnings("unchecked")
    private EveryLayout(SheetKinds kinds, Raster lengths, Raster widths) {
        this.kinds = kinds;
        this.lengths = lengths;
        this.widths = widths;
        this.known = new List[lengths.size()][widths.size()];
    }

    /** Empty where there are too many. */
    static Optional<List<Layout>> of(SheetKinds kinds, Work work) {
        Optional<Raster> lengths = Raster.of(kinds.edges(true), kinds.sheets().stream().mapToLong(Shape::length).max().orElse(0), MOST_POINTS);
        Optional<Raster> widths = Raster.of(kinds.edges(false), kinds.sheets().stream().mapToLong(Shape::width).max().orElse(0), MOST_POINTS);
        return lengths.flatMap(l -> widths.flatMap(w -> new EveryLayout(kinds, l, w).all(work)));
    }

    private Optional<List<Layout>> all(Work work) {
        List<Layout> all = new ArrayList<>();
        for (int s = 0; s < kinds.sheets().size(); s++) {
            Shape sheet = kinds.sheets().get(s);
            for (Layout layout : layouts(lengths.before(sheet.length()), widths.before(sheet.width()))) {
                all.add(new Layout(s, layout.counts(), layout.tree()));
            }
        }
        work.spend(steps / 8);
        return areTooMany() ? Optional.empty() : Optional.of(all.stream().filter(l -> !l.pattern().isEmpty()).toList());
    }

    private boolean areTooMany() {
        return steps > MOST_STEPS || kept > MOST_KEPT;
    }

    private List<Layout> layouts(int x, int y) {
        if (areTooMany()) {
            return List.of();
        }
        if (known[x][y] == null) {
            List<Layout> best = new ArrayList<>();
            keep(best, new int[kinds.shapes().size()], CutTree.EMPTY);
            single(best, lengths.at(x), widths.at(y));
            for (int cut = 1; cut < x && 2 * lengths.at(cut) <= lengths.at(x); cut++) {
                divide(best, true, lengths.at(cut), layouts(cut, y), layouts(lengths.before(lengths.at(x) - lengths.at(cut)), y));
            }
            for (int cut = 1; cut < y && 2 * widths.at(cut) <= widths.at(y); cut++) {
                divide(best, false, widths.at(cut), layouts(x, cut), layouts(x, widths.before(widths.at(y) - widths.at(cut))));
            }
            known[x][y] = best;
        }
        return known[x][y];
    }

    private void single(List<Layout> best, long length, long width) {
        for (int kind = 0; kind < kinds.shapes().size(); kind++) {
            for (boolean turned : new boolean[] {false, true}) {
                if (kinds.shapes().get(kind).fits(length, width, turned)) {
                    int[] one = new int[kinds.shapes().size()];
                    one[kind] = 1;
                    keep(best, one, CutTree.piece(kind, turned));
                }
            }
        }
    }

    private void divide(List<Layout> best, boolean across, long at, List<Layout> firsts, List<Layout> seconds) {
        for (Layout first : firsts) {
            for (Layout second : seconds) {
                if (areTooMany()) {
                    return;
                }
                keep(best, together(first.counts(), second.counts()), CutTree.divided(across, at, first.tree(), second.tree()));
            }
        }
    }

    private int[] together(int[] first, int[] second) {
        int[] sum = new int[first.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = Math.min(kinds.areas().demand()[i], first[i] + second[i]);
        }
        return sum;
    }

    private void keep(List<Layout> best, int[] counts, CutTree tree) {
        steps += best.size() + 1;
        if (best.stream().noneMatch(other -> contains(other.counts(), counts))) {
            int before = best.size();
            best.removeIf(other -> contains(counts, other.counts()));
            best.add(new Layout(0, counts, tree));
            kept += (best.size() - before) * (BYTES + Integer.BYTES * (long) counts.length);
        }
    }

    static boolean contains(int[] more, int[] fewer) {
        for (int i = 0; i < more.length; i++) {
            if (more[i] < fewer[i]) {
                return false;
            }
        }
        return true;
    }
}
