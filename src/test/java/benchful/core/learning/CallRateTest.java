package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.CallRate.Seen;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CallRateTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);

    private static Seen seen(int calls, double hours) {
        return new Seen(TODAY, calls, hours);
    }

    /** Worked out by hand: three calls at two an hour are 1.5 h; 18 more in 4.5 h make 21 in 6 h. */
    @Test
    void addsWhatWasSeenToWhatWasTyped() {
        CallRate rate = CallRate.of(List.of(seen(8, 2), seen(10, 2.5)), 2, TODAY);
        assertThat(rate).isEqualTo(new CallRate(2, 18, new Gamma(21, 6)));
        assertThat(rate.after().mean()).isCloseTo(3.5, within(1e-12));
        assertThat(3.5).isBetween(rate.after().least(), rate.after().most());
    }

    @Test
    void staysNearWhatWasTypedWhileLittleWasSeen() {
        assertThat(CallRate.of(List.of(seen(0, 0.25)), 2, TODAY).after().mean()).isCloseTo(3 / 1.75, within(1e-12));
        assertThat(CallRate.of(List.of(seen(30, 3)), 2, TODAY).after().mean()).isBetween(7.0, 10.0);
    }

    @Test
    void learnsOfAStepOfWhichNothingWasTyped() {
        assertThat(CallRate.of(List.of(seen(12, 4)), 0, TODAY).after()).isEqualTo(new Gamma(15, 16));
        assertThat(CallRate.of(List.of(seen(0, 4)), 0, TODAY).after().mean()).isLessThan(0.25);
    }

    @Test
    void countsAClassOfTwoYearsAgoForHalf() {
        Gamma old = CallRate.of(List.of(new Seen(TODAY.minusYears(2), 10, 4)), 3, TODAY).after();
        assertThat(old.shape()).isCloseTo(3 + 5, within(0.01));
        assertThat(old.rate()).isCloseTo(1 + 2, within(0.005));
    }

    @Test
    void refusesWhatCannotHaveBeenSeen() {
        assertThatThrownBy(() -> seen(-1, 1)).isInstanceOf(IllegalArgumentException.class).hasMessage("In hours above 0 some calls or none can be seen, not -1 in 1.0");
        assertThatThrownBy(() -> seen(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Gamma(0, 1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("above 0");
    }

    /** Drawn tutors whose typed calls are off as the prior has it, eight students for half an hour in one to four classes; the test prints the coverage. */
    @Test
    void coversTheTruthOfDrawnTutorsAtTheStatedRate() {
        SplittableRandom random = new SplittableRandom(11);
        int drawn = 2000;
        int inside = 0;
        double typedOff = 0;
        double learnedOff = 0;
        for (int i = 0; i < drawn; i++) {
            double off = -Math.log(random.nextDouble()) - Math.log(random.nextDouble()) - Math.log(random.nextDouble());
            double truth = 2 * off / 3;
            List<Seen> classes = IntStream.rangeClosed(0, random.nextInt(4)).mapToObj(c -> seen(calls(truth * 4, random), 4)).toList();
            Gamma after = CallRate.of(classes, 2, TODAY).after();
            inside += after.least() <= truth && truth <= after.most() ? 1 : 0;
            typedOff += Math.abs(2 - truth);
            learnedOff += Math.abs(after.mean() - truth);
        }
        System.out.printf("of the calls for help of %d tutors the interval of nine in ten covers %.1f %% of the true ones; what is learned is off by %.0f %% of what typing was%n",
                drawn, 100.0 * inside / drawn, 100 * learnedOff / typedOff);
        assertThat(inside / (double) drawn).isBetween(0.88, 0.92);
        assertThat(learnedOff / typedOff).isLessThan(0.5);
    }

    /** So many happen by the time that exponential times between them are used up. */
    private static int calls(double mean, SplittableRandom random) {
        int calls = 0;
        for (double used = -Math.log(random.nextDouble()); used < mean; used -= Math.log(random.nextDouble())) {
            calls++;
        }
        return calls;
    }
}
