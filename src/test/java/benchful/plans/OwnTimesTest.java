package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.projects.Step;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times that a tutor asks for, from the class to its plan. */
class OwnTimesTest {
    private final ClassPlanner planner = ComputedPlans.planner(new SolverPlanner());

    /** Glue takes 10 minutes and dries for 30; folding takes 20 and needs no glue; tidying up is last, and takes 5. */
    private static ClassFile box(ClassSetup.OwnTime... times) {
        ClassFile file = SmallClass.of(3).level(SkillLevel.IMPROVER).makesIn("glue", 10)
                .step(Step.of("dry", "Dry", StepKind.WAIT).withLasts(Duration.ofMinutes(30)))
                .step(Step.of("fold", "Fold", StepKind.MAKE).withStudent(new Step.StudentTime(Duration.ofMinutes(20), Duration.ofMinutes(20), Duration.ofMinutes(20))).withAfter(List.of()))
                .step(Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)).withAfter(List.of(new Step.After("dry", null, null), new Step.After("fold", null, null))))
                .file();
        return file.with(file.setup().withOwnTimes(List.of(times)));
    }

    private static ClassSetup.OwnTime at(String step, String time) {
        return new ClassSetup.OwnTime(step, null, LocalTime.parse(time));
    }

    @Test
    void areKeptWhateverTheyCost() {
        assertThat(starts(box())).containsExactly("glue 18:00", "fold 18:10", "tidy 18:40");
        ClassFile asked = box(at("fold", "18:30"));
        assertThat(starts(asked)).containsExactly("glue 18:00", "fold 18:30", "tidy 18:50");
        assertThat(LessonChecker.faults(planner.rested(asked), planner.plan(asked).lesson())).isEmpty();
        assertThat(LessonChecker.faults(planner.rested(asked), planner.plan(box()).lesson())).as("a plan that begins it sooner is seen").isNotEmpty();
    }

    @Test
    void changeTheOrderWhereThatIsWhatTheyTake() {
        assertThat(starts(box(at("glue", "18:20")))).containsExactly("fold 18:00", "glue 18:20", "tidy 19:00");
        assertThat(starts(box(at("fold", "18:05")))).as("glue would not be done by then").containsExactly("fold 18:05", "glue 18:25", "tidy 19:05");
    }

    @Test
    void areMissedByAsLittleAsCanBe() {
        assertThat(starts(box(at("tidy", "18:30")))).containsExactly("glue 18:00", "fold 18:10", "tidy 18:40");
        LessonPlan plan = planner.plan(box(at("tidy", "18:30"))).lesson();
        assertThat(plan.blocksOf("tidy").get(0).reasons()).extracting(r -> r.sentence().toString()).contains("You asked for 18:30. Begins as soon as \"Dry\" is over.");
    }

    /** The promise that the class ends by a time takes them in: nobody folds before half past six. */
    @Test
    void areInTheTimesThatArePromised() {
        ClassPlan plan = planner.plan(box(at("fold", "18:30")));
        assertThat(plan.risk().finishes().get(0).toLocalTime()).isEqualTo(LocalTime.of(18, 55));
    }

    @Test
    void mayBeOfALaterMeeting() {
        ClassFile file = box(new ClassSetup.OwnTime("tidy", 2, LocalTime.of(10, 0)));
        ClassFile twice = file.with(file.setup().withMeetings(List.of(file.setup().meetings().get(0), new ClassSetup.Meeting(LocalDate.of(2027, 3, 13), LocalTime.of(9, 30), LocalTime.of(11, 0)))));
        assertThat(planner.plan(twice).lesson().blocksOf("tidy").get(0).start()).isEqualTo(LocalDate.of(2027, 3, 13).atTime(10, 0));
        assertThat(faults(file)).containsExactly(new Fault("/own_times/0/meeting", "There is no meeting 2. The class has 1."));
    }

    /** What is done ahead, or has left the project since, has no time in the class any more. */
    @Test
    void passOverWhatTheClassDoesNotDo() {
        ClassFile ahead = box(at("glue", "18:20"));
        assertThat(starts(ahead.with(ahead.setup().withPreparedAhead(List.of("glue"))))).containsExactly("fold 18:00", "tidy 18:20");
        assertThat(starts(box(at("gone", "18:20")))).isEqualTo(starts(box()));
    }

    @Test
    void askForNothingThatCantBe() {
        assertThat(faults(box(at("fold", "18:00"), at("tidy", "20:59")))).isEmpty();
        assertThat(faults(box(at("gone", "18:30")))).containsExactly(new Fault("/own_times/0/step", "“Hanger” has no step “gone”."));
        assertThat(faults(box(at("dry", "18:30")))).containsExactly(
                new Fault("/own_times/0/step", "“Dry” is nothing that the class does, so it can't begin at a time of your own. Choose another step."));
        assertThat(faults(box(at("fold", "18:30"), at("fold", "18:40")))).containsExactly(new Fault("/own_times/1/step", "“Fold” has a time of your own already. Keep one of the two."));
        assertThat(faults(box(at("fold", "21:00")))).containsExactly(new Fault("/own_times/0/at", "Meeting 1 is from 18:00 to 21:00. Give a time within it."));
    }

    private static List<Fault> faults(ClassFile file) {
        return SetupRules.check(file.setup(), file.project());
    }

    private List<String> starts(ClassFile file) {
        return planner.plan(file).lesson().blocks().stream().filter(b -> b.kind().needsClass()).sorted(Comparator.comparing(Block::start)).map(b -> b.step() + " " + b.start().toLocalTime()).toList();
    }
}
