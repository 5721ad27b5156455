package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The most valuable pieces from one sheet by cuts from edge to edge, against published answers; pieces are not turned. */
class PublishedSheetsTest {
    /**
     * Herz, IBM Journal of Research and Development 16 (1972): sheet 127 x 98, worth the area. The answer 12348 as Hifi and
     * Zissimopoulos tabulate it (European Journal of Operational Research 91, 1996, problem H).
     */
    @Test
    void reproducesTheSheetOfHerz() {
        int[][] pieces = {{18, 65, 1}, {24, 27, 1}, {21, 13, 1}, {36, 17, 1}, {54, 20, 1}};
        long[] areas = Arrays.stream(pieces).mapToLong(p -> (long) p[0] * p[1]).toArray();

        assertThat(best(127, 98, withoutLimit(pieces, 100), areas)).isEqualTo(12348);
    }

    /** Christofides and Whitlock, Operations Research 25 (1977), first problem (CGCUT1): sheet 15 x 10, each piece at most so often. */
    private static final int[][] FIRST = {{8, 4, 2}, {3, 7, 1}, {8, 2, 3}, {3, 4, 5}, {3, 3, 2}, {3, 2, 2}, {2, 1, 1}};
    private static final long[] WORTHS = {66, 35, 24, 17, 11, 8, 2};

    /** Known answer 244. */
    @Test
    void reproducesTheFirstSheetOfChristofidesAndWhitlock() {
        SheetKinds kinds = kinds(15, 10, FIRST);
        long best = EveryLayout.of(kinds, Work.among(1)).orElseThrow().stream()
                .mapToLong(l -> IntStream.range(0, FIRST.length).mapToLong(k -> l.counts()[at(kinds, FIRST[k])] * WORTHS[k]).sum()).max().orElseThrow();

        assertThat(best).isEqualTo(244);
    }

    /** 249 where each piece may be cut as often as it fits, as Hifi and Zissimopoulos tabulate it. */
    @Test
    void reproducesItWithoutLimits() {
        assertThat(best(15, 10, withoutLimit(FIRST, 20), WORTHS)).isEqualTo(249);
    }

    private static long best(int length, int width, int[][] pieces, long[] worths) {
        SheetKinds kinds = kinds(length, width, pieces);
        long[] byKind = new long[pieces.length];
        IntStream.range(0, pieces.length).forEach(k -> byKind[at(kinds, pieces[k])] = worths[k]);
        return BestLayout.of(kinds, Work.among(1)).orElseThrow().best(0, byKind).value();
    }

    private static int at(SheetKinds kinds, int[] piece) {
        return kinds.shapes().indexOf(SheetKinds.shape(rectangle(piece), 0));
    }

    private static int[][] withoutLimit(int[][] pieces, int most) {
        return Arrays.stream(pieces).map(p -> new int[] {p[0], p[1], most}).toArray(int[][]::new);
    }

    private static SheetKinds kinds(int length, int width, int[][] pieces) {
        return SheetKinds.of(new SheetCuttingRequest(Arrays.stream(pieces).map(PublishedSheetsTest::rectangle).toList(), List.of(),
                List.of(new SheetStock(size(length, width), BigDecimal.ONE)), Quantity.zero(Unit.MM), null));
    }

    private static Rectangle rectangle(int[] piece) {
        return new Rectangle("piece", size(piece[0], piece[1]), true, piece[2]);
    }

    private static Extent size(int length, int width) {
        return new Extent(Quantity.of(length, Unit.MM), Quantity.of(width, Unit.MM));
    }
}
