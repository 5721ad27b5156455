package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.StudentTime;
import benchful.core.lesson.StudentTime.Work;
import java.time.Duration;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PaceTest {

    private static final double WEEK = 7 * 24 * 3600;

    private static StudentTime weeks(double quick, double usual, double slow) {
        return new StudentTime(length(quick), length(usual), length(slow));
    }

    private static Duration length(double weeks) {
        return Duration.ofSeconds(Math.round(weeks * WEEK));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/lesson-three-point.csv", useHeadersInDisplayName = true)
    void reproducesMeansAndVariancesOfTheConstructionExample(String activity, double a, double m, double b, double mean, double variance) {
        Pace pace = Pace.of(weeks(a, m, b));
        assertThat(pace.mean() / WEEK).isCloseTo(mean, within(1e-6));
        assertThat(pace.variance() / WEEK / WEEK).isCloseTo(variance, within(1e-4));
    }

    @Test
    void reproducesTheChanceOfTheConstructionExample() {
        double[][] path = {{1, 2, 3}, {2, 3.5, 8}, {6, 9, 18}, {1, 4.5, 5}, {4, 4, 10}, {3, 9, 9}, {1, 5.5, 7}, {5, 5.5, 9}};
        double mean = 0;
        double variance = 0;
        for (double[] times : path) {
            Pace pace = Pace.of(weeks(times[0], times[1], times[2]));
            mean += pace.mean() / WEEK;
            variance += pace.variance() / WEEK / WEEK;
        }
        assertThat(mean).isCloseTo(44, within(1e-6));
        assertThat(variance).isCloseTo(9, within(1e-6));
        assertThat(NormalDistribution.of(mean, Math.sqrt(variance)).cumulativeProbability(47)).isCloseTo(.8413, within(5e-5));
    }

    @Test
    void keepsTheStatedMeanAndSpreadInItsQuantiles() {
        Pace pace = Pace.of(StudentTime.ofMinutes(10, 12, 40));
        double sum = 0;
        double squares = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            double time = pace.quantile((i + 0.5) / draws);
            sum += time;
            squares += time * time;
        }
        double mean = sum / draws;
        assertThat(mean).isCloseTo(pace.mean(), within(0.5));
        assertThat(squares / draws - mean * mean).isCloseTo(pace.variance(), within(pace.variance() * 0.005));
        assertThat(pace.quantile(0)).isEqualTo(600);
        assertThat(pace.quantile(1)).isEqualTo(2400);
    }

    @Test
    void multipliesByRepeatsAndByTheLevel() {
        StudentTime time = new StudentTime(Duration.ofSeconds(20), Duration.ofSeconds(30), Duration.ofSeconds(60), List.of(new Work(40, 1.5), new Work(10, 1)));
        Pace pace = Pace.of(time);
        assertThat(pace.expectedOrderStatistic(1, time.scales(1))).isCloseTo(60 * pace.mean(), within(0.5));
        assertThat(time.scales(3)).containsExactly(60, 10, 10);
    }

    /** The last of unlike students is the last of those of the large scale, where the small one is always quicker; else by drawn classes. */
    @Test
    void waitsForTheLastOfUnlikeStudents() {
        Pace pace = Pace.of(StudentTime.ofMinutes(10, 15, 25));
        assertThat(pace.expectedOrderStatistic(4, new double[] {1, 1, 3, 3})).isCloseTo(3 * pace.expectedOrderStatistic(2, 2), within(2.0));
        double[] mixed = {1, 1.2, 1.4, 2};
        for (int k = 1; k <= 4; k++) {
            assertThat(pace.expectedOrderStatistic(k, mixed)).isCloseTo(Turns.ends(pace, mixed, 4)[k - 1], within(0.02 * 900));
        }
    }

    @Test
    void needsNoSpreadWhereAllAreEquallyQuick() {
        Pace pace = Pace.of(StudentTime.ofMinutes(5, 5, 5));
        assertThat(pace.quantile(0.3)).isEqualTo(300);
        assertThat(pace.expectedOrderStatistic(7, 12)).isEqualTo(300);
    }
}
