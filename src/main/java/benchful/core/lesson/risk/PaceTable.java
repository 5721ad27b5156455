package benchful.core.lesson.risk;

import benchful.core.lesson.time.Pace;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A student's time for one unit of a step as a function of a standard normal pace: z = 0 is the median student, above 0 is slower [s].
 */
final class PaceTable {

    private static final int CELLS = 512;
    private static final double REACH = 4.5;

    private static final double[] SHARES = shares();

    private final double[] seconds = new double[CELLS + 1];

    PaceTable(Pace pace) {
        for (int i = 0; i <= CELLS; i++) {
            seconds[i] = pace.quantile(SHARES[i]);
        }
    }

    /** The share of students who are quicker than each z of the table. */
    private static double[] shares() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double[] shares = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            shares[i] = normal.cumulativeProbability((i * 2.0 / CELLS - 1) * REACH);
        }
        return shares;
    }

    double at(double z) {
        double place = (Math.max(-REACH, Math.min(REACH, z)) / REACH + 1) * (CELLS / 2.0);
        int cell = Math.min(CELLS - 1, (int) place);
        return seconds[cell] + (place - cell) * (seconds[cell + 1] - seconds[cell]);
    }
}
