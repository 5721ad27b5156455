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
            """)
    void worksOutAmountsWithUnits(String formula, String expected) {
        assertThat(Formula.of(formula.replace(';', ',')).evaluate(MEASURES)).isEqualTo(Quantity.parse(expected));
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

    @Test
    void listsTheMeasuresItNeeds() {
        assertThat(Formula.of("2 * length + 40 cm + pi * bead").names()).containsExactly("bead", "length");
    }
}
