package benchful.core.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Asks a constraint solver whether all pieces can come from what is on hand and so many new lengths: for the few problems
 * whose linear bound no plan reaches. One worker and a limit of counted work make the answer the same on every machine.
 */
final class CuttingProof {
    private static final double MOST_WORK = 3;
    private static final int LARGEST = 3000;

    private final Kinds kinds;
    private final int lengths;
    private final CpModel model = new CpModel();
    private final IntVar[][] cut;

    private CuttingProof(Kinds kinds, int bought) {
        this.kinds = kinds;
        this.lengths = kinds.onHand().length + bought;
        this.cut = new IntVar[lengths][kinds.kinds()];
    }

    /** Whether a plan exists, and one where it does. */
    enum Verdict {
        PLAN,
        NONE,
        OPEN
    }

    /** @param patterns those of the plan; empty where there is none or it stays open */
    record Answer(Verdict verdict, List<Pattern> patterns) {}

    static Answer ask(Kinds kinds, int bought) {
        long variables = (long) (kinds.onHand().length + bought) * kinds.kinds();
        return variables > LARGEST ? new Answer(Verdict.OPEN, List.of()) : new CuttingProof(kinds, bought).answer();
    }

    private Answer answer() {
        Loader.loadNativeLibraries();
        for (int b = 0; b < lengths; b++) {
            length(b);
        }
        for (int i = 0; i < kinds.kinds(); i++) {
            int kind = i;
            IntVar[] all = IntStream.range(0, lengths).mapToObj(b -> cut[b][kind]).toArray(IntVar[]::new);
            model.addEquality(LinearExpr.sum(all), kinds.demand()[i]);
        }
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(MOST_WORK);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            return new Answer(Verdict.PLAN, patterns(solver));
        }
        return new Answer(status == CpSolverStatus.INFEASIBLE ? Verdict.NONE : Verdict.OPEN, List.of());
    }

    /** Equal new lengths are told apart only by their load, which falls. */
    private void length(int b) {
        for (int i = 0; i < kinds.kinds(); i++) {
            cut[b][i] = model.newIntVar(0, kinds.demand()[i], "");
        }
        model.addLessOrEqual(load(b), kinds.capacity(Math.min(b, kinds.onHand().length)));
        if (b > kinds.onHand().length) {
            model.addGreaterOrEqual(load(b - 1), load(b));
        }
    }

    private LinearExprBuilder load(int b) {
        LinearExprBuilder load = LinearExpr.newBuilder();
        for (int i = 0; i < kinds.kinds(); i++) {
            load.addTerm(cut[b][i], kinds.sizes()[i]);
        }
        return load;
    }

    private List<Pattern> patterns(CpSolver solver) {
        List<Pattern> patterns = new ArrayList<>();
        for (int b = 0; b < lengths; b++) {
            IntVar[] counts = cut[b];
            int[] values = IntStream.range(0, counts.length).map(i -> (int) solver.value(counts[i])).toArray();
            patterns.add(new Pattern(Math.min(b, kinds.onHand().length), values));
        }
        return patterns.stream().filter(p -> !p.isEmpty()).toList();
    }
}
