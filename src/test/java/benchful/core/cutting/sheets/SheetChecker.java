package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/** Checks a cut sheet by itself: all parts lie on it, none closer than a cut, and cuts from edge to edge part them all. */
final class SheetChecker {
    private final long loss;

    private SheetChecker(long loss) {
        this.loss = loss;
    }

    /** A piece or an offcut [um]. */
    private record Box(long left, long right, long bottom, long top) {
        static Box of(Extent size, Quantity x, Quantity y) {
            return new Box(Micrometres.up(x), Micrometres.up(x) + Micrometres.up(size.length()), Micrometres.up(y), Micrometres.up(y) + Micrometres.up(size.width()));
        }
    }

    static void check(CutSheet sheet, long loss) {
        List<Box> boxes = Stream.concat(sheet.pieces().stream().map(p -> Box.of(p.size(), p.x(), p.y())),
                sheet.offcuts().stream().map(o -> Box.of(o.size(), o.x(), o.y()))).toList();
        long length = Micrometres.down(sheet.size().length());
        long width = Micrometres.down(sheet.size().width());
        assertThat(sheet.pieces()).isNotEmpty();
        assertThat(boxes).allSatisfy(b -> assertThat(b.left() >= 0 && b.bottom() >= 0 && b.right() <= length && b.top() <= width).isTrue());
        assertThat(new SheetChecker(loss).parts(boxes)).as("parted by cuts from edge to edge: %s", sheet).isTrue();
        assertThat(sheet.cuts().size()).as("each cut parts one rectangle in two").isGreaterThanOrEqualTo(boxes.size() - 1);
    }

    private boolean parts(List<Box> boxes) {
        return boxes.size() <= 1 || parts(boxes, Box::left, Box::right) || parts(boxes, Box::bottom, Box::top);
    }

    /** Some cut at a box's end leaves boxes on both sides, none nearer to each other than the loss, and both sides go on so. */
    private boolean parts(List<Box> boxes, ToLongFunction<Box> begin, ToLongFunction<Box> end) {
        for (Box at : boxes) {
            long cut = end.applyAsLong(at);
            List<Box> before = boxes.stream().filter(b -> end.applyAsLong(b) <= cut).toList();
            List<Box> after = boxes.stream().filter(b -> begin.applyAsLong(b) >= cut + loss).toList();
            if (!after.isEmpty() && before.size() + after.size() == boxes.size()) {
                return parts(before) && parts(after);
            }
        }
        return false;
    }
}
