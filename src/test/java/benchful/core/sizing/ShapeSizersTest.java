package benchful.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bracelets, coils, pours and sheets, each against a worked example. */
class ShapeSizersTest {
    /** Bead trade pages: length = wrist + ease + pi x bead diameter; 8 mm beads add 25.13 mm. */
    @Test
    void closedBraceletAddsPiTimesTheBead() {
        Bracelet bracelet = BraceletSizer.size(new BraceletRequest(q("165 mm"), q("12 mm"), q("0 mm"),
                List.of(new BeadRun("round", q("8 mm"), 1)), Arrangement.REPEATED, Knots.none(), null));

        assertThat(bracelet.strand().beads()).hasSize(25); // (165 + 12 + 25.13) / 8 = 25.27
        assertThat(bracelet.strand().length().minus(bracelet.inside()).base()).isCloseTo(new BigDecimal("25.13"), within(new BigDecimal("0.005")));
        assertThat(bracelet.reasons().get(0)).hasToString("Inside it measures 174.9 mm, for a wrist of 165 mm and 12 mm of ease.");
    }

    /** Geometry: outside diameter 10, wire 2, so the mandrel is 6 and one turn takes pi x 8 = 25.13. */
    @Test
    void turnOfWireRunsAlongItsCentre() {
        Coil coil = CoilSizer.size(new CoilRequest(q("6 mm"), q("2 mm"), new BigDecimal("3"), q("10 mm"), null));

        assertThat(coil.turn().base()).isCloseTo(new BigDecimal("25.13"), within(new BigDecimal("0.005")));
        assertThat(coil.length()).isEqualTo(coil.turn().times(3).plus(q("10 mm")));
        assertThat(coil.outside()).isEqualTo(q("10 mm"));
        assertThat(coil.height()).isEqualTo(q("6 mm"));
        assertThat(coil.mass()).isNull();
    }

    /** A composites guide: 100 : 47 by weight is 2 : 1 by volume for one epoxy system, its parts' densities differing by 1.064. */
    @Test
    void ratioByWeightIsNotOneByVolume() {
        Quantity b = q("1 g_per_cm3");
        Quantity a = q("1.064 g_per_cm3");
        Pour byVolume = PourSizer.size(new PourRequest(q("30 ml"), null, new Mix(Mix.By.VOLUME, new BigDecimal(2), BigDecimal.ONE), a, b));
        Pour byWeight = PourSizer.size(new PourRequest(q("30 ml"), null, new Mix(Mix.By.WEIGHT, new BigDecimal(100), new BigDecimal(47)), a, b));

        assertThat(byVolume.a().volume()).isEqualTo(q("20 ml"));
        assertThat(byVolume.b().mass()).isEqualTo(q("10 g"));
        assertThat(byWeight.a().mass().base()).isCloseTo(byVolume.a().mass().base(), within(new BigDecimal("0.01")));
        assertThat(byWeight.reasons()).extracting(Sentence::toString).contains(
                "Mix 100 : 47 by weight: 21.28 g of part a and 10 g of part b. A ratio by weight is not one by volume.");
    }

    @Test
    void mixByWeightNeedsADensity() {
        assertThatThrownBy(() -> new PourRequest(q("30 ml"), null, new Mix(Mix.By.WEIGHT, BigDecimal.ONE, BigDecimal.ONE), null, null))
                .hasMessage("A mix by weight needs the density of the mix, or of both parts, to tell its mass.");
    }

    @Test
    void sheetIsLaidInRowsTheBetterWay() {
        Sheet sheet = SheetSizer.size(new SheetRequest(q("30 mm"), q("40 mm"), 10, q("1 mm"), q("100 mm"), q("93 mm"), null, null));

        // 30 across 100: 3, 40 up 93: 2, so 6; turned: 40 across 100: 2, 30 up 93 (30 + 1 + 30 + 1 + 30 = 92): 3, so 6
        assertThat(sheet.perSheet()).isEqualTo(6);
        assertThat(sheet.sheets()).isEqualTo(2);
        assertThat(sheet.area()).isEqualTo(q("120 cm2"));
    }

    @Test
    void sheetSaysWhereNothingFits() {
        Sheet sheet = SheetSizer.size(new SheetRequest(q("30 mm"), q("40 mm"), 1, q("0 mm"), q("20 mm"), q("50 mm"), q("1 mm"), q("8.5 g_per_cm3")));

        assertThat(sheet.perSheet()).isZero();
        assertThat(sheet.sheets()).isNull();
        assertThat(sheet.mass()).isEqualTo(q("10.2 g"));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
