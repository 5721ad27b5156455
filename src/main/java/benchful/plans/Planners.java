package benchful.plans;

import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.order.SolverPlanner;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import org.eclipse.microprofile.context.ManagedExecutor;

/** Chooses the lesson planner that the program uses, and loads its solver beside the start so that nobody waits for it. */
@ApplicationScoped
class Planners {
    private final ManagedExecutor executor;

    Planners(ManagedExecutor executor) {
        this.executor = executor;
    }

    @Produces
    @ApplicationScoped
    LessonPlanner lessons() {
        return new SolverPlanner();
    }

    void warmUp(@Observes StartupEvent started) {
        executor.execute(SolverPlanner::warmUp);
    }
}
