package benchful.plans.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.sheets.SheetPlanner;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetPictureTest {
    private static final SheetPlan PLAN = (SheetPlan) SheetPlanner.plan(new SheetCuttingRequest(
            List.of(new Rectangle("leaf", extent("60 mm", "40 mm"), false, 10)), List.of(),
            List.of(new SheetStock(extent("121 mm", "81 mm"), BigDecimal.ONE)), Quantity.parse("1 mm"), new Rectangle("leaf", extent("60 mm", "40 mm"), false, 1)));
    private static final List<SheetPicture> PICTURES = SheetPicture.of(PLAN, 640, 12, Extent::toString);

    @Test
    void drawsSheetsThatAreCutAlikeOnce() {
        assertThat(PICTURES).extracting(SheetPicture::count).containsExactly(2, 1);
        assertThat(PICTURES.get(0).svg("s", "t")).contains(">2 ×</text>", ">3</text>", "2 × 121 mm x 81 mm, by 3 cuts, into 60 mm x 40 mm (leaf)");
        assertThat(PICTURES.get(1).svg("s", "t")).contains("offcuts to keep");
    }

    @Test
    void drawsToScale() {
        String piece = PICTURES.get(0).svg("s", "t").lines().filter(line -> line.contains("#e3edef")).findFirst().orElseThrow();
        double width = Double.parseDouble(piece.replaceAll(".* width=\"([\\d.]+)\".*", "$1"));
        double height = Double.parseDouble(piece.replaceAll(".* height=\"([\\d.]+)\".*", "$1"));
        assertThat(width / height).isCloseTo(1.5, offset(0.01));
    }

    private static Extent extent(String length, String width) {
        return new Extent(Quantity.parse(length), Quantity.parse(width));
    }
}
