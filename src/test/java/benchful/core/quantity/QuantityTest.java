package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
    @ValueSource(strings = {"", "NaN", "Infinity", "1e99 mm", "twelve", "3 parsecs", "--3 mm", "99999999999999 mm"})
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
}
