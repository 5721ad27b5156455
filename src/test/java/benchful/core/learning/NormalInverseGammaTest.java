package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.NormalInverseGamma.Weighted;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;

class NormalInverseGammaTest {
    private static final NormalInverseGamma PRIOR = new NormalInverseGamma(0.1, 0.5, 2.5, 0.4);

    private static List<Weighted> whole(double... values) {
        return Arrays.stream(values).mapToObj(value -> new Weighted(value, 1)).toList();
    }

    /**
     * Hoff, A First Course in Bayesian Statistical Methods, Springer 2009, section 5.3: nine midges' wing lengths of Grogan and Wirth
     * (1981) [mm], prior mean 1.9 worth one, prior variance 0.01 worth one; he finds mean 1.814 worth 10 and variance 0.015 worth 10.
     * The data and the prior were read in a public page that uses the example, his results are from memory.
     */
    @Test
    void reproducesHoffsWingLengths() {
        NormalInverseGamma after = new NormalInverseGamma(1.9, 1, 0.5, 0.5 * 0.01).updated(whole(1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08));
        assertThat(after.mean()).isCloseTo(1.814, within(0.0005));
        assertThat(after.weight()).isEqualTo(10);
        assertThat(2 * after.shape()).isEqualTo(10);
        assertThat(after.scale() / after.shape()).isCloseTo(0.015, within(0.0005));
    }

    /** Worked out by hand from the formulas: prior (0, 1, 2, 2) and data 1, 2, 3. */
    @Test
    void addsWhatIsSeenToWhatWasBelieved() {
        assertThat(new NormalInverseGamma(0, 1, 2, 2).updated(whole(1, 2, 3))).isEqualTo(new NormalInverseGamma(1.5, 4, 3.5, 4.5));
    }

    @Test
    void comesToTheSameOneByOneAndInAnyOrder() {
        NormalInverseGamma together = PRIOR.updated(whole(0.3, -0.2, 0.5));
        NormalInverseGamma one = PRIOR.updated(whole(0.5)).updated(whole(0.3)).updated(whole(-0.2));
        assertThat(one.mean()).isCloseTo(together.mean(), within(1e-12));
        assertThat(one.scale()).isCloseTo(together.scale(), within(1e-12));
        assertThat(one.shape()).isEqualTo(together.shape());
    }

    @Test
    void believesAsBeforeWhereNothingWasSeenOrItCountsForNothing() {
        assertThat(PRIOR.updated(List.of())).isEqualTo(PRIOR);
        assertThat(PRIOR.updated(List.of(new Weighted(5, 0)))).isEqualTo(PRIOR);
    }

    @Test
    void countsTwoHalvesAsOneWhole() {
        assertThat(PRIOR.updated(List.of(new Weighted(0.4, 0.5), new Weighted(0.4, 0.5)))).isEqualTo(PRIOR.updated(whole(0.4)));
    }

    /** Worked out by hand from the formulas: prior (0, 1, 2, 2) and 2 that is as good as the mean of three. */
    @Test
    void countsAPreciseValueForMoreInTheMeanAndForOneInTheVariance() {
        assertThat(new NormalInverseGamma(0, 1, 2, 2).updated(List.of(new Weighted(2, 1, 3)))).isEqualTo(new NormalInverseGamma(1.5, 4, 2.5, 3.5));
        assertThat(new NormalInverseGamma(0, 1, 2, 2).updated(List.of(new Weighted(2, 0.5, 3)))).isEqualTo(new NormalInverseGamma(1.2, 2.5, 2.25, 3.2));
    }

    @Test
    void saysHowSureItIs() {
        NormalInverseGamma after = PRIOR.updated(whole(0.3, 0.35, 0.28));
        assertThat(after.chanceAbove(after.mean())).isCloseTo(0.5, within(1e-12));
        assertThat(after.chanceAbove(after.quantile(0.95))).isCloseTo(0.05, within(1e-9));
        double area = 0;
        for (double x = after.mean() - 8; x < after.mean() + 8; x += 0.001) {
            area += 0.001 * after.density(x);
        }
        assertThat(area).isCloseTo(1, within(1e-3));
    }

    @Test
    void refusesBeliefsThatAreNone() {
        assertThatThrownBy(() -> new NormalInverseGamma(0, 0, 1, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new NormalInverseGamma(0, 1, 0, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new NormalInverseGamma(0, 1, 1, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new Weighted(1, 1.1)).hasMessageContaining("count for 0 to 1");
        assertThatThrownBy(() -> new Weighted(1, 1, 0)).hasMessageContaining("precision above 0");
        assertThatThrownBy(() -> new Weighted(Double.NaN, 1)).hasMessageContaining("finite");
    }

    /** A Gibbs sampler draws mean and variance in turn from their own distributions given the other; it knows no closed form. */
    @Test
    void agreesWithALongRunSampler() {
        double[] values = {0.31, 0.12, 0.44, 0.27};
        double[] weights = {1, 0.8, 0.5, 1};
        NormalInverseGamma after = PRIOR.updated(List.of(new Weighted(0.31, 1), new Weighted(0.12, 0.8), new Weighted(0.44, 0.5), new Weighted(0.27, 1)));
        double[] means = sampled(values, weights, 400_000);
        double average = Arrays.stream(means).average().orElseThrow();
        double variance = Arrays.stream(means).map(m -> (m - average) * (m - average)).average().orElseThrow();
        double freedom = 2 * after.shape();
        assertThat(average).isCloseTo(after.mean(), within(0.002));
        assertThat(variance).isCloseTo(after.spread() * after.spread() * freedom / (freedom - 2), within(0.001));
        for (double p : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
            assertThat(Arrays.stream(means).filter(m -> m < after.quantile(p)).count() / (double) means.length).as("share below the %s quantile", p).isCloseTo(p, within(0.004));
        }
    }

    private static double[] sampled(double[] values, double[] weights, int draws) {
        Random random = new Random(20_270_306);
        double[] means = new double[draws];
        double variance = PRIOR.scale() / PRIOR.shape();
        for (int i = 0; i < draws; i++) {
            double precision = PRIOR.weight() / variance;
            double sum = PRIOR.weight() * PRIOR.mean() / variance;
            for (int j = 0; j < values.length; j++) {
                precision += weights[j] / variance;
                sum += weights[j] * values[j] / variance;
            }
            double mean = sum / precision + random.nextGaussian() / Math.sqrt(precision);
            double shape = PRIOR.shape() + (1 + Arrays.stream(weights).sum()) / 2;
            double rate = PRIOR.scale() + PRIOR.weight() * Math.pow(mean - PRIOR.mean(), 2) / 2;
            for (int j = 0; j < values.length; j++) {
                rate += weights[j] * Math.pow(values[j] - mean, 2) / 2;
            }
            variance = 1 / GammaDistribution.of(shape, 1 / rate).inverseCumulativeProbability(random.nextDouble());
            means[i] = mean;
        }
        return means;
    }
}
