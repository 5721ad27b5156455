package benchful.core.lesson.order.solver;

import benchful.core.lesson.order.Bound;
import benchful.core.lesson.order.Load;
import benchful.core.lesson.order.Sequence;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import java.util.Optional;

/**
 * Minimises in turn how late steps begin whose time is asked for, the finish, the tutor's peak load, the idle time and the time from
 * demonstrations to what they show, each kept
 * while the next is sought; at last every step begins as early as the order allows. One worker, a fixed seed and a limit in the solver's own count of work make the same request
 * get the same plan on any machine, however busy; the clock is there for a machine that stands still.
 */
final class Search {

    /**
     * @param starts     best found, if any
     * @param bound      no plan finishes before
     * @param impossible whether there is none
     */
    record Found(Optional<long[]> starts, long bound, boolean impossible) {
    }

    private static final double SHARE_FOR_COMFORT = 0.1;
    /** What is worth a search of minutes is the finish; the rest is for a class that waits. */
    private static final double MOST_FOR_COMFORT = 2;
    /**
     * Units of the solver's work allowed per second; one core of 2024 was measured to do about 0.4.
     */
    private static final double WORK_PER_SECOND = 0.2;

    /** How much slower a machine may be before the clock ends a search. */
    private static final double STANDSTILL = 30;

    private final Model model;
    /** In which the finish is sought. */
    private final double seconds;
    private final SearchWatch watch;

    Search(Model model, double seconds, SearchWatch watch) {
        this.model = model;
        this.seconds = seconds;
        this.watch = watch;
    }

    private Search of(Model other) {
        return new Search(other, seconds, watch);
    }

    /**
     * @param known a sound plan to start from
     * @param bound no plan finishes before this
     */
    Found run(Optional<long[]> known, long bound) {
        return model.hasTimesAskedFor() ? asAskedFor(known, bound) : best(known, bound);
    }

    /** What begins as near to the times asked for as can be; of all such orders the best. */
    private Found asAskedFor(Optional<long[]> known, long bound) {
        long least = new Bound(model).leastLate();
        if (known.filter(starts -> model.late(starts) <= least).isPresent()) {
            return of(model.noLaterThan(known.get())).best(known, bound);
        }
        SolverModel nearest = new SolverModel(model, model.horizon(), false);
        known.ifPresent(nearest::hint);
        nearest.minimiseLateness();
        CpSolver solver = solver(seconds);
        CpSolverStatus status = solve(solver, nearest);
        if (status == CpSolverStatus.INFEASIBLE) {
            return new Found(Optional.empty(), bound, true);
        }
        Optional<long[]> near = isFound(status) ? Optional.of(nearest.starts(solver)) : known;
        Found found = near.map(starts -> of(model.noLaterThan(starts)).best(near, bound)).orElse(new Found(near, bound, false));
        return status == CpSolverStatus.OPTIMAL ? found : new Found(found.starts(), bound, false);
    }

    private Found best(Optional<long[]> known, long bound) {
        Found shortest = known.filter(starts -> model.finish(starts) <= bound).map(starts -> new Found(known, bound, false))
                .orElseGet(() -> shortest(known, bound));
        return shortest.starts().map(starts -> new Found(Optional.of(comfortable(starts)), shortest.bound(), false)).orElse(shortest);
    }

    private Found shortest(Optional<long[]> known, long bound) {
        SolverModel first = new SolverModel(model, model.horizon(), false);
        first.finishBetween(bound, known.map(model::finish).orElse(model.horizon()));
        known.ifPresent(first::hint);
        first.minimiseFinish();
        CpSolver solver = solver(seconds);
        CpSolverStatus status = solve(solver, first, known.map(model::finish).orElse(Watched.NONE_YET), bound);
        if (status == CpSolverStatus.INFEASIBLE) {
            return new Found(Optional.empty(), bound, true);
        }
        long proven = Math.max(bound, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6));
        return new Found(isFound(status) ? Optional.of(first.starts(solver)) : known, proven, false);
    }

    /** Of all plans that finish as soon: the least peak load where groups share the tutor, then the least idle time. */
    private long[] comfortable(long[] starts) {
        SolverModel second = new SolverModel(model, model.horizon(), false);
        second.finishBetween(0, model.finish(starts));
        long[] best = starts;
        if (model.request().groups() > 1) {
            second.hint(best);
            IntVar peak = second.minimisePeak();
            CpSolver solver = solver(secondsForComfort());
            if (isFound(solve(solver, second))) {
                best = second.starts(solver);
                second.solver().addLessOrEqual(peak, solver.value(peak));
            }
        }
        best = lessIdle(second, new Sequence(model, best).earliest());
        return new Sequence(model, shownWhenNeeded(second, best)).earliest();
    }

    /** A demonstration is soon forgotten: of all orders as good, the one in which what was shown is made soonest. */
    private long[] shownWhenNeeded(SolverModel second, long[] best) {
        if (model.showings().stream().noneMatch(shown -> isMadeLater(shown, best))) {
            return best;
        }
        second.workEndsBy(model.activities().stream().filter(Activity::hands).mapToLong(one -> model.end(one.index(), best[one.index()])).max().orElse(0));
        second.hint(best);
        second.minimiseForgetting();
        CpSolver solver = solver(secondsForComfort());
        return isFound(solve(solver, second)) ? second.starts(solver) : best;
    }

    private boolean isMadeLater(Gap shown, long[] times) {
        return model.hours().open(model.end(shown.from(), times[shown.from()]), times[shown.to()]) > shown.least();
    }

    private long[] lessIdle(SolverModel second, long[] best) {
        if (new Load(model, best).idle() == 0) {
            return best;
        }
        second.hint(best);
        second.minimiseIdle();
        CpSolver solver = solver(secondsForComfort());
        return isFound(solve(solver, second)) ? second.starts(solver) : best;
    }

    private double secondsForComfort() {
        return Math.min(seconds * SHARE_FOR_COMFORT, MOST_FOR_COMFORT);
    }

    private CpSolverStatus solve(CpSolver solver, SolverModel first, long finish, long bound) {
        if (watch == SearchWatch.NONE) {
            return solve(solver, first);
        }
        try (Watched watched = new Watched(model, watch, solver, finish, bound)) {
            return checked(solver.solve(first.solver(), watched.solutions()), first);
        }
    }

    static CpSolverStatus solve(CpSolver solver, SolverModel model) {
        return checked(solver.solve(model.solver()), model);
    }

    private static CpSolverStatus checked(CpSolverStatus status, SolverModel model) {
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("The solver refuses the model: " + model.solver().validate());
        }
        return status;
    }

    static boolean isFound(CpSolverStatus status) {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    static CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setLinearizationLevel(0)
                .setMaxDeterministicTime(seconds * WORK_PER_SECOND).setMaxTimeInSeconds(seconds * STANDSTILL);
        return solver;
    }
}
