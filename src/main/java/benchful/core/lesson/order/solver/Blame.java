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
    private static final int MOST_TOOLS = 5;

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

    /** Tools of which more, and of no other, would allow an order; those that not all their users could have at once are tried. */
    List<String> tools() {
        return IntStream.range(0, model.tools()).filter(this::isShort).limit(MOST_TOOLS).filter(tool -> isEnough(model.with(tool, wanted(tool))))
                .mapToObj(model.names()::get).toList();
    }

    private boolean isShort(int tool) {
        return wanted(tool) > model.capacity()[tool];
    }

    private int wanted(int tool) {
        return model.activities().stream().mapToInt(activity -> activity.uses()[tool]).sum();
    }

    private static boolean isEnough(Model more) {
        SolverModel trial = new SolverModel(more, more.horizon(), false);
        return Search.isFound(Search.solve(Search.solver(SECONDS_EACH), trial));
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
