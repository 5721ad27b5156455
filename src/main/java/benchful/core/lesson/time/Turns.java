package benchful.core.lesson.time;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * What sharing tools does: n students, of whom only m can work at once; whoever finishes hands the tool on.
 * There is no simple closed form for the k-th to finish, so it is averaged over a fixed set of drawn classes. The same draws serve
 * every m, so that one more tool never adds time (each drawn student then begins, and ends, no later).
 */
final class Turns {

    private static final int MOST_TRIALS = 1000;
    private static final int FEWEST_TRIALS = 50;
    /** Large classes need fewer trials, as chance evens out among many students. */
    private static final int DRAWS = 12_000;
    private static final long SEED = 20_240_613L;

    private Turns() {
    }

    /**
     * Expected times [s] at which the first, second, ... student has finished, when m can work at once and none waits for help.
     *
     * @param scales what the pace is multiplied by for each student
     */
    static double[] ends(Pace pace, double[] scales, int m) {
        int n = scales.length;
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(SEED);
        int trials = Math.max(FEWEST_TRIALS, Math.min(MOST_TRIALS, DRAWS / n));
        double[] sum = new double[n];
        double[] times = new double[n];
        for (int trial = 0; trial < trials; trial++) {
            for (int i = 0; i < n; i++) {
                times[i] = scales[i] * pace.quantile(random.nextDouble());
            }
            takeTurns(times, m);
            Arrays.sort(times);
            for (int i = 0; i < n; i++) {
                sum[i] += times[i];
            }
        }
        Arrays.setAll(sum, i -> sum[i] / trials);
        return sum;
    }

    /** Times of work become times of finishing. */
    private static void takeTurns(double[] times, int m) {
        double[] free = Arrays.copyOf(times, Math.min(m, times.length));
        for (int i = m; i < times.length; i++) {
            int first = soonest(free);
            free[first] += times[i];
            times[i] = free[first];
        }
    }

    private static int soonest(double[] free) {
        int first = 0;
        for (int i = 1; i < free.length; i++) {
            if (free[i] < free[first]) {
                first = i;
            }
        }
        return first;
    }
}
