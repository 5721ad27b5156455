package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Layouts are written as "which sheet: pieces of each kind", the sheets on hand first, the largest kind first; trees as what is divided where, in mm. */
class SheetFillTest {
    private static final SheetStock HUNDRED = stock("100 mm", "60 mm", 10);

    @Test
    void fillsWhatIsOnHandBeforeItOpensNewSheets() {
        assertThat(filled(List.of(size("70 mm", "50 mm")), List.of(HUNDRED), piece("60 mm", "40 mm", 3))).containsExactly("0: [1]", "1: [2]");
        assertThat(filled(List.of(size("70 mm", "50 mm"), size("70 mm", "50 mm")), List.of(), piece("60 mm", "40 mm", 2))).containsExactly("0: [1]", "0: [1]");
        assertThat(filled(List.of(size("30 mm", "30 mm")), List.of(HUNDRED), piece("60 mm", "40 mm", 1))).containsExactly("1: [1]");
    }

    /** Three of 60 x 40 lie on one of 120 x 60 for 15, two on one of 100 x 60 for 10. */
    @Test
    void opensTheSheetThatMakesTheCheapestPlan() {
        assertThat(filled(List.of(), List.of(HUNDRED, stock("120 mm", "60 mm", 15)), piece("60 mm", "40 mm", 3))).containsExactly("1: [3]");
        assertThat(filled(List.of(), List.of(HUNDRED, stock("120 mm", "60 mm", 25)), piece("60 mm", "40 mm", 3))).containsExactly("0: [2]", "0: [1]");
        assertThat(filled(List.of(), List.of(HUNDRED, stock("120 mm", "80 mm", 25)), piece("110 mm", "70 mm", 1))).containsExactly("1: [1]");
    }

    @Test
    void findsNothingWhereTheSheetsDoNotReach() {
        assertThat(SheetFill.fill(kinds(List.of(size("70 mm", "50 mm")), List.of(), piece("60 mm", "40 mm", 2)))).isEmpty();
        assertThat(SheetFill.fill(kinds(List.of(), List.of(HUNDRED), piece("110 mm", "40 mm", 1)))).isEmpty();
    }

    /** Turned, it leaves nothing beside it; what is left is square, and the second lies as it is written. */
    @Test
    void laysAPieceWhereItFitsBest() {
        assertThat(trees(List.of(), List.of(HUNDRED), piece("60 mm", "40 mm", 1))).containsExactly("(a' | 40)");
        assertThat(trees(List.of(), List.of(HUNDRED), piece("60 mm", "40 mm", 2))).containsExactly("(a' | 40 (a - 40))");
    }

    /** 60 x 40 that may not be turned leaves 40 x 60 where the first cut runs across, and no more than 100 x 20 where it runs along. */
    @Test
    void keepsTheLargestRestInOnePiece() {
        assertThat(trees(List.of(), List.of(HUNDRED), grain("60 mm", "40 mm", 1))).containsExactly("((a - 40) | 60)");
        assertThat(trees(List.of(), List.of(HUNDRED), grain("90 mm", "20 mm", 1))).containsExactly("((a | 90) - 20)");
        assertThat(trees(List.of(), List.of(HUNDRED), grain("100 mm", "60 mm", 1))).containsExactly("a");
    }

    @Test
    void addsUpWhatNewSheetsCost() {
        SheetKinds kinds = kinds(List.of(size("70 mm", "50 mm")), List.of(HUNDRED), piece("60 mm", "40 mm", 5));
        List<Layout> layouts = SheetFill.fill(kinds).orElseThrow();
        assertThat(layouts).extracting(Layout::sheet).containsExactly(0, 1, 1);
        assertThat(SheetFill.cost(kinds, layouts)).isEqualTo(200_000);
    }

    private static List<String> filled(List<Extent> onHand, List<SheetStock> stocks, Rectangle... pieces) {
        return SheetFill.fill(kinds(onHand, stocks, pieces)).orElseThrow().stream().map(l -> l.sheet() + ": " + Arrays.toString(l.counts())).toList();
    }

    private static List<String> trees(List<Extent> onHand, List<SheetStock> stocks, Rectangle... pieces) {
        return SheetFill.fill(kinds(onHand, stocks, pieces)).orElseThrow().stream().map(l -> written(l.tree())).toList();
    }

    private static String written(CutTree tree) {
        if (tree.isDivided()) {
            String parts = "(%s %s %d %s".formatted(written(tree.first()), tree.across() ? "|" : "-", tree.at() / 1000, written(tree.second()));
            return parts.strip() + ")";
        }
        return tree.isPiece() ? (char) ('a' + tree.kind()) + (tree.turned() ? "'" : "") : "";
    }

    private static SheetKinds kinds(List<Extent> onHand, List<SheetStock> stocks, Rectangle... pieces) {
        return SheetKinds.of(new SheetCuttingRequest(Stream.of(pieces).toList(), onHand, stocks, Quantity.parse("0 mm"), null));
    }

    private static SheetStock stock(String length, String width, int cost) {
        return new SheetStock(size(length, width), BigDecimal.valueOf(cost));
    }

    private static Rectangle piece(String length, String width, int count) {
        return new Rectangle("a", size(length, width), false, count);
    }

    private static Rectangle grain(String length, String width, int count) {
        return new Rectangle("a", size(length, width), true, count);
    }

    private static Extent size(String length, String width) {
        return new Extent(Quantity.parse(length), Quantity.parse(width));
    }
}
