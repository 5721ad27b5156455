package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.cutting.sheets.SheetKinds.Shape;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sheets and pieces in whole numbers, and what is counted with them. Lengths are in micrometres where no unit stands beside. */
class SheetKindsTest {
    private static final SheetKinds KINDS = SheetKinds.of(new SheetCuttingRequest(
            List.of(piece("60 mm", "40 mm", false, 2), piece("40 mm", "60 mm", false, 1), piece("50 mm", "50 mm", false, 1), piece("30 mm", "70 mm", true, 1)),
            List.of(size("100 mm", "50 mm"), size("40 mm", "40 mm"), size("100 mm", "50 mm")), List.of(size("90 mm", "90 mm")),
            List.of(new SheetStock(size("300 mm", "200 mm"), new BigDecimal("9.80")), new SheetStock(size("150 mm", "200 mm"), new BigDecimal("5.60"))), q("1 mm"), null));

    /** The largest first; a piece written the other way round is the same where it may be turned, and a square need not be. */
    @Test
    void takesEqualPiecesTogether() {
        assertThat(KINDS.shapes()).containsExactly(new Shape(51_000, 51_000, false), new Shape(61_000, 41_000, true), new Shape(31_000, 71_000, false));
        assertThat(KINDS.areas().demand()).containsExactly(1, 3, 1);
        assertThat(KINDS.areas().sizes()).containsExactly(2_601_000_000L, 2_501_000_000L, 2_201_000_000L);
    }

    /** Those on hand, those planned and those on offer, the smallest of each first. */
    @Test
    void takesEqualSheetsTogether() {
        assertThat(KINDS.sheets()).containsExactly(new Shape(41_000, 41_000, false), new Shape(101_000, 51_000, false), new Shape(91_000, 91_000, false),
                new Shape(151_000, 201_000, false), new Shape(301_000, 201_000, false));
        assertThat(KINDS.areas().lengths()).containsExactly(new EqualLengths(1_681_000_000L, 0, 1, false), new EqualLengths(5_151_000_000L, 0, 2, false),
                new EqualLengths(8_281_000_000L, 0, 1, true), new EqualLengths(30_351_000_000L, 56_000, EqualLengths.UNLIMITED, true),
                new EqualLengths(60_501_000_000L, 98_000, EqualLengths.UNLIMITED, true));
        assertThat(KINDS.of(size("300 mm", "200 mm"), 1_000)).isEqualTo(4);
        assertThatThrownBy(() -> KINDS.of(size("90 mm", "90 mm"), 1_000)).isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void knowsWhichEdgesLieAlongTheSheet() {
        assertThat(KINDS.edges(true)).isEqualTo(Map.of(51_000L, 1, 61_000L, 3, 41_000L, 3, 31_000L, 1));
        assertThat(KINDS.edges(false)).isEqualTo(Map.of(51_000L, 1, 61_000L, 3, 41_000L, 3, 71_000L, 1));
    }

    @Test
    void fitsTurnedOnlyWhereItMayBe() {
        Shape turning = new Shape(6, 4, true);
        assertThat(turning.fits(6, 4, false)).isTrue();
        assertThat(turning.fits(5, 4, false)).isFalse();
        assertThat(turning.fits(6, 3, false)).isFalse();
        assertThat(turning.fits(4, 6, true)).isTrue();
        assertThat(turning.fits(3, 6, true)).isFalse();
        assertThat(turning.fits(4, 5, true)).isFalse();
        assertThat(new Shape(6, 4, false).fits(4, 6, true)).isFalse();
    }

    /** From edges of 20 twice and of 30 once: 0, 20, 30, 40, 50; 70 lies beyond. */
    @Test
    void cutsAtSumsOfEdges() {
        Raster raster = Raster.of(Map.of(20L, 2, 30L, 1), 50, 5).orElseThrow();
        assertThat(raster.size()).isEqualTo(5);
        assertThat(raster.at(2)).isEqualTo(30);
        assertThat(raster.at(4)).isEqualTo(50);
        assertThat(raster.before(45)).isEqualTo(3);
        assertThat(raster.before(50)).isEqualTo(4);
        assertThat(raster.before(10)).isZero();
        assertThat(raster.before(99)).isEqualTo(4);
        assertThat(Raster.of(Map.of(20L, 2, 30L, 1), 50, 4)).isEmpty();
        assertThat(Raster.of(Map.of(20L, 2), 19, 5).orElseThrow().size()).isEqualTo(1);
    }

    @Test
    void countsThePiecesOfATree() {
        CutTree tree = CutTree.divided(true, 5, CutTree.piece(1, false), CutTree.divided(false, 3, CutTree.piece(1, true), CutTree.piece(0, false)));
        int[] counts = new int[3];
        tree.count(counts);
        CutTree.EMPTY.count(counts);
        assertThat(counts).containsExactly(1, 2, 0);
        assertThat(tree.isPiece()).isFalse();
        assertThat(CutTree.piece(0, false).isPiece()).isTrue();
        Pattern pattern = new Layout(2, counts, tree).pattern();
        assertThat(pattern.length()).isEqualTo(2);
        assertThat(pattern.counts()).containsExactly(1, 2, 0);
    }

    /** Two of 40 x 60 stand side by side on 100 x 60, and three of 20 x 20 beside them. */
    @Test
    void findsThePiecesWorthMost() {
        SheetKinds kinds = on("100 mm", "60 mm", piece("60 mm", "40 mm", false, 2), piece("20 mm", "20 mm", false, 3));
        BestLayout layouts = BestLayout.of(kinds, Work.among(1)).orElseThrow();
        assertThat(layouts.best(0, new long[] {10, 1})).satisfies(best -> {
            assertThat(best.value()).isEqualTo(23);
            assertThat(best.bound()).isEqualTo(23);
            assertThat(best.counts()).containsExactly(2, 3);
        });
        assertThat(layouts.best(0, new long[] {10, 0}).counts()).containsExactly(2, 0);
        assertThat(layouts.best(0, new long[] {0, 1}).counts()).containsExactly(0, 15);
        assertThat(layouts.found()).extracting(Layout::sheet).containsExactly(0, 0, 0);
        assertThat(layouts.found().get(0).counts()).containsExactly(2, 3);
        int[] counts = new int[2];
        layouts.found().get(0).tree().count(counts);
        assertThat(counts).containsExactly(2, 3);
    }

    @Test
    void givesUpWhereThereAreTooManyPlacesToCut() {
        SheetKinds fine = on("500 mm", "60 mm", piece("60 mm", "1 mm", false, 500));
        assertThat(BestLayout.of(fine, Work.among(1))).isEmpty();
        assertThat(EveryLayout.of(fine, Work.among(1))).isEmpty();
    }

    /** Of 60 x 40, turned, and 50 x 60 both lie on 100 x 60; of 70 x 60 only one or the other. */
    @Test
    void listsTheSetsThatNoOtherContains() {
        assertThat(every(on("100 mm", "60 mm", piece("60 mm", "40 mm", false, 1), piece("50 mm", "60 mm", true, 1)))).containsExactlyInAnyOrder(List.of(1, 1));
        assertThat(every(on("100 mm", "60 mm", piece("60 mm", "40 mm", false, 1), piece("70 mm", "60 mm", true, 1)))).containsExactlyInAnyOrder(List.of(1, 0), List.of(0, 1));
        assertThat(every(on("100 mm", "60 mm", piece("60 mm", "40 mm", false, 1)))).containsExactly(List.of(1));
        assertThat(every(on("100 mm", "80 mm", piece("50 mm", "40 mm", true, 9)))).containsExactly(List.of(4));
        assertThat(every(on("39 mm", "60 mm", piece("60 mm", "40 mm", false, 1)))).isEmpty();
        assertThat(EveryLayout.contains(new int[] {1, 2}, new int[] {1, 2})).isTrue();
        assertThat(EveryLayout.contains(new int[] {1, 2}, new int[] {2, 0})).isFalse();
    }

    private static List<List<Integer>> every(SheetKinds kinds) {
        Optional<List<Layout>> all = EveryLayout.of(kinds, Work.among(1));
        return all.orElseThrow().stream().map(l -> Arrays.stream(l.counts()).boxed().toList()).toList();
    }

    /** Without any loss. */
    private static SheetKinds on(String length, String width, Rectangle... pieces) {
        return SheetKinds.of(new SheetCuttingRequest(List.of(pieces), List.of(), List.of(new SheetStock(size(length, width), BigDecimal.ONE)), q("0 mm"), null));
    }

    private static Rectangle piece(String length, String width, boolean grain, int count) {
        return new Rectangle(length, size(length, width), grain, count);
    }

    private static Extent size(String length, String width) {
        return new Extent(q(length), q(width));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
