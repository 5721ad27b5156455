package benchful.core.cutting.sheets;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.quantity.Extent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/** Lays the pieces of a tree onto their sheet, and says which cuts are made and what is left. */
final class SheetLaying {
    private final SheetKinds kinds;
    private final long loss;
    private final @Nullable Rectangle keep;
    private final IntFunction<String> labels;
    private final int[] open;
    private final List<CutSheet.Piece> pieces = new ArrayList<>();
    private final List<CutSheet.Offcut> offcuts = new ArrayList<>();
    private final List<CutSheet.Cut> cuts = new ArrayList<>();

    /**
     * @param keep offcuts on which it lies are kept; null for none
     * @param labels gives the next piece of a kind its label
     */
    SheetLaying(SheetKinds kinds, long loss, @Nullable Rectangle keep, IntFunction<String> labels, int[] counts) {
        this.kinds = kinds;
        this.loss = loss;
        this.keep = keep;
        this.labels = labels;
        this.open = counts.clone();
    }

    /** A rectangle of the sheet, losses included [um]. */
    private record Area(long x, long y, long length, long width) {
        Area first(boolean across, long at) {
            return across ? new Area(x, y, at, width) : new Area(x, y, length, at);
        }

        Area second(boolean across, long at) {
            return across ? new Area(x + at, y, length - at, width) : new Area(x, y + at, length, width - at);
        }
    }

    CutSheet sheet(SheetKinds.Layout layout) {
        SheetKinds.Shape shape = kinds.sheets().get(layout.sheet());
        lay(layout.tree(), new Area(0, 0, shape.length(), shape.width()));
        return new CutSheet(size(shape.length() - loss, shape.width() - loss), kinds.areas().lengths().get(layout.sheet()).bought(), pieces, offcuts, cuts);
    }

    private void lay(CutTree tree, Area area) {
        if (!wanted(tree)) {
            left(area);
        } else if (tree.first() != null && tree.second() != null) {
            cut(tree.across(), tree.at(), area);
            lay(tree.first(), area.first(tree.across(), tree.at()));
            lay(tree.second(), area.second(tree.across(), tree.at()));
        } else {
            piece(tree, area);
        }
    }

    private boolean wanted(CutTree tree) {
        return tree.first() != null && tree.second() != null ? wanted(tree.first()) || wanted(tree.second()) : tree.isPiece() && open[tree.kind()] > 0;
    }

    /** First the cut that leaves the larger rest in one piece. */
    private void piece(CutTree tree, Area area) {
        SheetKinds.Shape shape = kinds.shapes().get(tree.kind());
        long length = tree.turned() ? shape.width() : shape.length();
        long width = tree.turned() ? shape.length() : shape.width();
        boolean across = (area.length() - length) * area.width() >= (area.width() - width) * area.length();
        Area rest = trimmed(across, across ? length : width, area);
        trimmed(!across, across ? width : length, rest);
        open[tree.kind()]--;
        pieces.add(new CutSheet.Piece(labels.apply(tree.kind()), size(length - loss, width - loss), Micrometres.quantity(area.x()), Micrometres.quantity(area.y())));
    }

    private Area trimmed(boolean across, long at, Area area) {
        if (at < (across ? area.length() : area.width())) {
            cut(across, at, area);
            left(area.second(across, at));
        }
        return area.first(across, at);
    }

    private void cut(boolean across, long at, Area area) {
        long from = across ? area.y() : area.x();
        long to = from + (across ? area.width() : area.length()) - loss;
        cuts.add(new CutSheet.Cut(across, Micrometres.quantity((across ? area.x() : area.y()) + at - loss), Micrometres.quantity(from), Micrometres.quantity(to)));
    }

    private void left(Area area) {
        if (area.length() > loss && area.width() > loss) {
            Extent size = size(area.length() - loss, area.width() - loss);
            offcuts.add(new CutSheet.Offcut(size, Micrometres.quantity(area.x()), Micrometres.quantity(area.y()), keep != null && keep.liesOn(size)));
        }
    }

    private static Extent size(long length, long width) {
        return new Extent(Micrometres.quantity(length), Micrometres.quantity(width));
    }
}
