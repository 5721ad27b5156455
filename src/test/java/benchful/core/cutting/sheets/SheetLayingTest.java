package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pieces on a sheet of 100 x 60 mm, each cut 1 mm. Pieces and offcuts are written "size at place", cuts "across or along, where:
 * from to", all in mm.
 */
class SheetLayingTest {
    /** The rest of 39 x 60 is larger than that of 100 x 19, so the first cut runs across, and the second only to it. */
    @Test
    void cutsOffTheLargerRestFirst() {
        CutSheet sheet = lay(CutTree.piece(0, false), piece("60 mm", "40 mm", true), 1, null);
        assertThat(sheet.size()).isEqualTo(size("100 mm", "60 mm"));
        assertThat(sheet.bought()).isTrue();
        assertThat(pieces(sheet)).containsExactly("a1 60 x 40 at 0, 0");
        assertThat(cuts(sheet)).containsExactly("across 60: 0 to 60", "along 40: 0 to 60");
        assertThat(offcuts(sheet)).containsExactly("39 x 60 at 61, 0", "60 x 19 at 0, 41");
    }

    /** Of 90 x 20 the rest above is the larger, so the cut along the sheet comes first. */
    @Test
    void cutsAlongFirstWhereThatLeavesMore() {
        CutSheet sheet = lay(CutTree.piece(0, false), piece("90 mm", "20 mm", true), 1, null);
        assertThat(cuts(sheet)).containsExactly("along 20: 0 to 100", "across 90: 0 to 20");
        assertThat(offcuts(sheet)).containsExactly("100 x 39 at 0, 21", "9 x 20 at 91, 0");
    }

    @Test
    void turnsAPiece() {
        CutSheet sheet = lay(CutTree.piece(0, true), piece("60 mm", "40 mm", false), 1, null);
        assertThat(pieces(sheet)).containsExactly("a1 40 x 60 at 0, 0");
        assertThat(cuts(sheet)).containsExactly("across 40: 0 to 60");
        assertThat(offcuts(sheet)).containsExactly("59 x 60 at 41, 0");
    }

    /** 41 mm and its loss for each of two, the second divided by a cut along the sheet. */
    @Test
    void followsTheCutsOfATree() {
        CutTree both = CutTree.divided(true, 41_000, CutTree.piece(0, true), CutTree.divided(false, 41_000, CutTree.piece(0, false), CutTree.EMPTY));
        CutSheet sheet = lay(both, piece("60 mm", "40 mm", false), 2, null);
        assertThat(pieces(sheet)).containsExactly("a1 40 x 60 at 0, 0", "a2 60 x 40 at 41, 0");
        assertThat(cuts(sheet)).containsExactly("across 40: 0 to 60", "along 40: 41 to 100");
        assertThat(offcuts(sheet)).containsExactly("59 x 19 at 41, 41");
    }

    /** Who wants but one of two pieces makes no cut for the other. */
    @Test
    void leavesWholeWhatNobodyWants() {
        CutTree two = CutTree.divided(true, 61_000, CutTree.piece(0, false), CutTree.divided(true, 20_000, CutTree.piece(0, false), CutTree.EMPTY));
        CutSheet sheet = lay(two, piece("60 mm", "60 mm", true), 1, null);
        assertThat(pieces(sheet)).hasSize(1);
        assertThat(cuts(sheet)).containsExactly("across 60: 0 to 60");
        assertThat(offcuts(sheet)).containsExactly("39 x 60 at 61, 0");
        assertThat(offcuts(lay(two, piece("60 mm", "60 mm", true), 0, null))).containsExactly("100 x 60 at 0, 0");
    }

    /** What is no wider than a cut is no offcut, and is cut off all the same. */
    @Test
    void losesWhatIsNoWiderThanACut() {
        CutSheet sheet = lay(CutTree.piece(0, false), piece("99 mm", "60 mm", true), 1, null);
        assertThat(cuts(sheet)).containsExactly("across 99: 0 to 60");
        assertThat(offcuts(sheet)).isEmpty();
        assertThat(offcuts(lay(CutTree.piece(0, false), piece("100 mm", "59 mm", true), 1, null))).isEmpty();
        assertThat(cuts(lay(CutTree.piece(0, false), piece("100 mm", "60 mm", true), 1, null))).isEmpty();
    }

    @Test
    void keepsWhatHoldsThePieceThatIsWorthKeeping() {
        assertThat(kept(piece("39 mm", "60 mm", true))).containsExactly(true, false);
        assertThat(kept(piece("40 mm", "60 mm", true))).containsExactly(false, false);
        assertThat(kept(null)).containsExactly(false, false);
    }

    private static List<Boolean> kept(Rectangle keep) {
        return lay(CutTree.piece(0, false), piece("60 mm", "40 mm", true), 1, keep).offcuts().stream().map(CutSheet.Offcut::kept).toList();
    }

    private static CutSheet lay(CutTree tree, Rectangle piece, int count, Rectangle keep) {
        SheetKinds kinds = SheetKinds.of(new SheetCuttingRequest(List.of(piece), List.of(), List.of(new SheetStock(size("100 mm", "60 mm"), BigDecimal.ONE)), q("1 mm"), null));
        int[] given = new int[1];
        return new SheetLaying(kinds, 1_000, keep, kind -> "a" + ++given[kind], new int[] {count}).sheet(new Layout(0, new int[] {count}, tree));
    }

    private static List<String> pieces(CutSheet sheet) {
        return sheet.pieces().stream().map(p -> "%s %s at %s".formatted(p.label(), written(p.size()), place(p.x(), p.y()))).toList();
    }

    private static List<String> offcuts(CutSheet sheet) {
        return sheet.offcuts().stream().map(o -> "%s at %s".formatted(written(o.size()), place(o.x(), o.y()))).toList();
    }

    private static List<String> cuts(CutSheet sheet) {
        return sheet.cuts().stream().map(c -> "%s %s: %s to %s".formatted(c.across() ? "across" : "along", mm(c.at()), mm(c.from()), mm(c.to()))).toList();
    }

    private static String written(Extent size) {
        return mm(size.length()) + " x " + mm(size.width());
    }

    private static String place(Quantity x, Quantity y) {
        return mm(x) + ", " + mm(y);
    }

    private static String mm(Quantity length) {
        return length.toString().replace(" mm", "");
    }

    private static Rectangle piece(String length, String width, boolean grain) {
        return new Rectangle("a", size(length, width), grain, 2);
    }

    private static Extent size(String length, String width) {
        return new Extent(q(length), q(width));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
