package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Proof;
import benchful.core.lesson.order.solver.SearchWatch;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.plans.ClassPlanner;
import benchful.web.tasks.Asker;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Searches for a class's best order for minutes, where the search that a page waits for could not prove that it has it. One search at
 * a time, beside all else; it goes on while its page is closed.
 */
@ApplicationScoped
public class LongerSearch {
    /** Of the planner's seconds, which are counted in work; about half as long on a machine of today. */
    private static final Duration LIMIT = Duration.ofMinutes(10);

    /** Longer than a search takes. */
    private static final Duration PATIENCE = Duration.ofHours(1);

    private final SolverPlanner solver = new SolverPlanner();
    private final ClassPlanner planner;
    private final BackgroundTasks tasks;
    private final Duration limit;

    @Inject
    LongerSearch(ClassPlanner planner) {
        this(planner, BackgroundTasks.oneByOne(), LIMIT);
    }

    LongerSearch(ClassPlanner planner, BackgroundTasks tasks, Duration limit) {
        this.planner = planner;
        this.tasks = tasks;
        this.limit = limit;
    }

    /**
     * What a search has come to.
     *
     * @param proof how good the best order found is, as it is expected to end
     * @param order that order as {@link Turn#written}; null while the search goes on
     * @param ends  by when the promised share of such classes ends with that order; null while the search goes on
     */
    record Found(Proof proof, String order, LocalDateTime ends) {
        private Found(Proof proof) {
            this(proof, null, null);
        }
    }

    /** The search under way or finished for the class as it is, or a new one. */
    BackgroundTask<Found> of(long id, ClassFile file) {
        LessonRequest request = planner.rested(file);
        return tasks.send(purpose(id), input(request), PATIENCE, task -> Asker.during(task::isGivenUp, () -> search(file, request, task)));
    }

    /** The same where there is one. */
    Optional<BackgroundTask<Found>> sent(long id, ClassFile file) {
        return tasks.sent(purpose(id), input(planner.rested(file)));
    }

    /** What was proven of the order that the class has, by a search that has ended. */
    public Optional<Proof> proof(long id, ClassFile file, LessonPlan lesson) {
        return sent(id, file).flatMap(BackgroundTask::result).map(Found::proof).filter(proof -> proof.finish().equals(lesson.proof().finish()));
    }

    private Found search(ClassFile file, LessonRequest request, BackgroundTask<Found> task) {
        LessonOutcome outcome = solver.search(request.toBuilder().timeLimit(limit).build(), new Watch(request, task));
        LessonPlan best = ((Planned) outcome).plan();
        String order = Turn.written(best.blocks().stream().sorted(Comparator.comparing(Block::start)).map(b -> new Turn(b.step(), b.group())).toList());
        ClassFile taken = file.with(file.setup().withFoundOrder(order));
        return new Found(best.proof(), order, planner.promised(taken).orElseThrow().plan().finish());
    }

    /** An order to begin with changes nothing about the question. */
    private static LessonRequest input(LessonRequest request) {
        return request.toBuilder().searchFrom(List.of()).build();
    }

    private static String purpose(long id) {
        return "a longer search for class " + id;
    }

    @PreDestroy
    void stop() {
        tasks.stop();
    }

    private record Watch(LessonRequest request, BackgroundTask<Found> task) implements SearchWatch {
        @Override
        public void tell(LocalDateTime finish, LocalDateTime bound) {
            task.has(new Found(new Proof(Proof.Method.SOLVER, request.pacing(), bound, finish)));
        }

        @Override
        public boolean isEnough() {
            return task.isEnough();
        }
    }
}
