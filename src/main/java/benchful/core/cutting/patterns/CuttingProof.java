package benchful.core.cutting.patterns;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * How often to cut each of given patterns, in whole numbers, so that every piece is given at least cost: an integer
 * programme. Over all patterns it settles the problem; over some it gives a good plan. One thread and a limit of counted
 * nodes make the answer the same on every machine.
 */
public final class CuttingProof {
    private static final String LIMITS = "limits/nodes = 200\nparallel/maxnthreads = 1\nrandomization/randomseedshift = 1\n";
    private static final long STEPS_A_PATTERN = 1_000;
    private static final double TOLERANCE = 1e-6;

    private final Kinds kinds;
    private final List<Pattern> patterns;
    private final MPSolver solver;
    private final List<MPVariable> times = new ArrayList<>();

    private CuttingProof(Kinds kinds, List<Pattern> patterns, MPSolver solver) {
        this.kinds = kinds;
        this.patterns = patterns;
        this.solver = solver;
    }

    /**
     * @param plan empty where the patterns give none, or none was found
     * @param bound no plan of these patterns costs less
     * @param settled whether the plan is the cheapest of these patterns, or none is a plan
     */
    public record Answer(Optional<List<Pattern>> plan, long bound, boolean settled) {
        private static final Answer OPEN = new Answer(Optional.empty(), 0, false);
    }

    public static Answer ask(Kinds kinds, List<Pattern> patterns, Work work) {
        if (work.isSpent()) {
            return Answer.OPEN;
        }
        work.spend(STEPS_A_PATTERN * patterns.size());
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver("SCIP");
        try {
            return new CuttingProof(kinds, patterns, solver).answer();
        } finally {
            solver.delete();
        }
    }

    private Answer answer() {
        build();
        solver.setSolverSpecificParametersAsString(LIMITS);
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        MPSolver.ResultStatus status = solver.solve(exact);
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return new Answer(Optional.empty(), 0, true);
        }
        if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.FEASIBLE) {
            return Answer.OPEN;
        }
        double bound = solver.objective().bestBound();
        return new Answer(Optional.of(plan()), Math.max(0, (long) Math.ceil(bound - TOLERANCE * Math.max(1, bound))), status == MPSolver.ResultStatus.OPTIMAL);
    }

    private void build() {
        MPConstraint[] demand = new MPConstraint[kinds.kinds()];
        for (int i = 0; i < demand.length; i++) {
            demand[i] = solver.makeConstraint(kinds.demand()[i], MPSolver.infinity());
        }
        MPConstraint[] available = kinds.lengths().stream()
                .map(l -> solver.makeConstraint(0, l.limited() ? l.available() : MPSolver.infinity())).toArray(MPConstraint[]::new);
        for (Pattern pattern : patterns) {
            MPVariable cut = solver.makeIntVar(0, kinds.pieces(), "");
            times.add(cut);
            solver.objective().setCoefficient(cut, (double) kinds.lengths().get(pattern.length()).cost());
            available[pattern.length()].setCoefficient(cut, 1);
            for (int i = 0; i < demand.length; i++) {
                if (pattern.counts()[i] > 0) {
                    demand[i].setCoefficient(cut, pattern.counts()[i]);
                }
            }
        }
        solver.objective().setMinimization();
    }

    /** Pieces beyond what is needed are not cut. */
    private List<Pattern> plan() {
        int[] left = kinds.demand().clone();
        List<Pattern> plan = new ArrayList<>();
        for (int p = 0; p < patterns.size(); p++) {
            for (Pattern pattern : Collections.nCopies((int) Math.round(times.get(p).solutionValue()), patterns.get(p))) {
                int[] counts = pattern.counts().clone();
                for (int i = 0; i < counts.length; i++) {
                    counts[i] = Math.min(counts[i], left[i]);
                    left[i] -= counts[i];
                }
                plan.add(new Pattern(pattern.length(), counts));
            }
        }
        return plan.stream().filter(pattern -> !pattern.isEmpty()).toList();
    }
}
