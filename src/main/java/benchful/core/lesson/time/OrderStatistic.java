package benchful.core.lesson.time;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Expected value of the k-th smallest of n independent draws. With F the distribution function of one draw, the k-th smallest
 * has I(F(x); k, n-k+1), the regularised incomplete beta function, and its mean is the integral of 1 - I over the range.
 * Source: David and Nagaraja, Order Statistics, 3rd ed., 2003, equation 2.1.5 (from memory).
 */
public final class OrderStatistic {

    private static final int CELLS = 4096;

    private OrderStatistic() {
    }

    /** Mean of the k-th smallest of n, for a distribution function that is 0 at {@code from} and 1 at {@code to}. */
    public static double expected(DoubleUnaryOperator distribution, double from, double to, int k, int n) {
        double width = (to - from) / CELLS;
        double[] cdf = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            cdf[i] = distribution.applyAsDouble(from + i * width);
        }
        return from + width * meanCells(cdf, k, n);
    }

    /** The same in cells from the left end, of a distribution function tabulated at equal steps (trapezium rule). */
    static double meanCells(double[] cdf, int k, int n) {
        if (k < 1 || k > n) {
            throw new IllegalArgumentException("There is no number " + k + " of " + n);
        }
        BetaDistribution rank = BetaDistribution.of(k, n - k + 1);
        double sum = (survival(rank, cdf[0]) + survival(rank, cdf[cdf.length - 1])) / 2;
        for (int i = 1; i < cdf.length - 1; i++) {
            sum += survival(rank, cdf[i]);
        }
        return sum;
    }

    private static double survival(BetaDistribution rank, double p) {
        return 1 - rank.cumulativeProbability(p);
    }
}
