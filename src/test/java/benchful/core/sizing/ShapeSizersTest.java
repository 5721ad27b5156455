package benchful.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bracelets, coils, pours and sheets, each against a worked example. */
class ShapeSizersTest {
    /** Bead trade pages: length = wrist + ease + pi x bead diameter; 8 mm beads add 25.13 mm. */
    @Test
    void closedBraceletAddsPiTimesTheBead() {
        Bracelet bracelet = BraceletSizer.size(new BraceletRequest(q("165 mm"), q("12 mm"), q("0 mm"),
                List.of(new BeadRun("round", q("8 mm"), 1)), Arrangement.REPEATED, Knots.none(), null, null));

        assertThat(bracelet.strand().beads()).hasSize(25); // (165 + 12 + 25.13) / 8 = 25.27
        assertThat(bracelet.strand().length().minus(bracelet.inside()).base()).isCloseTo(new BigDecimal("25.13"), within(new BigDecimal("0.005")));
        assertThat(bracelet.reasons().get(0)).hasToString("Inside it measures 174.9 mm, for a wrist of 165 mm and 12 mm of ease.");
    }

    /** Two and one, closed: only a multiple of three meets well. 8 n - 25.13 inside: 24 beads 166.9, 26 182.9, 27 190.9. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            170 mm | 15 mm | 6 mm | 27 | 26 beads would come nearer, 208 mm, but break the pattern at the join.
            170 mm | 15 mm | 4 mm | 26 | The pattern breaks at the join: no count within 4 mm of the length keeps it whole. Whole are 24 beads with 192 mm or 27 beads with 216 mm.
            155 mm | 12 mm | 6 mm | 24 |
            """)
    void takesWholeRepeatsForAClosedRowWhereTheToleranceAllows(String wrist, String ease, String tolerance, int beads, String reason) {
        Bracelet bracelet = BraceletSizer.size(new BraceletRequest(q(wrist), q(ease), q("0 mm"),
                List.of(new BeadRun("wood", q("8 mm"), 2), new BeadRun("glass", q("8 mm"), 1)), Arrangement.REPEATED, Knots.none(), null, q(tolerance)));
        assertThat(bracelet.strand().beads()).hasSize(beads);
        if (reason == null) {
            assertThat(bracelet.reasons()).noneMatch(r -> r.toString().contains("pattern"));
        } else {
            assertThat(bracelet.reasons()).extracting(Sentence::toString).contains(reason);
        }
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

    /** 30 ml at 1.2 g/cm3 are 36 g; of 2 : 1 by weight 24 and 12. */
    @Test
    void sharesTheMassOfAMixWhoseDensityIsKnown() {
        Pour pour = PourSizer.size(new PourRequest(q("30 ml"), q("1.2 g_per_cm3"), new Mix(Mix.By.WEIGHT, new BigDecimal(2), BigDecimal.ONE), null, null));

        assertThat(pour.mass()).isEqualTo(q("36 g"));
        assertThat(pour.a()).isEqualTo(new Pour.Part(q("24 g"), null));
        assertThat(pour.b()).isEqualTo(new Pour.Part(q("12 g"), null));
        assertThat(pour.reasons()).extracting(Sentence::toString).containsExactly("30 ml at 1.2 g_per_cm3 weighs 36 g.",
                "Mix 2 : 1 by weight: 24 g of part a and 12 g of part b. A ratio by weight is not one by volume.");
    }

    @Test
    void sharesTheVolumeWhereNoDensityIsKnown() {
        Pour pour = PourSizer.size(new PourRequest(q("30 ml"), null, new Mix(Mix.By.VOLUME, new BigDecimal(2), BigDecimal.ONE), null, null));

        assertThat(pour.mass()).isNull();
        assertThat(pour.a()).isEqualTo(new Pour.Part(null, q("20 ml")));
        assertThat(pour.b()).isEqualTo(new Pour.Part(null, q("10 ml")));
        assertThat(pour.reasons()).extracting(Sentence::toString).containsExactly(
                "Mix 2 : 1 by volume: 20 ml of part a and 10 ml of part b. A ratio by volume is not one by weight.");
        assertThat(PourSizer.size(new PourRequest(q("30 ml"), null, null, null, null)).reasons()).isEmpty();
    }

    @Test
    void refusesToPourWithoutVolumeOrWeight() {
        assertThatThrownBy(() -> new PourRequest(q("0 ml"), null, null, null, null)).hasMessage("The volume must be more than nothing, but is 0 ml.");
        assertThatThrownBy(() -> new PourRequest(q("30 ml"), q("0 g_per_cm3"), null, null, null)).hasMessage("The density must be more than nothing, but is 0 g_per_cm3.");
        assertThatThrownBy(() -> new PourRequest(q("30 ml"), null, null, q("0 g_per_cm3"), null)).hasMessageStartingWith("The density of part a must be more");
        assertThatThrownBy(() -> new PourRequest(q("30 ml"), null, null, null, q("0 g_per_cm3"))).hasMessageStartingWith("The density of part b must be more");
    }

    @Test
    void windsAnythingUpToAHundredThousandTurns() {
        assertThat(CoilSizer.size(new CoilRequest(q("6 mm"), q("2 mm"), new BigDecimal("100000"), q("0 mm"), null)).reasons()).hasSize(2);
        for (String turns : List.of("0", "100000.1")) {
            assertThatThrownBy(() -> new CoilRequest(q("6 mm"), q("2 mm"), new BigDecimal(turns), q("0 mm"), null))
                    .hasMessage("The turns must be more than 0 and at most 100000, but are %s.", turns);
        }
    }

    @Test
    void asksForASheetOfTwoEdgesAndForAThicknessWithItsDensity() {
        assertThatThrownBy(() -> new SheetRequest(q("3 cm"), q("4 cm"), 1, q("0 mm"), q("10 cm"), null, null, null))
                .hasMessage("The sheet needs both its width and its height.");
        assertThatThrownBy(() -> new SheetRequest(q("3 cm"), q("4 cm"), 1, q("0 mm"), null, null, null, q("2.7 g_per_cm3")))
                .hasMessage("The mass needs both thickness and density.");
    }

    @Test
    void refusesAMixOfNothing() {
        assertThatThrownBy(() -> new Mix(Mix.By.WEIGHT, BigDecimal.ZERO, BigDecimal.ONE)).hasMessage("Both parts of a mix must be more than nothing.");
        assertThatThrownBy(() -> new Mix(Mix.By.WEIGHT, BigDecimal.ONE, BigDecimal.ZERO)).hasMessage("Both parts of a mix must be more than nothing.");
        assertThatThrownBy(() -> new Mix(Mix.By.WEIGHT, BigDecimal.ONE, BigDecimal.ONE.negate())).hasMessage("Both parts of a mix must be more than nothing.");
    }

    /** Round wire of 2 mm and 1 m: pi x 1 mm2 x 1000 mm x 0.00896 g/mm3 = 28.15 g. */
    @Test
    void weighsWireByItsSection() {
        assertThat(CoilSizer.mass(q("1 m"), q("2 mm"), q("8.96 g_per_cm3")).base()).isCloseTo(new BigDecimal("28.149"), within(new BigDecimal("0.001")));
        Coil coil = CoilSizer.size(new CoilRequest(q("6 mm"), q("2 mm"), new BigDecimal("3"), q("0 mm"), q("8.96 g_per_cm3")));
        assertThat(coil.mass().base()).isCloseTo(new BigDecimal("2.122"), within(new BigDecimal("0.001")));
        assertThat(coil.reasons()).extracting(Sentence::toString).containsExactly(
                "One turn takes 25.1 mm: pi x (mandrel 6 mm + wire 2 mm).", "3 turns take 75.4 mm.", "The wire weighs 2.12 g, at 8.96 g_per_cm3.");
        assertThat(CoilSizer.size(new CoilRequest(q("6 mm"), q("2 mm"), new BigDecimal("3"), q("10 mm"), null)).reasons()).extracting(Sentence::toString)
                .containsExactly("One turn takes 25.1 mm: pi x (mandrel 6 mm + wire 2 mm).", "3 turns and 10 mm of straight wire take 85.4 mm.");
    }

    @Test
    void saysHowManySheetsPiecesTake() {
        assertThat(SheetSizer.size(new SheetRequest(q("30 mm"), q("40 mm"), 6, q("1 mm"), q("100 mm"), q("93 mm"), null, null)).reasons())
                .extracting(Sentence::toString).containsExactly("6 pieces of 30 mm x 40 mm are 7200 mm2.", "A sheet of 100 mm x 93 mm gives 6 pieces, so it takes 1 sheet.");
        assertThat(SheetSizer.size(new SheetRequest(q("30 mm"), q("40 mm"), 1, q("0 mm"), q("20 mm"), q("50 mm"), null, null)).reasons())
                .extracting(Sentence::toString).containsExactly("1 piece of 30 mm x 40 mm are 1200 mm2.", "No piece fits on a sheet of 20 mm x 50 mm.");
        Sheet alone = SheetSizer.size(new SheetRequest(q("30 mm"), q("40 mm"), 1, q("0 mm"), null, null, null, null));
        assertThat(alone.perSheet()).isNull();
        assertThat(alone.reasons()).extracting(Sentence::toString).containsExactly("1 piece of 30 mm x 40 mm are 1200 mm2.");
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
