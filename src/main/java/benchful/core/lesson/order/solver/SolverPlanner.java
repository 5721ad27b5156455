package benchful.core.lesson.order.solver;

import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Proof.Method;
import benchful.core.lesson.order.Bound;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.order.NoOrder;
import benchful.core.lesson.order.PlanWriter;
import benchful.core.lesson.order.Planning;
import benchful.core.lesson.order.SerialSchedule;
import benchful.core.lesson.order.model.Model;
import com.google.ortools.Loader;
import java.util.Optional;

/**
 * Plans by a constraint solver: proven shortest, or the best order found in the time limit with a bound. A list schedule is its
 * first plan, and its only one where the solver's libraries cannot be loaded.
 * The solver is OR-tools CP-SAT; the model is described at {@link SolverModel}.
 */
public final class SolverPlanner implements LessonPlanner {

    @Override
    public LessonOutcome plan(LessonRequest request) {
        return search(request, SearchWatch.NONE);
    }

    /** The same, told to somebody meanwhile; for a request whose time limit is longer than anybody waits for a page. */
    public LessonOutcome search(LessonRequest request, SearchWatch watch) {
        return Planning.of(request, model -> plan(model, watch));
    }

    /** Loads the solver's libraries, which takes up to a second the first time. Answers whether they can be used here. */
    public static boolean warmUp() {
        return Natives.LOADED;
    }

    private static LessonOutcome plan(Model model, SearchWatch watch) {
        Optional<long[]> listed = SerialSchedule.best(model);
        long bound = new Bound(model).earliestFinish();
        if (!Natives.LOADED) {
            return ListPlanner.outcome(model, listed, bound);
        }
        double seconds = model.request().timeLimit().toMillis() / 1000.0;
        Search.Found found = new Search(model, seconds, watch).run(listed, bound);
        return found.starts().map(starts -> planned(model, starts, found.bound())).orElseGet(() -> found.impossible()
                ? blamed(model) : NoOrder.notFound(model));
    }

    private static LessonOutcome blamed(Model model) {
        Blame blame = new Blame(model);
        return NoOrder.proven(blame.gaps(), blame.tools(), model);
    }

    private static LessonOutcome planned(Model model, long[] starts, long bound) {
        return new Planned(new PlanWriter(model, starts, Method.SOLVER, Math.min(bound, model.finish(starts))).plan());
    }

    /** Loaded once, when first asked for. */
    private static final class Natives {
        private static final boolean LOADED = load();

        private static boolean load() {
            try {
                Loader.loadNativeLibraries();
                return true;
            } catch (UnsatisfiedLinkError | RuntimeException unavailable) {
                return false;
            }
        }
    }
}
