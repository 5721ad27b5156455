package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            16 in,   40.64 cm
            1 yd,    0.9144 m
            1 lb,    453.59237 g
            1 oz,    28.349523125 g
            1 ozt,   31.1034768 g
            1 dwt,   1.55517384 g
            1 floz,  29.5735295625 ml
            20 dwt,  1 ozt
            16 oz,   1 lb
            """)
    void convertsExactlyByTheLegalDefinitions(String given, String expected) {
        assertThat(Quantity.parse(given)).isEqualTo(Quantity.parse(expected)).hasSameHashCodeAs(Quantity.parse(expected));
    }

    @Test
    void readsACommaAndABareNumber() {
        assertThat(Quantity.parse("0,6mm")).isEqualTo(Quantity.of("0.6", Unit.MM));
        assertThat(Quantity.parse(" 12 ")).isEqualTo(Quantity.of(12, Unit.PIECE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "NaN", "Infinity", "1e99 mm", "twelve", "3 parsecs", "--3 mm", "1.5.2 mm"})
    void refusesWhatIsNoAmount(String written) {
        assertThatThrownBy(() -> Quantity.parse(written)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void keepsItsUnitWhenAddingAndRefusesAnotherKind() {
        assertThat(Quantity.parse("1 m").plus(Quantity.parse("1 in"))).hasToString("1.0254 m");
        assertThatThrownBy(() -> Quantity.parse("1 m").plus(Quantity.parse("1 g")))
                .hasMessage("1 g is a mass and can't be given in m.");
    }

    @Test
    void writesItselfInPlainDigits() {
        assertThat(new Quantity(new BigDecimal("1E+3"), Unit.MM)).hasToString("1000 mm");
    }

    /** Whatever is reckoned with amounts of every unit, what is written is read again as the same. */
    @Test
    void readsAllThatItWrites() {
        Random random = new Random(5);
        for (Unit unit : Unit.measured()) {
            for (Unit other : Unit.measured()) {
                for (int i = 0; i < 20; i++) {
                    Quantity given = new Quantity(new BigDecimal(BigInteger.valueOf(random.nextLong() >> random.nextInt(60)), random.nextInt(12)), unit);
                    Quantity divided = new Quantity(given.amount().divide(BigDecimal.valueOf(1 + random.nextInt(12)), Quantity.PRECISION), unit);
                    for (Quantity each : List.of(given, divided, other.dimension().equals(unit.dimension()) ? divided.in(other) : divided.times(given.amount()))) {
                        assertThat(Quantity.parse(each.toString())).isEqualTo(each).hasToString(each.toString());
                    }
                }
            }
        }
    }

    /** NIST Handbook 44, Appendix C, tables of liquid measure, area, volume and mass (relations from memory). */
    @ParameterizedTest
    @CsvSource({"1 gal, 231 in3", "1 gal, 4 qt", "1 gal, 8 pt", "1 gal, 16 cup", "1 gal, 128 floz", "1 gal, 256 tbsp", "1 gal, 768 tsp", "1 ft2, 144 in2",
        "1 yd2, 9 ft2", "1 lb, 7000 gr", "1 ozt, 480 gr", "1 dwt, 24 gr", "1 in3, 16.387064 ml", "1 cm3, 1 ml"})
    void knowsTheCustomaryUnitsByTheirRelations(String one, String other) {
        assertThat(Quantity.parse(one).compareTo(Quantity.parse(other))).isZero();
    }

    @Test
    void roundsToWhatCanBeMeasuredAndComesBackTheSameFromTheHeldUnit() {
        assertThat(Quantity.parse("2 m").in(Unit.FOOT).measurable()).hasToString("6.56168 ft");
        assertThat(Quantity.parse("5 ml").in(Unit.FLUID_OUNCE).measurable()).hasToString("0.1691 floz");
        assertThat(Quantity.parse("0.511 mm").measurable()).hasToString("0.511 mm");
        Random random = new Random(6);
        for (Unit unit : Unit.measured()) {
            Unit held = Unit.held(unit.dimension()).orElseThrow();
            for (int i = 0; i < 200; i++) {
                Quantity once = new Quantity(BigDecimal.valueOf(7L * random.nextInt(5000) + 1 + random.nextInt(6)).divide(BigDecimal.valueOf(7), Quantity.PRECISION), unit).measurable();
                assertThat(once.in(held).measurable().in(unit).measurable()).as("%s by way of %s", once, held).isEqualTo(once);
            }
        }
    }

    /** An amount in the sign of a unit is read at once, and as it would be by hand. */
    @ParameterizedTest
    @MethodSource("units")
    void readsAUnitsSignAsItIsReadByHand(Unit unit) {
        assertThat(Handwritten.amount("1.5 " + unit.symbol())).isEqualTo("1.5 " + unit.symbol());
        assertThat(Quantity.parse("1,5 " + unit.symbol())).isEqualTo(Quantity.parse("1.5" + unit.symbol())).isEqualTo(new Quantity(new BigDecimal("1.5"), unit));
    }

    @Test
    void refusesMoreThanAnythingIsPlannedWith() {
        assertThat(MeasuringRange.bounded(Quantity.parse("100000 m"))).isEqualTo(Quantity.of(100_000, Unit.M));
        assertThatThrownBy(() -> MeasuringRange.bounded(Quantity.parse("1000000 m"))).hasMessage("That is more than anything is planned with here. Give at most 100000 m.");
    }

    @Test
    void reckonsExactly() {
        assertThat(Quantity.parse("1 m").minus(Quantity.parse("1 in"))).hasToString("0.9746 m");
        assertThat(Quantity.parse("1.5 m").times(3)).hasToString("4.5 m");
        assertThat(Quantity.parse("1.5 m").times(new BigDecimal("0.5"))).hasToString("0.75 m");
        assertThat(Quantity.parse("2.345 m").rounded(2, RoundingMode.HALF_EVEN)).hasToString("2.34 m");
        assertThat(Quantity.of("1.5", Unit.M).base()).isEqualByComparingTo("1500");
        assertThat(Quantity.ofBase(new BigDecimal("1500"), Unit.M)).hasToString("1.5 m");
    }

    @Test
    void comparesAmountsAndNotTheirUnits() {
        assertThat(Quantity.parse("1 in")).isLessThan(Quantity.parse("2.55 cm")).isGreaterThan(Quantity.parse("25.3 mm")).isNotEqualTo(Quantity.parse("25.3 mm"));
        assertThat(Quantity.parse("0 mm")).isNotEqualTo(Quantity.parse("0 g")).isNotEqualTo(null);
        assertThat(Quantity.parse("-2 mm").signum()).isNegative();
        assertThat(Quantity.parse("2 mm").signum()).isPositive();
    }

    @Test
    void namesDimensions() {
        assertThat(Dimension.LENGTH.times(Dimension.LENGTH)).isEqualTo(Dimension.AREA);
        assertThat(Dimension.MASS.over(Dimension.VOLUME)).isEqualTo(Unit.G_PER_CM3.dimension());
        assertThat(new Dimension(1, 2).times(new Dimension(3, 5))).isEqualTo(new Dimension(4, 7));
        assertThat(new Dimension(1, 2).over(new Dimension(3, 5))).isEqualTo(new Dimension(-2, -3));
        assertThat(Dimension.AREA.words()).isEqualTo("an area");
        assertThat(new Dimension(-3, 1).words()).isEqualTo("mm^-3 g^1");
        assertThat(Unit.held(new Dimension(5, 0))).isEmpty();
    }

    /** What stays within is the most exactly; written as it is, in whole ones where there are as many. */
    @ParameterizedTest
    @CsvSource({"1000000, 1000001, 1000000 pcs", "100000000 mm, 100000001 mm, 100000000 mm", "328083 ft, 328085 ft, 328083 ft", "10000 m2, 10001 m2, 10000 m2",
        "1000000 l, 1000001 l, 1000000 l", "1000000 kg, 1000001 kg, 1000000 kg"})
    void boundsEachKindOfAmount(String most, String more, String told) {
        assertThatThrownBy(() -> MeasuringRange.bounded(Quantity.parse(more))).hasMessageContaining("Give at most " + told + ".");
        assertThat(MeasuringRange.bounded(Quantity.parse(most))).isEqualTo(Quantity.parse(most));
        assertThat(MeasuringRange.bounded(Quantity.parse("-" + most))).isEqualTo(Quantity.parse("-" + most));
        assertThatThrownBy(() -> MeasuringRange.bounded(Quantity.parse("-" + more))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("units")
    void measuresNoFinerThanTheHeldUnit(Unit unit) {
        Map<Dimension, String> finest = Map.of(Dimension.COUNT, "0.0001", Dimension.LENGTH, "0.001", Dimension.AREA, "0.001", Dimension.VOLUME, "1", Dimension.MASS, "0.0001");
        BigDecimal step = new BigDecimal(finest.getOrDefault(unit.dimension(), "0.000000001"));
        BigDecimal last = BigDecimal.ONE.movePointLeft(MeasuringRange.places(unit)).multiply(unit.factor());
        assertThat(MeasuringRange.places(unit)).isNotNegative();
        assertThat(last).isGreaterThanOrEqualTo(step);
        assertThat(MeasuringRange.places(unit) == 0 || last.movePointLeft(1).compareTo(step) < 0).isTrue();
    }

    private static List<Unit> units() {
        return Unit.measured();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            20 sheets 70 x 50 cm          | 20 sheets 70 cm x 50 cm | 70000 cm2
            1 sheet 300 mm x 20 cm        | 1 sheet 300 mm x 20 cm  | 600 cm2
            2 sheets of 8.5x11 in         | 2 sheets 8.5 in x 11 in | 187 in2
            2,5 Cards of 2 m              | 2.5 cards of 2 m        | 5 m
            1 tube of 9 ml                | 1 tube of 9 ml          | 9 ml
            3 packs of 10                 | 3 packs of 10 pcs       | 30 pcs
            2 dozen                       | 2 dozen                 | 24 pcs
            1 pair                        | 1 pair                  | 2 pcs
            3 reams                       | 3 reams                 | 1500 pcs
            2,5 m x 140 cm                | 2.5 m x 140 cm          | 35000 cm2
            2.5 metres × 1.4 m            | 2.5 m x 1.4 m           | 35000 cm2
            1 yd x 54 in                  | 1 yd x 54 in            | 1944 in2
            """)
    void readsWhatIsCountedByThings(String written, String kept, String measured) {
        assertThat(Quantity.parse(written)).hasToString(kept).isEqualTo(Quantity.parse(measured));
        assertThat(Quantity.parse(kept)).hasToString(kept);
    }

    @Test
    void knowsTheSizeOfASheetOnceTheMaterialSaysIt() {
        Unit sheet = Unit.parse("sheets 70 x 50 cm").orElseThrow();
        Quantity written = Quantity.parse("20 sheets");
        assertThat(written.dimension()).isEqualTo(Dimension.UNSIZED);
        assertThat(written.sized(sheet)).isEqualTo(Quantity.parse("7 m2"));
        assertThat(written.sized(Unit.parse("cards of 2 m").orElseThrow())).isSameAs(written);
        assertThat(Quantity.parse("3 sheets 20 x 30 cm").sized(sheet)).isEqualTo(Quantity.parse("1800 cm2"));
        assertThat(sheet.ends()).isFalse();
        assertThat(Unit.parse("pair").orElseThrow().ends()).isTrue();
    }

    @Test
    void takesALengthOfWhatRunsOffARollForSoMuchOfItsWidth() {
        Unit cloth = Unit.parse("m x 140 cm").orElseThrow();
        assertThat(Quantity.parse("50 cm").sized(cloth)).hasToString("0.5 m x 140 cm").isEqualTo(Quantity.parse("7000 cm2"));
        assertThat(Quantity.parse("1 yd").sized(cloth)).hasToString("0.9144 m x 140 cm");
        assertThat(Quantity.parse("50 cm").sized(Unit.M2)).hasToString("50 cm");
        assertThat(Container.words()).contains("sheets").doesNotContain("metre", "metres", "yard");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3 sheets 70 cm", "3 sheets of 2 g x 3 g", "2 sheets 0 x 50 cm", "1 card of 0 m", "2 dozen of 3", "3 parcels", "3 sheets 70 x 50", "1 tube of 9 parsec", "3 m x 0 cm", "3 cm x 140 cm",
            "3 m x 140", "3 m x 2 g", "3 m x", "2 metre 140 cm"})
    void refusesThingsWhoseSizeIsNone(String written) {
        assertThatThrownBy(() -> Quantity.parse(written)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void findsUnitsBySymbol() {
        for (Unit unit : Unit.measured()) {
            assertThat(Unit.of(unit.symbol())).contains(unit);
        }
        assertThat(Unit.of("parsec")).isEmpty();
    }
}
