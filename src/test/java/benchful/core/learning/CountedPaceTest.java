package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.CountedPace.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Nine students whose times at the typed minutes are log-normal about ten minutes with a spread of 0.3. */
class CountedPaceTest {
    private static final double SPREAD = 0.3;
    private static final List<Double> USUAL = IntStream.range(0, 300)
            .mapToObj(i -> 600 * Math.exp(SPREAD * NormalDistribution.of(0, 1).inverseCumulativeProbability((i + 0.5) / 300))).toList();
    private static final CountedPace PACE = new CountedPace(USUAL, 9, 9);

    @Test
    void takesAClassThatGoesAsTypedForOne() {
        Estimate estimate = PACE.of(List.of(new Count(600, 5), new Count(740, 7)), 950.0);
        assertThat(estimate.log()).isCloseTo(0, within(0.05));
        assertThat(estimate.precision()).isBetween(1.5, 3.0);
    }

    @Test
    void tellsNoMoreWithoutCountsThanTheEndDoes() {
        assertThat(PACE.of(List.of(), 950.0).precision()).isEqualTo(1);
    }

    @Test
    void growsWithAllTimesAlike() {
        Estimate one = PACE.of(List.of(new Count(600, 5), new Count(740, 7)), 950.0);
        Estimate half = PACE.of(List.of(new Count(900, 5), new Count(1110, 7)), 1425.0);
        assertThat(half.log() - one.log()).isCloseTo(Math.log(1.5), within(0.005));
    }

    /** One who never came to an end made the step late, and those who were counted before were no slower than usual. */
    @Test
    void blamesOneSlowStudentLessThanTheEndAloneWould() {
        double end = PACE.of(List.of(), 1500.0).log();
        assertThat(PACE.of(List.of(new Count(560, 4), new Count(700, 6), new Count(900, 8)), 1500.0).log()).isLessThan(end - 0.15);
    }

    /** Whoever has not finished counts too: five of nine in half an hour, and then the time was up. */
    @Test
    void learnsFromAStepThatWasNeverFinished() {
        Estimate estimate = PACE.of(List.of(new Count(1800, 5)), null);
        assertThat(estimate.log()).isCloseTo(Math.log(3), within(0.08));
        assertThat(estimate.precision()).isBetween(0.5, 3.0);
        assertThat(PACE.of(List.of(new Count(1800, 2)), null).log()).isGreaterThan(estimate.log());
    }

    @Test
    void letsALowerCountPutEarlierOnesRightAndLeavesOutWhatCannotBe() {
        Estimate right = PACE.of(List.of(new Count(600, 5)), 950.0);
        assertThat(PACE.of(List.of(new Count(600, 5), new Count(590, 8), new Count(610, 10), new Count(960, 9), new Count(0, 1)), 950.0)).isEqualTo(right);
    }

    @Test
    void takesTheTimeOfTheLastThatIsWaitedForWhereNotAllAre() {
        CountedPace most = new CountedPace(USUAL, 9, 8);
        assertThat(most.of(List.of(), 850.0).log()).isCloseTo(0, within(0.1));
        assertThat(most.of(List.of(), 850.0).log()).isGreaterThan(PACE.of(List.of(), 850.0).log() + 0.05);
    }

    /** Where the class moves on without some of the simulated students, the others tell. */
    @Test
    void takesThoseWhoDoNotFinishForLate() {
        List<Double> cut = USUAL.stream().map(time -> time > 900 ? Double.POSITIVE_INFINITY : time).toList();
        assertThat(new CountedPace(cut, 9, 8).of(List.of(new Count(600, 5)), null).log()).isCloseTo(PACE.of(List.of(new Count(600, 5)), null).log(), within(0.05));
    }

    /**
     * An exact answer for what is drawn: with counts at three moments the true pace is estimated without bias, and the error is what the
     * precision says against that of the end alone.
     */
    @Test
    void isRightOnAverageAndSurerThanTheEnd() {
        Random random = new Random(20_270_306);
        double sum = 0;
        double counted = 0;
        double ended = 0;
        int classes = 400;
        for (int i = 0; i < classes; i++) {
            List<Double> times = IntStream.range(0, 9).mapToObj(s -> 600 * Math.exp(SPREAD * random.nextGaussian())).sorted().collect(Collectors.toList());
            List<Count> counts = new ArrayList<>();
            for (double after : new double[] {480, 600, 720}) {
                counts.add(new Count(after, (int) times.stream().filter(time -> time <= after).count()));
            }
            double with = PACE.of(counts, times.get(8)).log();
            double without = PACE.of(List.of(), times.get(8)).log();
            sum += with / classes;
            counted += with * with / classes;
            ended += without * without / classes;
        }
        assertThat(sum).isCloseTo(0, within(0.02));
        assertThat(Math.sqrt(counted)).isCloseTo(0.105, within(0.015));
        assertThat(Math.sqrt(ended)).isCloseTo(0.18, within(0.03));
    }

    @Test
    void refusesAClassThatIsNone() {
        assertThatThrownBy(() -> new CountedPace(List.of(), 9, 9)).hasMessageContaining("no class was simulated");
        assertThatThrownBy(() -> new CountedPace(USUAL, 9, 10)).hasMessageContaining("10 can't be waited for");
        assertThatThrownBy(() -> new CountedPace(USUAL, 9, 0)).hasMessageContaining("0 can't be waited for");
    }
}
