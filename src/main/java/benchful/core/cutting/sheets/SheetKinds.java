package benchful.core.cutting.sheets;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.quantity.Extent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Cutting from sheets in whole numbers: equal rectangles and equal sheets taken together, a cut's loss added to each edge of
 * both. What must hold of areas alone is a cutting problem of lengths, whose bounds and patterns serve here too.
 *
 * @param areas the same problem with areas in place of lengths [um2]
 * @param shapes of the pieces, by kind
 * @param sheets by the lengths of {@code areas}
 */
record SheetKinds(Kinds areas, List<Shape> shapes, List<Shape> sheets) {
    private static final Comparator<Shape> FALLING = Comparator.comparingLong(Shape::area).reversed()
            .thenComparing(Shape::length).thenComparing(Shape::turns);

    /**
     * A rectangle, losses included [um].
     *
     * @param turns whether it may be turned
     */
    record Shape(long length, long width, boolean turns) {
        long area() {
            return Math.multiplyExact(length, width);
        }

        boolean fits(long inLength, long inWidth, boolean turned) {
            return turned ? turns && width <= inLength && length <= inWidth : length <= inLength && width <= inWidth;
        }
    }

    /**
     * Pieces and sheets of one pattern.
     *
     * @param sheet which of the sheets
     * @param counts pieces of each kind that lie on it
     */
    record Layout(int sheet, int[] counts, CutTree tree) {
        Pattern pattern() {
            return new Pattern(sheet, counts);
        }
    }

    static SheetKinds of(SheetCuttingRequest request) {
        long loss = Micrometres.up(request.loss());
        TreeMap<Shape, Integer> counts = new TreeMap<>(FALLING);
        request.pieces().forEach(p -> counts.merge(shape(p, loss), p.count(), Math::addExact));
        List<Shape> sheets = new ArrayList<>();
        List<EqualLengths> areas = new ArrayList<>();
        Map<Boolean, List<Extent>> limited = new TreeMap<>(Map.of(false, request.onHand(), true, request.planned()));
        limited.forEach((bought, sizes) -> {
            TreeMap<Shape, Integer> numbers = new TreeMap<>(FALLING.reversed());
            sizes.forEach(size -> numbers.merge(sheet(size, loss), 1, Integer::sum));
            numbers.forEach((shape, number) -> {
                sheets.add(shape);
                areas.add(new EqualLengths(shape.area(), 0, number, bought));
            });
        });
        request.stocks().stream().sorted(Comparator.comparing(s -> sheet(s.size(), loss), FALLING.reversed())).forEach(s -> {
            sheets.add(sheet(s.size(), loss));
            areas.add(new EqualLengths(sheet(s.size(), loss).area(), Kinds.cost(s.cost()), EqualLengths.UNLIMITED, true));
        });
        Kinds kinds = new Kinds(counts.keySet().stream().mapToLong(Shape::area).toArray(),
                counts.values().stream().mapToInt(Integer::intValue).toArray(), areas);
        return new SheetKinds(kinds, List.copyOf(counts.keySet()), List.copyOf(sheets));
    }

    /** Of those that may be turned, the longer edge is the length. */
    static Shape shape(Rectangle piece, long loss) {
        long length = Micrometres.up(piece.size().length()) + loss;
        long width = Micrometres.up(piece.size().width()) + loss;
        return piece.grain() ? new Shape(length, width, false) : new Shape(Math.max(length, width), Math.min(length, width), length != width);
    }

    private static Shape sheet(Extent size, long loss) {
        return new Shape(Micrometres.down(size.length()) + loss, Micrometres.down(size.width()) + loss, false);
    }

    /** Which of the sheets is the one of this size that can be bought as often as needed. */
    int of(Extent size, long loss) {
        return IntStream.range(0, sheets.size()).filter(s -> !areas.lengths().get(s).limited() && sheets.get(s).equals(sheet(size, loss))).findFirst().orElseThrow();
    }

    /** The pieces' edges that can lie along the sheet's length or width, with the most of each. */
    Map<Long, Integer> edges(boolean alongLength) {
        TreeMap<Long, Integer> edges = new TreeMap<>();
        for (int kind = 0; kind < shapes.size(); kind++) {
            Shape shape = shapes.get(kind);
            edges.merge(alongLength ? shape.length() : shape.width(), areas.demand()[kind], Integer::sum);
            if (shape.turns()) {
                edges.merge(alongLength ? shape.width() : shape.length(), areas.demand()[kind], Integer::sum);
            }
        }
        return edges;
    }
}
