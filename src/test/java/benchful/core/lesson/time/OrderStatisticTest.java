package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.StudentTime;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class OrderStatisticTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/lesson-order-statistics.csv", useHeadersInDisplayName = true)
    void reproducesTheLargestOfNormalDraws(int n, double expected) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        assertThat(OrderStatistic.expected(normal::cumulativeProbability, -10, 10, n, n)).isCloseTo(expected, within(6e-6));
        assertThat(OrderStatistic.expected(normal::cumulativeProbability, -10, 10, 1, n)).isCloseTo(-expected, within(6e-6));
    }

    /** The k-th of n uniform draws is k/(n+1) on average: David and Nagaraja, Order Statistics (from memory). */
    @Test
    void agreesWithTheClosedFormForUniformDraws() {
        assertThat(OrderStatistic.expected(x -> x, 0, 1, 9, 12)).isCloseTo(9 / 13.0, within(1e-6));
    }

    @Test
    void growsWithTheNumberThatMustFinishAndWithTheClass() {
        Pace pace = Pace.of(StudentTime.ofMinutes(10, 15, 40));
        assertThat(pace.expectedOrderStatistic(1, 1)).isCloseTo(pace.mean(), within(0.1));
        for (int n = 1; n < 30; n++) {
            assertThat(pace.expectedOrderStatistic(n + 1, n + 1)).isBetween(pace.expectedOrderStatistic(n, n), pace.slow());
            assertThat(pace.expectedOrderStatistic(n, n + 1)).isLessThan(pace.expectedOrderStatistic(n + 1, n + 1));
        }
    }
}
