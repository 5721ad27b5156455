package benchful.core.cutting;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;

/**
 * Patterns worth cutting, and a bound on the number of new lengths.
 *
 * <p>The linear programme "fewest new lengths that give every piece, patterns in any fraction" is solved over the patterns
 * known; its prices u of the pieces ask the knapsack for a better pattern, until there is none. Source: Gilmore and Gomory,
 * "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961).
 *
 * <p>The bound is exact although the solver's prices are not: they are cut to whole numbers U, and by weak duality every
 * plan takes at least (sum of demand x U - sum of the best pattern's worth on each length on hand) / (best pattern's worth
 * on a new length), all in whole numbers.
 */
final class ColumnGeneration {
    private static final double SCALE = 1e9;
    private static final double TOLERANCE = 1e-7;
    private static final int MOST_ROUNDS = 2000;

    private final Kinds kinds;
    private final Knapsack knapsack;
    private final List<Pattern> patterns = new ArrayList<>();
    private double[] uses = {};
    private long bound;

    /** @param known patterns to begin with; those that can't be cut any more are left out */
    ColumnGeneration(Kinds kinds, List<Pattern> known) {
        this.kinds = kinds;
        this.knapsack = new Knapsack(kinds.sizes(), kinds.demand());
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver("GLOP");
        try {
            new Master(solver).run(known);
        } finally {
            solver.delete();
        }
    }

    List<Pattern> patterns() {
        return patterns;
    }

    /** How often the linear programme cuts each pattern. */
    double[] uses() {
        return uses;
    }

    /** No plan takes fewer new lengths. */
    int bound() {
        return Math.toIntExact(bound);
    }

    /** The linear programme at work. Rows: pieces of each kind, then each length on hand. */
    private final class Master {
        private final MPSolver solver;
        private final MPConstraint[] demand;
        private final MPConstraint[] lengths;
        private final List<MPVariable> times = new ArrayList<>();

        Master(MPSolver solver) {
            this.solver = solver;
            this.demand = new MPConstraint[kinds.kinds()];
            this.lengths = new MPConstraint[kinds.onHand().length];
            solver.objective().setMinimization();
            for (int i = 0; i < demand.length; i++) {
                demand[i] = solver.makeConstraint(kinds.demand()[i], MPSolver.infinity());
                MPVariable none = solver.makeNumVar(0, MPSolver.infinity(), "");
                demand[i].setCoefficient(none, 1);
                solver.objective().setCoefficient(none, kinds.pieces() + 1.0);
            }
            for (int h = 0; h < lengths.length; h++) {
                lengths[h] = solver.makeConstraint(-MPSolver.infinity(), 1);
            }
        }

        void run(List<Pattern> known) {
            known.stream().filter(p -> kinds.times(p) > 0).forEach(this::add);
            boolean solved = solved();
            for (int round = 0; round < MOST_ROUNDS && solved && price(); round++) {
                solved = solved();
            }
            if (solved) {
                uses = times.stream().mapToDouble(MPVariable::solutionValue).toArray();
            } else {
                patterns.clear();
            }
        }

        private boolean solved() {
            return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
        }

        /** Adds the best pattern for each length; false if none is better than what is known. */
        private boolean price() {
            long[] worths = new long[demand.length];
            for (int i = 0; i < worths.length; i++) {
                worths[i] = (long) Math.floor(Math.max(0, demand[i].dualValue()) * SCALE);
            }
            long[] best = new long[kinds.lengths()];
            List<Pattern> better = new ArrayList<>();
            for (int h = 0; h < best.length; h++) {
                Knapsack.Best found = knapsack.best(kinds.capacity(h), worths);
                best[h] = found.value();
                double cost = kinds.isNew(h) ? 1 : Math.max(0, -lengths[h].dualValue());
                if (found.value() > (cost + TOLERANCE) * SCALE) {
                    better.add(new Pattern(h, found.counts()));
                }
            }
            raise(worths, best);
            better.forEach(this::add);
            return !better.isEmpty();
        }

        private void raise(long[] worths, long[] best) {
            long sum = 0;
            for (int i = 0; i < worths.length; i++) {
                sum = Math.addExact(sum, Math.multiplyExact(worths[i], (long) kinds.demand()[i]));
            }
            for (int h = 0; h < kinds.onHand().length; h++) {
                sum -= best[h];
            }
            long each = best[kinds.onHand().length];
            if (sum > 0 && each > 0) {
                bound = Math.max(bound, -Math.floorDiv(-sum, each));
            }
        }

        private void add(Pattern pattern) {
            patterns.add(pattern);
            MPVariable column = solver.makeNumVar(0, MPSolver.infinity(), "");
            times.add(column);
            solver.objective().setCoefficient(column, kinds.isNew(pattern.length()) ? 1 : 0);
            for (int i = 0; i < demand.length; i++) {
                if (pattern.counts()[i] > 0) {
                    demand[i].setCoefficient(column, pattern.counts()[i]);
                }
            }
            if (!kinds.isNew(pattern.length())) {
                lengths[pattern.length()].setCoefficient(column, 1);
            }
        }
    }
}
