package benchful.core.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    private static final Map<String, Quantity> MEASURES =
            Map.of("length", Quantity.parse("42 cm"), "beads", Quantity.parse("66"), "density", Quantity.parse("8.96 g_per_cm3"));

    @ParameterizedTest
    @CsvSource(textBlock = """
            2 * length + 40 cm,            1240 mm
            2 length + 30 cm,              1140 mm
            length / 6 mm,                 70 pcs
            ceil(length / 16 mm),        27 pcs
            beads - 1,                     65 pcs
            5 cm * 2 cm,                   1000 mm2
            density * 2 ml,                17.92 g
            max(10 mm; 2 cm),              20 mm
            sqrt(100 mm2),                 10 mm
            10 % * beads,                  6.6 pcs
            -(3) + 5,                      2 pcs
            awg(20) * 10,                  8.11784 mm
            swg(20),                       0.9144 mm
            floor(us_ring(7) / 1 mm),      54 pcs
            length - 12 cm,                300 mm
            round(2.5),                    3 pcs
            round(2.4),                    2 pcs
            floor(2.9),                    2 pcs
            ceil(2.1),                     3 pcs
            min(10 mm; 2 cm; 9 mm),        9 mm
            max(10 mm; 2 cm; 9 mm),        20 mm
            min(2 cm; 10 mm),              10 mm
            +length,                       420 mm
            sqrt(16),                      4 pcs
            sqrt(0 mm2),                   0 mm
            sqrt(3 cm * 3 cm * 4),         60 mm
            sqrt(2 g * 8 g),               4 g
            2 pi * 10 mm,                  62.83185307179586476925286766559006 mm
            123456789012345.123456789012345, 123456789012345.123456789012345 pcs
            """)
    void worksOutAmountsWithUnits(String formula, String expected) {
        assertThat(Formula.of(formula.replace(';', ',')).evaluate(MEASURES)).isEqualTo(Quantity.parse(expected));
    }

    @Test
    void tellsWhatWasWrittenAsFarAsItIsShort() {
        assertThatThrownBy(() -> Formula.of(" ".repeat(500))).isInstanceOf(FormulaException.class).message().doesNotContain("…");
        assertThatThrownBy(() -> Formula.of("1+".repeat(250) + "1")).isInstanceOf(FormulaException.class).message().contains("1+1+…");
        assertThat(Formula.of("1+".repeat(249) + "11").evaluate(MEASURES)).isEqualTo(Quantity.parse("260"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            length + 3 g      | a mass can't be added to a length
            length * 2 g      | no length, area, volume, mass or count
            lenght * 2        | “lenght” is neither a measure
            2 / 0             | divides by zero
            awg(length)       | awg takes a number
            awg(20.5)         | awg takes a whole number
            swg(60)           | gauge runs from 0 to 50
            ceil(length)      | ceil, floor and round take a count
            2 ^ 999999        | “^” is not used here
            random()          | can't be read
            1e99999999 + 1    | too long for a number
            0x1F              | too long for a number
            1234567890123456789012345678901 | too long for a number
            sqrt(length)      | sqrt needs a count or an area that is not negative.
            sqrt(-4)          | sqrt needs a count or an area that is not negative.
            sqrt(density)     | sqrt needs a count or an area that is not negative.
            length - 3 g      | a mass can't be taken from a length
            min(length, 3 g)  | a mass can't be compared with a length
            999999999999999 * 999999999999999 * 10 | the result is too large.
            us_ring(26)       | American ring sizes run from 0 to 25
            nothing           | Known measures: beads, density, length.
            """)
    void saysWhatIsWrong(String formula, String words) {
        assertThatThrownBy(() -> Formula.of(formula).evaluate(MEASURES))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2 *", "(length", "a[0]", "foo.bar", "\"text\"", "§"})
    void refusesWhatItCannotRead(String formula) {
        assertThatThrownBy(() -> Formula.of(formula).evaluate(MEASURES)).isInstanceOf(FormulaException.class);
    }

    @Test
    void insistsOnTheKindOfAmount() {
        assertThatThrownBy(() -> Formula.of("length").evaluate(MEASURES, Dimension.MASS))
                .hasMessage("In “length”: it gives a length, but a mass is needed here.");
        assertThat(Formula.of("3").evaluate(Map.of(), Dimension.COUNT)).isEqualTo(Quantity.of(3, Unit.PIECE));
    }

    /** 30 digits before the point are worked with, 31 are not. */
    @Test
    void boundsWhatIsMultiplied() {
        assertThat(Formula.of("999999999999999 * 999999999999999").evaluate(Map.of()).amount()).isEqualByComparingTo("999999999999998000000000000001");
    }

    @Test
    void takesExpressionsOfFiveHundredLetters() {
        assertThat(Formula.of("1" + " + 1".repeat(124) + "   ").evaluate(Map.of())).isEqualTo(Quantity.of(125, Unit.PIECE));
        assertThatThrownBy(() -> Formula.of("1" + " ".repeat(500))).hasMessageContaining("at most 500 characters").hasMessageContaining("…");
        assertThatThrownBy(() -> Formula.of(null)).hasMessageContaining("at most 500 characters");
        assertThatThrownBy(() -> Formula.of("x").evaluate(Map.of())).hasMessageContaining("Known measures: none.");
        assertThat(Formula.of("2 * length")).hasToString("2 * length");
    }

    @Test
    void listsTheMeasuresItNeeds() {
        assertThat(Formula.of("2 * length + 40 cm + pi * bead").names()).containsExactly("bead", "length");
    }
}
