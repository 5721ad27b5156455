package benchful.core.needs;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How many to bring so that enough stay good, each spoiling by chance and for itself.
 *
 * <p>Of n brought, the number spoilt is binomial (n, q); needed stay good if at most n - needed spoil. The chance rises with
 * n, so the smallest n is found by halving.
 */
public final class Spoilage {
    private static final int MOST = 10_000_000;

    private Spoilage() {}

    /**
     * @param needed how many must stay good, >= 0
     * @param spoils chance that one spoils, in [0, 1)
     * @param confidence probability asked for, in (0, 1)
     * @return the smallest number, >= needed
     */
    public static int bring(int needed, double spoils, double confidence) {
        if (needed < 0 || spoils < 0 || spoils >= 1 || confidence <= 0 || confidence >= 1) {
            throw new IllegalArgumentException("No number brings %d good ones where each spoils with chance %s, at confidence %s."
                    .formatted(needed, spoils, confidence));
        }
        int high = Math.max(1, needed);
        while (enough(needed, high, spoils) < confidence) {
            if (high > MOST) {
                throw new IllegalArgumentException("More than %d would have to be brought. Lower the chance of spoiling.".formatted(MOST));
            }
            high *= 2;
        }
        int low = needed;
        while (low < high) {
            int middle = (low + high) / 2;
            boolean fits = enough(needed, middle, spoils) >= confidence;
            low = fits ? low : middle + 1;
            high = fits ? middle : high;
        }
        return low;
    }

    /** The chance that of so many brought at least those needed stay good. */
    public static double enough(int needed, int brought, double spoils) {
        return BinomialDistribution.of(brought, spoils).cumulativeProbability(brought - needed);
    }
}
