package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.WasteRate.Seen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WasteRateTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);

    /** Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6, "Estimating a rate from Poisson data": deaths from asthma (from memory). */
    @Test
    void reproducesTheWorkedExampleOfAsthmaDeaths() {
        WasteRate prior = new WasteRate(0, new Gamma(3, 5));
        WasteRate oneYear = prior.updated(List.of(new Seen(TODAY, 2, 3)), TODAY);
        WasteRate tenYears = prior.updated(List.of(new Seen(TODAY, 20, 30)), TODAY);

        assertThat(oneYear).isEqualTo(new WasteRate(1, new Gamma(6, 7)));
        assertThat(oneYear.share()).isCloseTo(0.86, within(0.005));
        assertThat(tenYears).isEqualTo(new WasteRate(1, new Gamma(33, 25)));
        assertThat(tenYears.share()).isCloseTo(1.32, within(0.005));
    }

    /** Against the Pascal distribution of Apache Commons Statistics, which is the negative binomial of whole shapes. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "1, 20, 10", "3, 60, 12", "7, 480, 468", "40, 480, 468", "12, 10, 10000"})
    void bringsEnoughAsAReferenceLibraryReckons(int shape, double rate, double taken) {
        int reference = PascalDistribution.of(shape, rate / (rate + taken)).inverseCumulativeProbability(0.9);
        assertThat(new WasteRate(1, new Gamma(shape, rate)).enough(taken)).isEqualTo(reference);
    }

    @Test
    void needsNoSpareWhereNothingSpoils() {
        assertThat(WasteRate.of(List.of(seen(10, 0), seen(10, 0), seen(10, 0)), 0, TODAY).enough(10)).isZero();
        assertThat(WasteRate.of(List.of(seen(10, 3)), 0.05, TODAY).enough(10)).isEqualTo(4);
    }

    @Test
    void trustsTheTypedShareLikeOneClassAndLessWhatIsLongAgo() {
        WasteRate typed = WasteRate.of(List.of(seen(10, 0)), 0.2, TODAY);
        assertThat(typed.share()).isCloseTo(0.1, within(1e-12));
        WasteRate old = WasteRate.of(List.of(new Seen(TODAY.minusYears(2), 10, 0)), 0.2, TODAY);
        assertThat(old.share()).isCloseTo(0.2 / 1.5, within(1e-3));
    }

    /** Nine in ten of the classes that follow four others are served; the test prints how many. */
    @Test
    void isEnoughAsOftenAsItSays() {
        SplittableRandom random = new SplittableRandom(7);
        int classes = 4000;
        int served = 0;
        double least = 0;
        for (int i = 0; i < classes; i++) {
            double share = 0.02 + 0.2 * random.nextDouble();
            List<Seen> before = new ArrayList<>();
            for (int c = 0; c < 4; c++) {
                before.add(seen(60, spoilt(60, share, random)));
            }
            WasteRate rate = WasteRate.of(before, 0.1, TODAY);
            served += spoilt(60, share, random) <= rate.enough(60) ? 1 : 0;
            least += rate.after().least() <= share && share <= rate.after().most() ? 1 : 0;
        }
        System.out.printf("what is brought for waste was enough in %.1f %% of %d classes; the interval of nine in ten held the true share in %.1f %%%n",
                100.0 * served / classes, classes, 100 * least / classes);
        assertThat(served / (double) classes).isBetween(0.9, 0.96);
        assertThat(least / classes).isBetween(0.88, 0.96);
    }

    private static Seen seen(double taken, double spoilt) {
        return new Seen(TODAY, taken, spoilt);
    }

    private static int spoilt(int taken, double share, SplittableRandom random) {
        int spoilt = 0;
        for (int i = 0; i < taken; i++) {
            spoilt += random.nextDouble() < share ? 1 : 0;
        }
        return spoilt;
    }
}
