package benchful.core.learning;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What is believed of a normal distribution whose mean and variance are both unknown: the variance v is inverse gamma with a shape
 * and a scale, and given it the mean is normal with variance v / weight. Values seen turn it into another of its kind. Cost O(n).
 *
 * @param mean   centre of what is believed of the mean
 * @param weight how many values that belief is worth, above 0
 * @param shape  half of how many values the belief about the variance is worth, above 0
 * @param scale  half their sum of squares, above 0
 */
public record NormalInverseGamma(double mean, double weight, double shape, double scale) {

    public NormalInverseGamma {
        if (!(weight > 0 && shape > 0 && scale > 0)) {
            throw new IllegalArgumentException("Weight, shape and scale must be above 0, not %s, %s and %s".formatted(weight, shape, scale));
        }
    }

    /**
     * A value that was seen.
     *
     * @param weight    what it counts for: 1 for a whole one, 0 for none
     * @param precision its variance is the common one divided by this, above 0
     */
    public record Weighted(double value, double weight, double precision) {
        public Weighted {
            if (!(weight >= 0 && weight <= 1) || !Double.isFinite(value)) {
                throw new IllegalArgumentException("A value must be finite and count for 0 to 1, not %s for %s".formatted(value, weight));
            }
            if (!(precision > 0)) {
                throw new IllegalArgumentException("A value must have a precision above 0, not " + precision);
            }
        }

        public Weighted(double value, double weight) {
            this(value, weight, 1);
        }

        double counts() {
            return weight * precision;
        }
    }

    public NormalInverseGamma updated(List<Weighted> seen) {
        double n = seen.stream().mapToDouble(Weighted::counts).sum();
        if (n == 0) {
            return this;
        }
        double average = seen.stream().mapToDouble(one -> one.counts() * one.value()).sum() / n;
        double squares = seen.stream().mapToDouble(one -> one.counts() * square(one.value() - average)).sum();
        double values = seen.stream().mapToDouble(Weighted::weight).sum();
        return new NormalInverseGamma((weight * mean + n * average) / (weight + n), weight + n, shape + values / 2,
                scale + squares / 2 + weight * n * square(average - mean) / (2 * (weight + n)));
    }

    /** Of Student's t distribution, which the mean has. */
    public double spread() {
        return Math.sqrt(scale / (shape * weight));
    }

    /** What the mean is below with a probability p in (0, 1). */
    public double quantile(double p) {
        return mean + spread() * student().inverseCumulativeProbability(p);
    }

    /** The probability that the mean is above a value. */
    public double chanceAbove(double value) {
        return student().survivalProbability((value - mean) / spread());
    }

    /** How dense the probability of the mean is at a value. */
    public double density(double value) {
        return student().density((value - mean) / spread()) / spread();
    }

    private TDistribution student() {
        return TDistribution.of(2 * shape);
    }

    private static double square(double x) {
        return x * x;
    }
}
