package benchful.plans.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingPlan;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CuttingPictureTest {
    private static final CutLength TWO = length("2 m", "1 m", "60 cm");
    private static final CutLength ONE = length("1 m", "1 m");
    private static final CuttingPicture PICTURE =
            new CuttingPicture(new CuttingPlan(List.of(TWO, TWO, ONE), BigDecimal.ONE, BigDecimal.ONE, "proven", List.of()), 640, 12, Quantity::toString);

    @Test
    void drawsEqualLengthsOnceWithTheirNumber() {
        assertThat(PICTURE.groups()).containsExactly(new CuttingPicture.Group(TWO, 2), new CuttingPicture.Group(ONE, 1));
        assertThat(PICTURE.svg("c", "How cord is cut")).contains(">2 ×</text>").contains(">1 ×</text>").contains("2 × 2 m cut into 1 m, 60 cm, offcut 0.4 m");
    }

    @Test
    void drawsPiecesToOneScale() {
        List<Double> widths = PICTURE.svg("c", "t").lines().filter(line -> line.contains("#e3edef"))
                .map(line -> Double.valueOf(line.replaceAll(".* width=\"([\\d.]+)\".*", "$1"))).toList();
        assertThat(widths).hasSize(3);
        assertThat(widths.get(0)).isCloseTo(widths.get(2), offset(0.02));
        assertThat(widths.get(1) / widths.get(0)).isCloseTo(0.6, offset(0.001));
    }

    private static CutLength length(String whole, String... pieces) {
        List<CutLength.Cut> cuts = new ArrayList<>();
        Quantity at = Quantity.parse("0 m");
        for (String piece : pieces) {
            cuts.add(new CutLength.Cut("student", Quantity.parse(piece), at));
            at = at.plus(Quantity.parse(piece));
        }
        return new CutLength(Quantity.parse(whole), true, cuts, Quantity.parse(whole).minus(at), false);
    }
}
