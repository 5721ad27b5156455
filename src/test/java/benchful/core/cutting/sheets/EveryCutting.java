package benchful.core.cutting.sheets;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.quantity.Extent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The fewest new sheets by trying everything: each set of pieces is put together from two of its subsets, side by side or one
 * above the other, in every way; the sets are then divided among the sheets in every way.
 */
final class EveryCutting {
    private final List<Rectangle> pieces;
    private final List<Extent> onHand;
    private final Extent stock;
    private final long loss;
    private final Map<Integer, List<long[]>> shapes = new HashMap<>();

    EveryCutting(SheetCuttingRequest request) {
        this.pieces = request.pieces();
        this.onHand = request.onHand();
        this.stock = request.stocks().get(0).size();
        this.loss = Micrometres.up(request.loss());
    }

    int leastSheets() {
        return least((1 << pieces.size()) - 1, 0);
    }

    private int least(int set, int hand) {
        if (set == 0) {
            return 0;
        }
        int best = 99;
        for (int part = set; part > 0 || hand < onHand.size() && part == 0; part = part - 1 & set) {
            if (hand < onHand.size() && fits(part, onHand.get(hand))) {
                best = Math.min(best, least(set & ~part, hand + 1));
            }
            boolean first = (part & Integer.lowestOneBit(set)) != 0;
            if (hand == onHand.size() && first && fits(part, stock)) {
                best = Math.min(best, 1 + least(set & ~part, hand));
            }
            if (part == 0) {
                break;
            }
        }
        return best;
    }

    private boolean fits(int set, Extent sheet) {
        long length = Micrometres.down(sheet.length());
        long width = Micrometres.down(sheet.width());
        return set == 0 || shapes(set).stream().anyMatch(s -> s[0] <= length && s[1] <= width);
    }

    /** All lengths and widths into which a set can be put together. */
    private List<long[]> shapes(int set) {
        List<long[]> known = shapes.get(set);
        if (known == null) {
            known = Integer.bitCount(set) == 1 ? single(pieces.get(Integer.numberOfTrailingZeros(set))) : joined(set);
            shapes.put(set, known);
        }
        return known;
    }

    private static List<long[]> single(Rectangle piece) {
        long length = Micrometres.up(piece.size().length());
        long width = Micrometres.up(piece.size().width());
        return piece.grain() ? List.of(new long[] {length, width}) : List.of(new long[] {length, width}, new long[] {width, length});
    }

    private List<long[]> joined(int set) {
        List<long[]> joined = new ArrayList<>();
        for (int part = set - 1 & set; part > 0; part = part - 1 & set) {
            for (long[] a : shapes(part)) {
                for (long[] b : shapes(set & ~part)) {
                    keep(joined, a[0] + loss + b[0], Math.max(a[1], b[1]));
                    keep(joined, Math.max(a[0], b[0]), a[1] + loss + b[1]);
                }
            }
        }
        return joined;
    }

    private static void keep(List<long[]> shapes, long length, long width) {
        if (shapes.stream().noneMatch(s -> s[0] <= length && s[1] <= width)) {
            shapes.removeIf(s -> s[0] >= length && s[1] >= width);
            shapes.add(new long[] {length, width});
        }
    }
}
