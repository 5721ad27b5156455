package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import benchful.classes.ClassFile;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.projects.Step;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of steps that a tutor asks for, from the class to its plan. */
class OwnOrderTest {
    private static final LocalDateTime SIX = LocalDateTime.of(2027, 3, 6, 18, 0);

    private final ClassPlanner planner = ComputedPlans.planner(new SolverPlanner());

    /** Glue takes 10 minutes and dries for 30; folding takes 20 and needs no glue; tidying up is last. */
    private static ClassFile box(String... order) {
        ClassFile file = SmallClass.of(3).level(SkillLevel.IMPROVER).makesIn("glue", 10)
                .step(Step.of("dry", "Dry", StepKind.WAIT).withLasts(Duration.ofMinutes(30)))
                .step(Step.of("fold", "Fold", StepKind.MAKE).withStudent(new Step.StudentTime(Duration.ofMinutes(20), Duration.ofMinutes(20), Duration.ofMinutes(20))).withAfter(List.of()))
                .step(Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)).withAfter(List.of(after("dry"), after("fold"))))
                .file();
        return file.with(file.setup().withOwnOrder(List.of(order)));
    }

    private static Step.After after(String step) {
        return new Step.After(step, null, null);
    }

    @Test
    void isKeptWhateverItCosts() {
        assertThat(steps(box())).containsExactly("glue", "fold", "tidy");
        assertThat(finish(box())).isEqualTo(SIX.plusMinutes(45));
        ClassFile asked = box("fold", "glue");
        assertThat(steps(asked)).containsExactly("fold", "glue", "tidy");
        assertThat(finish(asked)).isEqualTo(SIX.plusMinutes(65));
        LessonRequest request = planner.rested(asked);
        assertThat(LessonChecker.faults(request, planner.plan(asked).lesson())).isEmpty();
        assertThat(LessonChecker.faults(request, planner.plan(box()).lesson())).as("the other order is seen").isNotEmpty();
    }

    @Test
    void saysNothingOfStepsThatItLeavesOut() {
        assertThat(finish(box("glue", "tidy"))).isEqualTo(SIX.plusMinutes(45));
        assertThat(finish(box("fold"))).isEqualTo(SIX.plusMinutes(45));
    }

    /** What is done ahead, or has left the project since, has no place in the class any more; its neighbours keep theirs. */
    @Test
    void passesOverWhatTheClassDoesNotDo() {
        ClassFile ahead = box("fold", "glue", "tidy");
        assertThat(links(ahead.with(ahead.setup().withPreparedAhead(List.of("glue"))))).contains(new Link("fold", "tidy")).doesNotContain(new Link("fold", "glue"));
        assertThat(links(box("fold", "gone", "glue"))).contains(new Link("fold", "glue"));
        assertThat(links(box("fold", "dry", "glue"))).contains(new Link("fold", "glue")).doesNotContain(new Link("fold", "dry"));
    }

    @Test
    void asksForNothingThatTheProjectForbids() {
        assertThat(faults("fold", "glue", "tidy")).isEmpty();
        assertThat(faults("fold", "gone")).containsExactly(new Fault("/own_order/1", "“Hanger” has no step “gone”."));
        assertThat(faults("dry")).containsExactly(new Fault("/own_order/0", "“Dry” is nothing that the class does, so it has no place in your order. Choose another step, or none."));
        assertThat(faults("fold", "fold")).containsExactly(new Fault("/own_order/1", "“Fold” stands in your order twice. Take it out here."));
        assertThat(faults("tidy", "fold", "glue")).extracting(Fault::pointer, Fault::detail).containsExactly(
                tuple("/own_order/1", "“Fold” must come sooner, by what the project says of its steps. Move it up, or take it out of your order."),
                tuple("/own_order/2", "“The glue” must come sooner, by what the project says of its steps. Move it up, or take it out of your order."));
    }

    private static List<Fault> faults(String... order) {
        ClassFile file = box(order);
        return SetupRules.check(file.setup(), file.project());
    }

    private static List<Link> links(ClassFile file) {
        return ClassPlanner.request(file).links();
    }

    private LocalDateTime finish(ClassFile file) {
        return planner.plan(file).lesson().finish();
    }

    private List<String> steps(ClassFile file) {
        return planner.plan(file).lesson().blocks().stream().filter(b -> b.kind().needsClass()).sorted(Comparator.comparing(Block::start)).map(Block::step).toList();
    }
}
