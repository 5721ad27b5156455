package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TendencyTest {
    private static Tendency of(int... minutes) {
        List<Outcome> outcomes = IntStream.range(0, minutes.length).mapToObj(i -> new Outcome(LocalDate.of(2027, 1, 1).plusWeeks(i), Duration.ofMinutes(minutes[i]))).toList();
        return Tendency.of("x", outcomes);
    }

    @Test
    void tellsTheMiddleAndTheEnds() {
        Tendency t = of(5, -2, 9, 0);
        assertThat(List.of(t.middle(), t.shortest(), t.longest())).containsExactly(Duration.ofSeconds(150), Duration.ofMinutes(-2), Duration.ofMinutes(9));
        assertThat(t.kept()).isEqualTo(2);
    }

    /** Worked out by hand from the formula. */
    @ParameterizedTest
    @CsvSource({"9, 10, 0.596, 0.982", "0, 3, 0.000, 0.562", "3, 3, 0.438, 1.000", "90, 100, 0.826, 0.945"})
    void saysBetweenWhichSharesTheTruthLies(int kept, int all, double least, double most) {
        Tendency t = of(IntStream.range(0, all).map(i -> i < kept ? -1 : 5).toArray());
        assertThat(t.least()).isCloseTo(least, within(0.0006));
        assertThat(t.most()).isCloseTo(most, within(0.0006));
    }

    @ParameterizedTest
    @CsvSource({"20, 20, 5, 5, BETTER", "1, 2, 9, 9, WORSE", "5, 6, 5, 7, STEADY"})
    void comparesTheLaterHalfWithTheEarlier(int a, int b, int c, int d, Tendency.Trend trend) {
        assertThat(of(a, b, c, d).trend()).isEqualTo(trend);
        assertThat(of(a, b, c).trend()).isEqualTo(Tendency.Trend.NOT_KNOWN);
    }
}
