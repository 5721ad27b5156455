package benchful.benchmarks;

import benchful.plans.PublishedInstance;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.stream.IntStream;

/** A published instance given to the solver as its textbook model and nothing else: what the planner adds around it is measured against this. */
final class BareSolver {
    private BareSolver() {}

    /** Whether it was settled by one worker within so much work, in the solver's own count. */
    static boolean settles(PublishedInstance instance, double work) {
        CpModel model = new CpModel();
        int jobs = instance.lengths().size();
        int horizon = instance.lengths().stream().mapToInt(Integer::intValue).sum() + instance.lags().stream().mapToInt(lag -> Math.max(0, lag[2])).sum();
        IntVar[] starts = IntStream.range(0, jobs).mapToObj(i -> model.newIntVar(0, horizon, "start" + i)).toArray(IntVar[]::new);
        IntervalVar[] intervals = IntStream.range(0, jobs).mapToObj(i -> model.newFixedSizeIntervalVar(starts[i], instance.lengths().get(i), "job" + i)).toArray(IntervalVar[]::new);
        for (int[] lag : instance.lags()) {
            model.addGreaterOrEqual(LinearExpr.newBuilder().add(starts[lag[1]]).addTerm(starts[lag[0]], -1).build(), lag[2]);
        }
        for (int resource = 0; resource < instance.capacity().length; resource++) {
            CumulativeConstraint at = model.addCumulative(instance.capacity()[resource]);
            for (int job = 0; job < jobs; job++) {
                at.addDemand(intervals[job], instance.demand(job, resource));
            }
        }
        model.minimize(starts[jobs - 1]);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(work);
        CpSolverStatus status = solver.solve(model);
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    }
}
