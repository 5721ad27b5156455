package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.projects.ProjectRules;
import benchful.projects.Step;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who does what with whom: classes of several crafts with the times that a colleague would write down. Invented times. */
class RolesTest {
    private static final LocalDateTime SIX = LocalDateTime.of(2027, 3, 6, 18, 0);

    private final ClassPlanner planner = ComputedPlans.planner(new SolverPlanner());

    private static Step.StudentTime minutes(int all) {
        return new Step.StudentTime(Duration.ofMinutes(all), Duration.ofMinutes(all), Duration.ofMinutes(all));
    }

    /** The tutor shows it in 5 minutes; each of five students files for 20, and solders for 4 with the tutor beside; the quench takes 3 and all end together in 5. */
    private static ClassFile torch(int helpers) {
        ClassFile file = SmallClass.of(5).level(SkillLevel.IMPROVER).makesIn("file", 20)
                .step(Step.of("show", "Shown: the torch", StepKind.SHOW).withLasts(Duration.ofMinutes(5)))
                .step(Step.of("solder", "Solder", StepKind.MAKE).withStudent(minutes(4)).withBeside(true))
                .step(Step.of("quench", "Quench", StepKind.WAIT).withLasts(Duration.ofMinutes(3)))
                .step(Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)))
                .file();
        return file.with(file.setup().withHelpers(helpers));
    }

    @Test
    void soldersWithTheTutorBesideOneStudentAfterTheOther() {
        assertThat(finish(torch(0))).isEqualTo(SIX.plusMinutes(20 + 5 + 5 * 4 + 3 + 5));
        assertThat(finish(torch(1))).as("two at once, then one").isEqualTo(SIX.plusMinutes(20 + 5 + 3 * 4 + 3 + 5));
        assertThat(finish(torch(9))).isEqualTo(SIX.plusMinutes(20 + 5 + 4 + 3 + 5));
    }

    /** Ten students ink alone for 5 minutes and print in pairs, at two presses, for 3; nobody wrote down how many rollers there are. */
    @Test
    void printsInPairsAtThePress() {
        ClassFile file = SmallClass.of(10).level(SkillLevel.IMPROVER).makesIn("ink", 5)
                .step(Step.of("print", "Print", StepKind.MAKE).withStudent(minutes(3)).withTools(List.of(new Step.ToolUse("press", 1, 2), new Step.ToolUse("roller", 1)))).file();
        ClassFile two = file.with(file.setup().withTools(Map.of("press", 2)));
        assertThat(finish(two)).as("two pairs at once, three turns").isEqualTo(SIX.plusMinutes(5 + 3 * 3));
        assertThat(finish(file.with(file.setup().withTools(Map.of("press", 5))))).isEqualTo(SIX.plusMinutes(5 + 3));
        assertThat(two.atOnce("press")).isEqualTo(5);
        assertThat(two.atOnce("roller")).isEqualTo(10);
    }

    /** Three families: a grown-up who does it in 10 minutes, and a child who takes half as long again. All wait for the children. */
    @Test
    void letsAChildTakeTheTimeOfABeginnerBesideAGrownUp() {
        ClassFile file = SmallClass.of(6).level(SkillLevel.IMPROVER).makesIn("thread", 10).step(Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5))).file();
        List<ClassSetup.Student> families = IntStream.rangeClosed(1, 3).boxed().flatMap(family -> Stream.of(
                ClassSetup.Student.named("Grown-up " + family), ClassSetup.Student.named("Child " + family).withLevel(SkillLevel.BEGINNER))).toList();
        ClassFile grownUps = file.with(file.setup().withStudents(families.stream().map(student -> student.withLevel(null)).toList()));
        ClassFile mixed = file.with(file.setup().withStudents(families));
        assertThat(finish(grownUps)).isEqualTo(SIX.plusMinutes(10 + 5));
        assertThat(finish(mixed)).isEqualTo(SIX.plusMinutes(15 + 5));
        ClassFile most = mixed.with(mixed.setup().withShare(new BigDecimal("0.5")));
        assertThat(finish(most)).as("nobody waits for the children").isEqualTo(SIX.plusMinutes(10 + 5));
    }

    /**
     * Twelve saw for 20 minutes, are shown in 10 how a stone is set, and set it in 20. Six can watch: twelve who work together see it one half after the other;
     * of two groups the second sees it while the first sets, and sets until the same minute. The tutor may choose to show it group by group where all can watch.
     */
    @Test
    void showsInTurnsWhatOnlySixCanWatch() {
        Step show = Step.of("show", "Shown: setting", StepKind.SHOW).withLasts(Duration.ofMinutes(10));
        ClassFile all = SmallClass.of(12).level(SkillLevel.IMPROVER).makesIn("saw", 20).step(show).makesIn("set", 20).file();
        ClassFile six = all.with(all.project().withSteps(all.project().steps().stream().map(step -> step.id().equals("show") ? show.withWatchers(6) : step).toList()));
        assertThat(finish(all)).isEqualTo(SIX.plusMinutes(20 + 10 + 20));
        assertThat(finish(six)).isEqualTo(SIX.plusMinutes(20 + 2 * 10 + 20));
        assertThat(starts(six, 2)).containsExactly("saw/1 18:00", "saw/2 18:00", "show/1 18:20", "show/2 18:30", "set/1 18:30", "set/2 18:40");
        assertThat(starts(all, 2)).containsExactly("saw/1 18:00", "saw/2 18:00", "show/0 18:20", "set/1 18:30", "set/2 18:30");
        assertThat(starts(all.with(all.setup().withShownToGroups(List.of("show"))), 2)).isEqualTo(starts(six, 2));
        assertThat(starts(all.with(all.setup().withShownToGroups(List.of("show"))), 1)).containsExactly("saw/0 18:00", "show/0 18:20", "set/0 18:30");
    }

    private List<String> starts(ClassFile file, int groups) {
        ClassFile parted = file.with(file.setup().withGroups(groups));
        finish(parted);
        return planner.plan(parted).lesson().blocks().stream().map(block -> "%s/%d %s".formatted(block.step(), block.group(), block.start().toLocalTime())).toList();
    }

    @Test
    void refusesSomebodyBesideWhereNobodyMakesAnything() {
        ClassFile file = torch(0);
        List<Step> steps = file.project().steps().stream().map(step -> step.id().equals("tidy") ? step.withBeside(true) : step).toList();
        assertThat(ProjectRules.faults(file.project().withSteps(steps))).extracting(fault -> fault.detail()).contains("Somebody stays beside students only while they make something.");
    }

    private LocalDateTime finish(ClassFile file) {
        ClassPlan plan = planner.plan(file);
        LessonRequest request = planner.rested(file);
        LessonPlan ordered = Lessons.plan(new SolverPlanner().plan(request));
        assertThat(LessonChecker.faults(request, ordered)).isEmpty();
        assertThat(Duration.between(ordered.finish(), plan.lesson().finish()).abs()).as("by the means, or by playing the class").isLessThan(Duration.ofMinutes(1));
        assertThat(plan.risk().promised()).as("exact times leave nothing to chance").isEqualTo(plan.lesson().finish());
        return plan.lesson().finish();
    }
}
