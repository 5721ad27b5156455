package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.order.Firings;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.plans.ClassPlanner;
import benchful.plans.ComputedPlans;
import benchful.plans.FiredClass;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;

/** A class whose plan was searched for too short a time: what a longer search finds, and what taking it does. */
class LongerSearchTest {
    private static final long CLASS = 7;
    private static final LessonPlanner BRIEF = request -> new SolverPlanner().plan(request.toBuilder().timeLimit(Duration.ofMillis(100)).build());

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final ClassPlanner planner = ComputedPlans.planner(BRIEF);
    private final ClassFile file = FiredClass.of(Firings.request(4, 16).build());

    private LongerSearch searches(Duration limit) {
        return new LongerSearch(planner, new BackgroundTasks(waiting::add), limit);
    }

    private LessonPlan lesson(ClassFile of) {
        return planner.timing(of).lesson();
    }

    @Test
    void findsAnOrderThatIsKeptWithTheClass() {
        assertThat(lesson(file).proof().isShortest()).isFalse();
        LongerSearch searches = searches(Duration.ofMinutes(2));
        BackgroundTask<LongerSearch.Found> task = searches.of(CLASS, file);
        assertThat(searches.of(CLASS, file)).as("under way").isSameAs(task);
        assertThat(task.soFar()).isEmpty();
        waiting.remove().run();

        LongerSearch.Found found = task.result().orElseThrow();
        assertThat(found.proof().isShortest()).isTrue();
        ClassFile taken = file.with(file.setup().withFoundOrder(found.order()));
        assertThat(lesson(taken).finish()).isEqualTo(found.ends()).isBefore(lesson(file).finish());
        assertThat(lesson(taken).proof().finish()).isEqualTo(found.proof().finish());
        assertThat(searches.sent(CLASS, taken)).as("the question is the same").contains(task);
        assertThat(searches.proof(CLASS, taken, lesson(taken))).contains(found.proof());
        assertThat(searches.proof(CLASS, file, lesson(file))).as("of another order nothing is proven").isEmpty();
        ClassFile other = file.with(taken.setup().withHeadcount(2));
        assertThat(searches.sent(CLASS, other)).isEmpty();
    }

    @Test
    void endsWithWhatItHasWhenThatIsEnough() {
        LongerSearch searches = searches(Duration.ofMinutes(10));
        ClassFile hard = FiredClass.of(Firings.request(2, 20).build());
        BackgroundTask<LongerSearch.Found> task = searches.of(CLASS, hard);
        task.isToEnd();
        waiting.remove().run();
        LongerSearch.Found found = task.result().orElseThrow();
        assertThat(found.proof().isShortest()).isFalse();
        assertThat(task.soFar().orElseThrow().proof().finish()).isAfterOrEqualTo(found.proof().finish());
        assertThat(found.order()).contains("load0", "load19");
    }

    @Test
    void startsNothingByBeingAskedWhetherThereIsOne() {
        LongerSearch searches = searches(Duration.ofMinutes(10));
        assertThat(searches.sent(CLASS, file)).isEmpty();
        assertThat(searches.proof(CLASS, file, lesson(file))).isEmpty();
        assertThat(waiting).isEmpty();
    }
}
