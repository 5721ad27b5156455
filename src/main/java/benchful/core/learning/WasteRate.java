package benchful.core.learning;

import java.time.LocalDate;
import java.util.List;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * What share of a material spoils. A material is reckoned in things: pieces of what is counted or cut, else what one student takes. The
 * model is explained at the package.
 *
 * @param classes in which something was said of the material
 * @param after   what is believed of the share: things spoilt against things taken
 */
public record WasteRate(int classes, Gamma after) {
    /** A share that nothing was typed of is believed to be about this (common practice, no source). */
    private static final double LEAST_TYPED = 0.005;

    private static final int MOST = 10_000_000;

    /**
     * A material in one class.
     *
     * @param taken   things that all kits take, above 0
     * @param spoilt  how many more were spoilt, 0 or more
     */
    public record Seen(LocalDate day, double taken, double spoilt) {
        public Seen {
            if (!(taken > 0 && spoilt >= 0)) {
                throw new IllegalArgumentException("Of things above 0 none or some can be spoilt, not %s of %s".formatted(spoilt, taken));
            }
        }
    }

    /**
     * @param classes at least one
     * @param typed the share that the tutor typed, 0 or more; it counts like one of the classes
     */
    public static WasteRate of(List<Seen> classes, double typed, LocalDate today) {
        double usual = classes.stream().mapToDouble(Seen::taken).average().orElseThrow();
        return new WasteRate(0, new Gamma(Math.max(typed, LEAST_TYPED) * usual, usual)).updated(classes, today);
    }

    WasteRate updated(List<Seen> more, LocalDate today) {
        double taken = more.stream().mapToDouble(s -> Ageing.weight(s.day(), today) * s.taken()).sum();
        double spoilt = more.stream().mapToDouble(s -> Ageing.weight(s.day(), today) * s.spoilt()).sum();
        return new WasteRate(classes + more.size(), after.updated(spoilt, taken));
    }

    /** The share that is likely to spoil. */
    public double share() {
        return after.mean();
    }

    /**
     * How many more to bring for so many things, so that with nine chances in ten none is missing: the least k that a negative binomial
     * distribution with the mean {@code share() * taken} stays within. Cost O(log k).
     *
     * @throws IllegalArgumentException where that would be more than ten million
     */
    public int enough(double taken) {
        int high = 1;
        while (!within(high, taken)) {
            high *= 2;
            if (high > MOST) {
                throw new IllegalArgumentException("More than %d would have to be brought".formatted(MOST));
            }
        }
        int low = 0;
        while (low < high) {
            int middle = (low + high) / 2;
            boolean fits = within(middle, taken);
            low = fits ? low : middle + 1;
            high = fits ? middle : high;
        }
        return low;
    }

    /** The negative binomial distribution function is a regularized beta function (NIST Digital Library of Mathematical Functions, 8.17.24, from memory). */
    private boolean within(int k, double taken) {
        return RegularizedBeta.value(after.rate() / (after.rate() + taken), after.shape(), k + 1.0) >= Multiple.NINE_IN_TEN;
    }
}
