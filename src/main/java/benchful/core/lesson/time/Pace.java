package benchful.core.lesson.time;

import benchful.core.lesson.StudentTime;
import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The spread of the time one student needs: a beta distribution between the quick time a and the slow time b, with the mean
 * (a + 4m + b)/6 and the standard deviation (b - a)/6 of the three-point method, m being the usual time [s].
 * A beta is chosen because a tutor states a quickest and a slowest student, and the spread then never leaves what was stated;
 * an unbounded distribution would hold against the class a student whom the tutor never met.
 * The times are of one repeat by a student of scale 1; what a student's repeats and level make of it multiplies the whole, as pace
 * belongs to the student and not to the single knot.
 * Source of mean and deviation: Hillier and Lieberman, Introduction to Operations Research, PERT three-estimate approach.
 */
public final class Pace {

    private static final int CELLS = 1024;
    private static final Memo<Times, Pace> KNOWN = new Memo<>(500, times -> new Pace(times.quick(), times.usual(), times.slow()));

    private record Times(long quick, long usual, long slow) {
    }

    private final double quick;
    private final double range;
    private final double mean;
    private final double[] cdf = new double[CELLS + 1];
    private final double[] quantile = new double[CELLS + 1];

    private Pace(double quick, double usual, double slow) {
        this.quick = quick;
        this.range = slow - quick;
        this.mean = (quick + 4 * usual + slow) / 6;
        if (range > 0) {
            tabulate();
        }
    }

    public static Pace of(StudentTime time) {
        if (!time.isInOrder()) {
            throw new IllegalArgumentException("Quick, usual and slow must not fall: " + time);
        }
        return KNOWN.of(new Times(time.quick().toSeconds(), time.usual().toSeconds(), time.slow().toSeconds()));
    }

    private void tabulate() {
        double m = (mean - quick) / range;
        double concentration = 36 * m * (1 - m) - 1;
        BetaDistribution beta = BetaDistribution.of(m * concentration, (1 - m) * concentration);
        for (int i = 1; i < CELLS; i++) {
            cdf[i] = beta.cumulativeProbability(i / (double) CELLS);
        }
        cdf[CELLS] = 1;
        invert();
    }

    private void invert() {
        int cell = 0;
        for (int i = 0; i <= CELLS; i++) {
            double p = i / (double) CELLS;
            while (cell < CELLS - 1 && cdf[cell + 1] < p) {
                cell++;
            }
            double width = cdf[cell + 1] - cdf[cell];
            quantile[i] = (cell + (width > 0 ? Math.min(1, (p - cdf[cell]) / width) : 1)) / CELLS;
        }
        quantile[0] = 0;
    }

    /** Mean time [s]. */
    public double mean() {
        return mean;
    }

    /** Variance [s2]. */
    public double variance() {
        return range * range / 36;
    }

    /** The least time [s]. */
    public double quick() {
        return quick;
    }

    /** The greatest time [s]. */
    public double slow() {
        return quick + range;
    }

    /** The time [s] that a share p of students does not exceed; p in [0, 1]; interpolated in a table of 1024 cells. */
    public double quantile(double p) {
        double place = p * CELLS;
        int cell = Math.min(CELLS - 1, (int) place);
        return quick + range * (quantile[cell] + (place - cell) * (quantile[cell + 1] - quantile[cell]));
    }

    /** The share of students who need no longer than a time [s]; interpolated in a table of 1024 cells. */
    double share(double time) {
        if (range == 0) {
            return time >= quick ? 1 : 0;
        }
        double place = (time - quick) / range * CELLS;
        int cell = (int) Math.max(0, Math.min(CELLS - 1, place));
        return Math.max(0, Math.min(1, cdf[cell] + (place - cell) * (cdf[cell + 1] - cdf[cell])));
    }

    /** Expected time [s] until k of n independent students of scale 1 have finished. */
    public double expectedOrderStatistic(int k, int n) {
        return range == 0 ? quick : quick + range / CELLS * OrderStatistic.meanCells(cdf, k, n);
    }

    /** The same for students of different scales, as many as there are of them. */
    double expectedOrderStatistic(int k, double[] scales) {
        double least = Arrays.stream(scales).min().orElseThrow();
        double most = Arrays.stream(scales).max().orElseThrow();
        if (least == most) {
            return least * expectedOrderStatistic(k, scales.length);
        }
        return OrderStatistic.expectedOfUnlike(scales.length, (student, time) -> share(time / scales[student]), least * quick, most * slow(), k);
    }
}
