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

    /** The share of draws of one kind that are at most a value. */
    interface Distributions {
        double share(int draw, double value);
    }

    /**
     * Mean of the k-th smallest of n independent draws that are not alike. It is above x where more than n - k draws are; how many
     * are is a sum of unlike coins, counted up one after the other (the Poisson binomial distribution). Cost O(n (n - k)) a cell.
     */
    static double expectedOfUnlike(int n, Distributions each, double from, double to, int k) {
        double width = (to - from) / CELLS;
        double sum = 0.5;
        for (int i = 1; i < CELLS; i++) {
            sum += moreThan(n - k, n, each, from + i * width);
        }
        return from + width * sum;
    }

    /** The chance that more than so many of the draws are above a value. */
    private static double moreThan(int few, int n, Distributions each, double value) {
        double[] above = new double[few + 1];
        above[0] = 1;
        for (int draw = 0; draw < n; draw++) {
            double share = each.share(draw, value);
            for (int j = Math.min(few, draw + 1); j > 0; j--) {
                above[j] = above[j] * share + above[j - 1] * (1 - share);
            }
            above[0] *= share;
        }
        double sum = 1;
        for (double chance : above) {
            sum -= chance;
        }
        return Math.max(0, sum);
    }
}
