package benchful.plans;

import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.order.solver.SolverPlanner;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.eclipse.microprofile.context.ManagedExecutor;

/** Chooses the lesson planner that the program uses, and loads its solver beside the start so that nobody waits for it. */
@ApplicationScoped
class Planners {
    private final ManagedExecutor executor;
    /** Open while the program lives. */
    private volatile FileChannel claim;

    Planners(ManagedExecutor executor) {
        this.executor = executor;
    }

    @Produces
    @ApplicationScoped
    LessonPlanner lessons() {
        return new SolverPlanner();
    }

    void warmUp(@Observes StartupEvent started) {
        executor.execute(this::load);
    }

    private void load() {
        SolverFiles files = SolverFiles.ofThisMachine();
        files.sweep();
        Instant before = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        SolverPlanner.warmUp();
        claim = files.claim(before).orElse(null);
    }

    @PreDestroy
    void release() throws IOException {
        if (claim != null) {
            claim.close();
        }
    }
}
