package benchful.core.lesson.time;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * What sharing tools adds: n students, of whom only m can work at once; whoever finishes hands the tool on.
 * There is no simple closed form for the k-th to finish, so the addition over "all at once" is averaged over a fixed set of
 * drawn classes. The same draws serve every m, so that one more tool never adds time.
 */
final class Turns {

    private static final int TRIALS = 1000;
    private static final long SEED = 20_240_613L;

    private Turns() {
    }

    /** Expected delay [s] of the k-th of n students to finish, when m can work at once. */
    static double addition(Pace pace, int k, int n, int m) {
        if (m >= n) {
            return 0;
        }
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(SEED);
        double sum = 0;
        double[] times = new double[n];
        for (int trial = 0; trial < TRIALS; trial++) {
            for (int i = 0; i < n; i++) {
                times[i] = pace.quantile(random.nextDouble());
            }
            sum += finishInTurns(times, k, m) - finishAtOnce(times, k);
        }
        return sum / TRIALS;
    }

    private static double finishAtOnce(double[] times, int k) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[k - 1];
    }

    private static double finishInTurns(double[] times, int k, int m) {
        double[] ends = times.clone();
        double[] free = Arrays.copyOf(times, m);
        for (int i = m; i < times.length; i++) {
            int first = soonest(free);
            free[first] += times[i];
            ends[i] = free[first];
        }
        Arrays.sort(ends);
        return ends[k - 1];
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
