package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedSizesTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/published/wire-gauges.csv", useHeadersInDisplayName = true)
    void reproducesWireGauges(String table, int gauge, BigDecimal mm) {
        Quantity diameter = table.equals("awg") ? WireGauge.american(gauge) : WireGauge.imperial(gauge);
        assertThat(diameter.in(Unit.MM).amount()).isCloseTo(mm, within(new BigDecimal("0.0005")));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ring-sizes.csv", useHeadersInDisplayName = true)
    void reproducesRingSizes(String table, String size, String measure, BigDecimal value, String unit, BigDecimal tolerance) {
        Quantity circumference = switch (table) {
            case "us" -> RingSize.american(new BigDecimal(size));
            case "uk" -> RingSize.british(size);
            default -> Quantity.parse(size + " mm");
        };
        BigDecimal divisor = measure.equals("diameter") ? Quantity.PI : BigDecimal.ONE;
        assertThat(circumference.in(Unit.of(unit).orElseThrow()).amount().divide(divisor, Quantity.PRECISION)).isCloseTo(value, within(tolerance));
    }

    @Test
    void readsHalfSizesAndRefusesWhatIsNoSize() {
        assertThat(RingSize.british("m½")).isEqualTo(Quantity.parse("53.125 mm"));
        assertThatThrownBy(() -> RingSize.british("7")).hasMessageContaining("letters from A to Z");
        assertThat(RingSize.american(BigDecimal.ZERO).amount()).isCloseTo(new BigDecimal("36.547"), within(new BigDecimal("0.001"))); // 0.458 in x pi
        assertThat(RingSize.american(BigDecimal.valueOf(25)).amount()).isCloseTo(new BigDecimal("100.384"), within(new BigDecimal("0.001"))); // 1.258 in x pi
        assertThatThrownBy(() -> RingSize.american(new BigDecimal("25.5"))).hasMessageContaining("from 0 to 25");
        assertThatThrownBy(() -> WireGauge.american(-4)).hasMessage("The American gauge runs from -3 to 56, but -4 is asked.");
        assertThatThrownBy(() -> WireGauge.american(57)).hasMessageContaining("-3 to 56");
        assertThatThrownBy(() -> RingSize.american(new BigDecimal("-1"))).hasMessageContaining("from 0 to 25");
        assertThatThrownBy(() -> WireGauge.imperial(51)).hasMessage("The imperial standard gauge runs from 0 to 50, but 51 is asked.");
    }
}
