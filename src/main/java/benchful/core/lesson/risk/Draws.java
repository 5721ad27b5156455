package benchful.core.lesson.risk;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Random numbers that belong to a student and a step rather than to an order of asking: the same seed, class, student and step draw
 * the same numbers whatever else changes, so that what-ifs are compared on the same students (common random numbers).
 * Mixing function: Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (SplitMix64).
 */
final class Draws {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final int CELLS = 4096;
    private static final double[] NORMAL = normalTable();
    private static final double[] LOGARITHM = logarithmTable();
    /** Below this share the logarithm bends too much for the table. */
    private static final double BENT = 1.0 / 32;

    private Draws() {
    }

    private static double[] normalTable() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double[] table = new double[CELLS + 1];
        for (int i = 1; i < CELLS; i++) {
            table[i] = normal.inverseCumulativeProbability(i / (double) CELLS);
        }
        table[0] = normal.inverseCumulativeProbability(0.125 / CELLS);
        table[CELLS] = -table[0];
        return table;
    }

    private static double[] logarithmTable() {
        double[] table = new double[CELLS + 1];
        for (int i = 1; i <= CELLS; i++) {
            table[i] = -Math.log(i / (double) CELLS);
        }
        return table;
    }

    /** A state that depends on all bits of both. */
    static long mix(long state, long key) {
        long z = state + (key + 1) * GOLDEN;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Uniform in (0, 1) from a mixed state. */
    static double uniform(long state) {
        return ((state >>> 11) + 0.5) * 0x1.0p-53;
    }

    /** Standard normal from a mixed state, interpolated in a table of 4096 cells. */
    static double normal(long state) {
        double place = uniform(state) * CELLS;
        int cell = (int) place;
        return NORMAL[cell] + (place - cell) * (NORMAL[cell + 1] - NORMAL[cell]);
    }

    /** Exponential with mean 1 from a mixed state; nearly all from a table of the logarithm. */
    static double exponential(long state) {
        double u = uniform(state);
        if (u < BENT) {
            return -Math.log(u);
        }
        double place = u * CELLS;
        int cell = (int) place;
        return LOGARITHM[cell] + (place - cell) * (LOGARITHM[cell + 1] - LOGARITHM[cell]);
    }
}
