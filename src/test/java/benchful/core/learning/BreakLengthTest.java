package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.BreakLength.Seen;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BreakLengthTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);
    private static final Duration TEN = Duration.ofMinutes(10);

    private static BreakLength took(double... minutes) {
        return BreakLength.of(Arrays.stream(minutes).mapToObj(m -> new Seen(TODAY, m / 10)).toList(), TODAY);
    }

    @Test
    void believesThePlanBeforeAnythingWasSeen() {
        assertThat(took().multiple()).isEqualTo(1);
        assertThat(took().of(TEN)).isEqualTo(TEN);
        assertThat(took().shortest(TEN)).isEqualTo(Duration.ofMinutes(5));
        assertThat(took().longest(TEN)).isEqualTo(Duration.ofMinutes(20));
    }

    /** Worked out by hand: of n classes with 14 minutes for 10 the plan's weight of a third leaves 1.4 to the power of n / (n + 1/3). */
    @Test
    void movesMostOfTheWayAfterOneClassAndNearlyAllOfItAfterThree() {
        assertThat(took(14).multiple()).isCloseTo(Math.pow(1.4, 0.75), within(1e-12));
        assertThat(took(14, 14, 14).multiple()).isCloseTo(Math.pow(1.4, 0.9), within(1e-12));
        assertThat(took(14).of(TEN)).isEqualTo(Duration.ofMinutes(13));
        assertThat(took(14, 14, 14).of(TEN)).isEqualTo(Duration.ofMinutes(14));
        assertThat(took(14, 14, 14).shortest(TEN)).isEqualTo(Duration.ofMinutes(11));
        assertThat(took(14, 14, 14).longest(TEN)).isEqualTo(Duration.ofMinutes(16));
    }

    /** Hoff, section 5.3, by hand: k' = 1/3 + 2, a' = 3 + 1, b' = 0.125 + (sum of squares about the mean) / 2 + 1/3 * 2 * mean squared / (2 k'). */
    @Test
    void updatesAsTheNamedModelDoes() {
        double one = Math.log(1.2);
        double two = Math.log(1.5);
        double mean = (one + two) / 2;
        NormalInverseGamma after = took(12, 15).after();
        assertThat(after.weight()).isCloseTo(7 / 3.0, within(1e-12));
        assertThat(after.shape()).isEqualTo(4);
        assertThat(after.mean()).isCloseTo(2 * mean / (7 / 3.0), within(1e-12));
        assertThat(after.scale()).isCloseTo(0.125 + (Math.pow(one - mean, 2) + Math.pow(two - mean, 2)) / 2 + mean * mean / 7, within(1e-12));
    }

    @Test
    void countsAClassOfTwoYearsAgoForHalf() {
        BreakLength old = BreakLength.of(List.of(new Seen(TODAY.minusYears(2), 1.4)), TODAY);
        assertThat(old.multiple()).isCloseTo(Math.pow(1.4, 0.6), within(1e-3));
    }

    @Test
    void refusesABreakOfNoLength() {
        assertThatThrownBy(() -> took(0)).isInstanceOf(IllegalArgumentException.class).hasMessage("A break must have taken a multiple above 0, not 0.0");
    }

    /**
     * Tutors whose breaks of ten minutes take six to twenty, in each class a tenth to a third otherwise, noted to the minute: the true middle
     * lies in its interval of nine in ten as often as is said. The test prints the coverage, and how far off what is learned is.
     */
    @Test
    void coversTheTruthOfSimulatedTutorsAtTheStatedRate() {
        int tutors = 2000;
        for (int classes : new int[] {1, 2, 5}) {
            Random random = new Random(17);
            int inside = 0;
            double planOff = 0;
            double learnedOff = 0;
            for (int i = 0; i < tutors; i++) {
                double truth = Math.exp(Math.log(0.6) + random.nextDouble() * Math.log(2 / 0.6));
                double unlike = 0.1 + 0.2 * random.nextDouble();
                BreakLength learned = took(IntStream.range(0, classes).mapToDouble(c -> Math.max(1, Math.round(10 * truth * Math.exp(unlike * random.nextGaussian())))).toArray());
                inside += learned.least() <= truth && truth <= learned.most() ? 1 : 0;
                planOff += Math.abs(10 - 10 * truth);
                learnedOff += Math.abs(learned.of(TEN).toMinutes() - 10 * truth);
            }
            System.out.printf("after %d classes: the interval of nine in ten covers %.1f %% of the true breaks of %d tutors; what is proposed is off by %.1f min, the plan by %.1f min%n",
                    classes, 100.0 * inside / tutors, tutors, learnedOff / tutors, planOff / tutors);
            assertThat(inside / (double) tutors).isBetween(0.87, 0.97);
            assertThat(learnedOff / planOff).isLessThan(classes == 1 ? 0.6 : 0.45);
        }
    }
}
