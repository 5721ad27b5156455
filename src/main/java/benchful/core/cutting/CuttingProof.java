package benchful.core.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Asks a constraint solver for a plan that costs less than the best known, for the few problems whose linear bound no plan
 * reaches. One worker and a limit of counted work make the answer the same on every machine.
 */
final class CuttingProof {
    private static final double MOST_WORK = 3;
    private static final long LARGEST = 3000;

    private final Kinds kinds;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final List<Bench> bench = new ArrayList<>();

    private CuttingProof(Kinds kinds) {
        this.kinds = kinds;
    }

    /**
     * @param plan a cheaper one, the cheapest where the work was enough
     * @param bound no plan costs less; {@link Long#MAX_VALUE} where none is cheaper than the known one
     */
    record Answer(Optional<List<Pattern>> plan, long bound) {}

    /** One length at work. */
    private record Bench(int length, BoolVar used, IntVar[] cut) {}

    /** @param known what the best known plan costs */
    static Answer ask(Kinds kinds, long known) {
        return size(kinds, known) > LARGEST ? new Answer(Optional.empty(), 0) : new CuttingProof(kinds).answer(known);
    }

    private Answer answer(long known) {
        Loader.loadNativeLibraries();
        for (int l = 0; l < kinds.lengths().size(); l++) {
            for (int b = 0; b < most(kinds, l, known); b++) {
                open(l, b > 0);
            }
        }
        for (int i = 0; i < kinds.kinds(); i++) {
            int kind = i;
            model.addEquality(LinearExpr.sum(bench.stream().map(b -> b.cut()[kind]).toArray(IntVar[]::new)), kinds.demand()[i]);
        }
        if (known != Long.MAX_VALUE) {
            model.addLessOrEqual(cost, known - 1);
        }
        model.minimize(cost);
        return solved();
    }

    private Answer solved() {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(MOST_WORK);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return new Answer(Optional.empty(), Long.MAX_VALUE);
        }
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        long bound = (long) Math.ceil(solver.bestObjectiveBound() - 1e-6);
        return new Answer(found ? Optional.of(patterns(solver)) : Optional.empty(), Math.max(0, bound));
    }

    /** Equal lengths are told apart only by their load, which falls. */
    private void open(int length, boolean follows) {
        Lengths lengths = kinds.lengths().get(length);
        IntVar[] cut = IntStream.range(0, kinds.kinds()).mapToObj(i -> model.newIntVar(0, kinds.demand()[i], "")).toArray(IntVar[]::new);
        BoolVar used = model.newBoolVar("");
        cost.addTerm(used, lengths.cost());
        model.addLessOrEqual(load(cut).addTerm(used, -lengths.capacity()), 0);
        if (follows) {
            model.addGreaterOrEqual(load(bench.get(bench.size() - 1).cut()), load(cut));
        }
        bench.add(new Bench(length, used, cut));
    }

    private LinearExprBuilder load(IntVar[] cut) {
        LinearExprBuilder load = LinearExpr.newBuilder();
        for (int i = 0; i < cut.length; i++) {
            load.addTerm(cut[i], kinds.sizes()[i]);
        }
        return load;
    }

    private List<Pattern> patterns(CpSolver solver) {
        return bench.stream()
                .map(b -> new Pattern(b.length(), IntStream.range(0, kinds.kinds()).map(i -> (int) solver.value(b.cut()[i])).toArray()))
                .filter(p -> !p.isEmpty())
                .toList();
    }

    private static long size(Kinds kinds, long known) {
        return IntStream.range(0, kinds.lengths().size()).mapToLong(l -> most(kinds, l, known)).sum() * kinds.kinds();
    }

    /** More of a length than that can't be in a cheaper plan. */
    private static long most(Kinds kinds, int length, long known) {
        Lengths lengths = kinds.lengths().get(length);
        long affordable = lengths.cost() == 0 || known == Long.MAX_VALUE ? Long.MAX_VALUE : (known - 1) / lengths.cost();
        return Math.min(Math.min(lengths.available(), kinds.pieces()), affordable);
    }
}
