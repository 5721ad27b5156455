package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatsTest {
    @Test
    void partsNoNumberFromItsUnitAndShowsTenthsWhereAScaleDoes() {
        assertThat(Formats.unparted("2 min 46 s, 1 h 30 min")).isEqualTo("2\u00a0min\u00a046\u00a0s, 1\u00a0h\u00a030\u00a0min");
        assertThat(Formats.unparted("2 × 10 mm silk 0.6 mm, No 2 of 3")).isEqualTo("2\u00a0×\u00a010\u00a0mm silk 0.6\u00a0mm, No 2 of 3");
        assertThat(Formats.measured(Quantity.of("4", Unit.G))).isEqualTo("4.0 g");
        assertThat(Formats.measured(Quantity.of("8.5", Unit.G))).isEqualTo("8.5 g");
        assertThat(Formats.measured(Quantity.of("12", Unit.G))).isEqualTo("12 g");
        assertThat(Formats.measured(Quantity.of("4", Unit.ML))).isEqualTo("4 ml");
    }

    @Test
    void writesDaysAndClockTimes() {
        LocalDateTime start = LocalDateTime.of(2027, 3, 6, 9, 5);
        assertThat(Formats.words(start)).isEqualTo("Sat 6 Mar 2027, 09:05");
        assertThat(Formats.clock(start)).isEqualTo("09:05");
    }

    @ParameterizedTest
    @CsvSource({"PT4M59S, 4 min 59 s", "PT5M20S, 5 min", "PT5M30S, 6 min", "PT89M59S, 1 h 30 min", "PT24H, 24 h", "-PT7M40S, -8 min", "PT0S, 0 min"})
    void roundsTimesToWholeMinutesFromFiveOn(Duration time, String words) {
        assertThat(Formats.words(time)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 pcs      | 12
            1.256 m     | 1.26 m
            42 cm       | 42 cm
            12345.6 mm  | 12,345.6 mm
            30 cm2      | 30 cm²
            0.004 ml    | 0.004 ml
            0.00126 ml  | 0.0013 ml
            0.0349 g    | 0.035 g
            0 g         | 0 g
            """)
    void writesAmountsSoThatSmallOnesStillShow(String quantity, String words) {
        assertThat(Formats.words(Quantity.parse(quantity))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"GBP 1234.5, '£1,234.50'", "EUR 3, €3.00", "USD 0.10, US$0.10"})
    void writesMoney(String money, String words) {
        assertThat(Formats.words(Money.parse(money))).isEqualTo(words);
    }

    @Test
    void countsNounsAndNamesKinds() {
        assertThat(Formats.counted(1, "student")).isEqualTo("1 student");
        assertThat(Formats.counted(0, "student")).isEqualTo("0 students");
        assertThat(Formats.title(StepKind.TOGETHER)).isEqualTo("Together");
        assertThat(Formats.number(new BigDecimal("-0.004"), 2)).isEqualTo("0");
    }
}
