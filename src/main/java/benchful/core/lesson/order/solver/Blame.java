package benchful.core.lesson.order.solver;

import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where no order exists: a small set of gaps that already cannot be kept together. The solver names a first set; then one gap
 * after the other is left out, and stays out if there is still no order.
 */
final class Blame {

    private static final double SECONDS_EACH = 0.3;

    private final Model model;

    Blame(Model model) {
        this.model = model;
    }

    List<Gap> gaps() {
        List<Integer> kept = core(IntStream.range(0, model.gaps().size()).boxed().toList());
        for (int gap : List.copyOf(kept)) {
            List<Integer> fewer = kept.stream().filter(other -> other != gap).toList();
            List<Integer> smaller = core(fewer);
            kept = smaller.isEmpty() ? kept : smaller;
        }
        return kept.stream().map(model.gaps()::get).toList();
    }

    /** Which of these gaps contradict each other; empty if they do not, or not provably. */
    private List<Integer> core(List<Integer> gaps) {
        SolverModel trial = new SolverModel(model, model.horizon(), true);
        List<Literal> switches = trial.switches();
        trial.solver().addAssumptions(gaps.stream().map(switches::get).toArray(Literal[]::new));
        CpSolver solver = Search.solver(SECONDS_EACH);
        if (Search.solve(solver, trial) != CpSolverStatus.INFEASIBLE) {
            return List.of();
        }
        List<Integer> named = solver.sufficientAssumptionsForInfeasibility();
        List<Integer> core = new ArrayList<>(gaps);
        core.removeIf(gap -> !named.contains(switches.get(gap).getIndex()));
        return core.isEmpty() ? gaps : core;
    }
}
