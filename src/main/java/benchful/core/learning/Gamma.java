package benchful.core.learning;

import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * What is believed of how often something happens that happens by chance and for itself: as if it had been seen {@code shape} times
 * while it had {@code rate} chances, units or hours to. What is seen turns it into another of its kind.
 *
 * @param shape times, above 0
 * @param rate  what they are held against, above 0
 */
public record Gamma(double shape, double rate) {

    public Gamma {
        if (!(shape > 0 && rate > 0)) {
            throw new IllegalArgumentException("Shape and rate must be above 0, not %s and %s".formatted(shape, rate));
        }
    }

    /** @param times how often it was seen, in so many chances, units or hours; neither below 0 */
    Gamma updated(double times, double in) {
        return new Gamma(shape + times, rate + in);
    }

    /** How often it is likely to happen, for one of what it is held against. */
    public double mean() {
        return shape / rate;
    }

    /** With nine chances in ten it is at least this. */
    public double least() {
        return quantile((1 - Multiple.NINE_IN_TEN) / 2);
    }

    /** With nine chances in ten it is at most this. */
    public double most() {
        return quantile((1 + Multiple.NINE_IN_TEN) / 2);
    }

    private double quantile(double p) {
        return GammaDistribution.of(shape, 1 / rate).inverseCumulativeProbability(p);
    }
}
