package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExtentTest {
    @Test
    void knowsItsAreaAndItsLongerEdge() {
        assertThat(extent("3 cm", "20 mm").area()).isEqualTo(Quantity.parse("6 cm2"));
        assertThat(extent("2 cm", "30 mm").upright()).isEqualTo(extent("3 cm", "20 mm"));
        assertThat(extent("30 mm", "2 cm").upright()).isEqualTo(extent("3 cm", "20 mm"));
    }

    @ParameterizedTest
    @CsvSource({"60 mm, 40 mm, true", "40 mm, 60 mm, true", "61 mm, 40 mm, false", "60 mm, 41 mm, false", "41 mm, 60 mm, false", "10 mm, 61 mm, false"})
    void liesWithinAnotherTheOneWayOrTheOther(String length, String width, boolean within) {
        assertThat(extent(length, width).within(extent("60 mm", "40 mm"))).isEqualTo(within);
        assertThat(extent(length, width).within(extent("40 mm", "60 mm"))).isEqualTo(within);
    }

    @ParameterizedTest
    @CsvSource({"0 mm, 4 mm", "4 mm, 0 mm", "-1 mm, 4 mm", "4 mm, -1 mm", "4 g, 4 mm", "4 mm, 4 g"})
    void refusesWhatIsNoRectangle(String length, String width) {
        assertThatThrownBy(() -> extent(length, width)).hasMessageStartingWith("A rectangle has two lengths above 0");
    }

    private static Extent extent(String length, String width) {
        return new Extent(Quantity.parse(length), Quantity.parse(width));
    }
}
