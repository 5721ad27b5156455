package benchful.core.lesson.order.solver;

import benchful.core.lesson.order.model.Model;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** One run of the solver that tells a watch how far it is, and ends as soon as the watch has enough. */
final class Watched implements AutoCloseable {
    /** No order is known. */
    static final long NONE_YET = Long.MAX_VALUE;

    private static final int LOOK_MILLIS = 200;

    private final Model model;
    private final SearchWatch watch;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(look -> {
        Thread thread = new Thread(look, "search watch");
        thread.setDaemon(true);
        return thread;
    });
    private long finish;
    private long bound;

    /**
     * @param finish of the best order known [grains]; {@link #NONE_YET} where none is
     * @param bound none is below [grains]
     */
    Watched(Model model, SearchWatch watch, CpSolver solver, long finish, long bound) {
        this.model = model;
        this.watch = watch;
        this.finish = finish;
        this.bound = bound;
        told(finish, bound);
        clock.scheduleWithFixedDelay(() -> look(solver), LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void look(CpSolver solver) {
        if (watch.isEnough()) {
            solver.stopSearch();
        }
    }

    CpSolverSolutionCallback solutions() {
        return new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                told(Math.round(objectiveValue()), Math.round(bestObjectiveBound()));
            }
        };
    }

    private synchronized void told(long newFinish, long newBound) {
        finish = Math.min(finish, newFinish);
        bound = Math.min(finish, Math.max(bound, newBound));
        if (finish != NONE_YET) {
            tell();
        }
    }

    private void tell() {
        watch.tell(model.hours().toTime(finish), model.hours().toTime(bound));
    }

    @Override
    public void close() {
        clock.shutdownNow();
    }
}
