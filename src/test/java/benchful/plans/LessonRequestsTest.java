package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.Promise;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.lesson.Break;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.projects.ProjectSpec;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every field of the sheets that the lesson engine must hear of reaches it. */
class LessonRequestsTest {
    private static final LocalDateTime SIX = LocalDateTime.of(2027, 3, 6, 18, 0);

    @Test
    void asksForTheClassAsItIsSetUp() {
        LessonRequest request = asked(SmallClass.of(5).helpers(2).groups(2).ownPace().ahead("cut")
                .in("Shed", 8, Map.of("pliers", 3)).brings("pliers", 1).brings("lamp", 2).makes("knot", 10));

        assertThat(request.headcount()).isEqualTo(5);
        assertThat(request.helpers()).isEqualTo(2);
        assertThat(request.groups()).isEqualTo(2);
        assertThat(request.pacing()).isEqualTo(Pacing.OWN_PACE);
        assertThat(request.preparedAhead()).containsExactly("cut");
        assertThat(request.room()).containsExactly(new RoomTool("lamp", 2), new RoomTool("pliers", 4));
        assertThat(asked(SmallClass.of(5).makes("knot", 10)).pacing()).isEqualTo(Pacing.TOGETHER);
    }

    @ParameterizedTest
    @CsvSource({"BEGINNER, 1.5", "IMPROVER, 1.0", "EXPERIENCED, 0.75"})
    void allowsEachLevelItsTime(SkillLevel level, double factor) {
        assertThat(step(SmallClass.of(3).level(level).makes("knot", 10))).isEqualTo(new Step.Make("knot", "The knot",
                new StudentTime(Duration.ofMinutes(5), Duration.ofMinutes(10), Duration.ofMinutes(20), 1, factor), List.of(), Help.NONE, 1, true));
    }

    /** A step's own share goes before that of the class; where neither is given all must be done. */
    @Test
    void movesOnWithTheShareOfTheStepOrElseOfTheClass() {
        assertThat(make(SmallClass.of(4).share("0.5").makes("knot", 10, "0.75")).finishShare()).isEqualTo(0.75);
        assertThat(make(SmallClass.of(4).makes("knot", 10, "0.75")).finishShare()).isEqualTo(0.75);
        assertThat(make(SmallClass.of(4).share("0.5").makes("knot", 10)).finishShare()).isEqualTo(0.5);
        assertThat(make(SmallClass.of(4).makes("knot", 10)).finishShare()).isEqualTo(1);
    }

    @Test
    void letsTalksRunOver() {
        benchful.projects.Step talk = benchful.projects.Step.of("talk", "Talk", StepKind.SHOW).withLasts(Duration.ofMinutes(10)).withMayRunOver(Duration.ofMinutes(4));
        benchful.projects.Step tidy = benchful.projects.Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)).withPerStudent(Duration.ofSeconds(30))
                .withMayRunOver(Duration.ofMinutes(2));
        assertThat(asked(SmallClass.of(4).step(talk).step(tidy)).steps()).containsExactly(
                new Step.Show("talk", "Talk", Duration.ofMinutes(10), Duration.ZERO, Duration.ofMinutes(4), List.of()),
                new Step.Together("tidy", "Tidy", Duration.ofMinutes(5), Duration.ofSeconds(30), Duration.ofMinutes(2), List.of()));
        assertThat(asked(SmallClass.of(4).shows("talk", 10)).steps()).extracting(Step::over).containsExactly(Duration.ZERO);
    }

    @Test
    void tellsOfToolsHelpGapsAndHome() {
        benchful.projects.Step lay = benchful.projects.Step.of("lay", "Lay out", StepKind.MAKE).withStudent(SmallClass.times(4)).withAfter(List.of())
                .withTools(List.of(new benchful.projects.Step.ToolUse("board", 1)))
                .withHelp(new benchful.projects.Step.Help(new BigDecimal("2.5"), Duration.ofSeconds(90)));
        benchful.projects.Step cure = benchful.projects.Step.of("cure", "Cure", StepKind.WAIT).withLasts(Duration.ofMinutes(30)).withAtMost(Duration.ofMinutes(45))
                .withAtHome(true).withAfter(List.of(new benchful.projects.Step.After("lay", Duration.ofMinutes(2), Duration.ofMinutes(9))))
                .withTools(List.of(new benchful.projects.Step.ToolUse("rack", 2)));
        LessonRequest request = asked(SmallClass.of(4).step(lay).step(cure).shows("end", 5));

        assertThat(request.steps()).containsExactly(
                new Step.Make("lay", "Lay out", new StudentTime(Duration.ofMinutes(2), Duration.ofMinutes(4), Duration.ofMinutes(8), 1, 1.5),
                        List.of(new ToolUse("board", 1)), new Help(3.75, 1.5), 1, true),
                new Step.Wait("cure", "Cure", Duration.ofMinutes(30), Optional.of(Duration.ofMinutes(45)), List.of(new ToolUse("rack", 2)), true),
                new Step.Show("end", "The end", Duration.ofMinutes(5)));
        assertThat(request.links()).containsExactly(
                new Link("lay", "cure", Duration.ofMinutes(2), Optional.of(Duration.ofMinutes(9))), new Link("cure", "end", Duration.ZERO, Optional.empty()));
    }

    @ParameterizedTest
    @EnumSource(value = StepKind.class, names = {"SHOW", "TOGETHER", "AHEAD"})
    void keepsTheKindOfAStep(StepKind kind) {
        Duration ten = Duration.ofMinutes(10);
        List<benchful.projects.Step.ToolUse> lamp = List.of(new benchful.projects.Step.ToolUse("lamp", 1));
        Step asked = step(SmallClass.of(4).step(benchful.projects.Step.of("a", "A", kind).withLasts(ten).withTools(lamp)));

        List<ToolUse> uses = List.of(new ToolUse("lamp", 1));
        assertThat(asked).isEqualTo(switch (kind) {
            case SHOW -> new Step.Show("a", "A", ten, uses);
            case TOGETHER -> new Step.Together("a", "A", ten, uses);
            default -> new Step.Ahead("a", "A", ten);
        });
    }

    @Test
    void restsInEveryMeetingThatHoldsTheBreak() {
        LessonRequest request = asked(SmallClass.of(4).makes("knot", 10).rests(LocalTime.of(19, 30), 10)
                .meets(SIX.toLocalDate(), LocalTime.of(18, 0), LocalTime.of(21, 0)).meets(LocalDate.of(2027, 3, 7), LocalTime.of(18, 0), LocalTime.of(19, 35))
                .meets(LocalDate.of(2027, 3, 8), LocalTime.of(18, 0), LocalTime.of(19, 40)));

        assertThat(request.breaks()).containsExactly(new Break("Break", SIX.plusMinutes(90), SIX.plusMinutes(100)),
                new Break("Break", SIX.plusDays(2).plusMinutes(90), SIX.plusDays(2).plusMinutes(100)));
    }

    @Test
    void restsInTheOneMeetingThatABreakIsFor() {
        ClassFile twice = SmallClass.of(4).makes("knot", 10).meets(SIX.toLocalDate(), LocalTime.of(18, 0), LocalTime.of(21, 0))
                .meets(LocalDate.of(2027, 3, 7), LocalTime.of(18, 0), LocalTime.of(21, 0)).file();
        ClassFile second = twice.with(twice.setup().withBreaks(List.of(new ClassSetup.Break(LocalTime.of(19, 0), Duration.ofMinutes(10), null, 2))));
        assertThat(ClassPlanner.request(second).breaks()).containsExactly(new Break("Break", SIX.plusHours(25), SIX.plusHours(25).plusMinutes(10)));
        assertThat(SetupRules.check(second.setup(), second.project())).isEmpty();
        ClassFile third = twice.with(twice.setup().withBreaks(List.of(new ClassSetup.Break(LocalTime.of(19, 0), Duration.ofMinutes(10), null, 3)))
                .withRest(new ClassSetup.Rest(Duration.ofMinutes(50), Duration.ofMinutes(10), 3)));
        assertThat(SetupRules.check(third.setup(), third.project())).containsExactly(new Fault("/breaks/0/meeting", "There is no meeting 3. The class has 2."),
                new Fault("/rest/meeting", "There is no meeting 3. The class has 2."));
    }

    @Test
    void letsABreakBeginLaterThatMay() {
        ClassFile talks = SmallClass.of(4).shows("talk", 50).shows("demonstrate", 30).file();
        List<ClassSetup.Break> tea = List.of(new ClassSetup.Break(LocalTime.of(18, 30), Duration.ofMinutes(10), LocalTime.of(19, 30), null));
        assertThat(ClassPlanner.request(talks.with(talks.setup().withBreaks(tea))).breaks())
                .containsExactly(new Break("Break", SIX.plusMinutes(50), SIX.plusMinutes(60)));
    }

    /** The engine then says that it does not fit, as the tutor should hear. */
    @Test
    void asksForABreakThatIsLongerThanEveryMeeting() {
        assertThat(asked(SmallClass.of(4).makes("knot", 10).rests(LocalTime.of(19, 0), 181)).breaks())
                .containsExactly(new Break("Break", SIX.plusMinutes(60), SIX.plusMinutes(241)));
        assertThat(asked(SmallClass.of(4).makes("knot", 10).rests(LocalTime.of(19, 0), 180)).breaks()).isEmpty();
    }

    /** A formula of a measure, for each student's own size; half a knot is a knot. */
    @Test
    void repeatsAStepForEachStudentAsOftenAsTheOwnSizeTakes() {
        SmallClass knots = SmallClass.of(3).size("short", "length", "45 mm").size("long", "length", "96 mm").repeats("knot", 1, "length / 10 mm");
        assertThat(make(knots).time().scales(3)).containsExactly(7.5, 7.5, 7.5);
        assertThat(IntStream.range(0, 3).map(make(knots.want("long", 1)).time()::repeats)).containsExactly(10, 5, 5);
        assertThat(make(SmallClass.of(3).size("none", "length", "1 mm").repeats("knot", 1, "length - length")).time().repeats(0)).isEqualTo(1);
    }

    /** A student known by name may be more practised than the class, who are beginners here. */
    @Test
    void paceOfAStudentIsTheOwnLevel() {
        SmallClass known = SmallClass.of(3).makes("knot", 10).knows(ClassSetup.Student.named("Ada"), ClassSetup.Student.named("Bo").withLevel(SkillLevel.EXPERIENCED));
        assertThat(make(known).time().scales(3)).containsExactly(1.5, 0.75, 1.5);
    }

    /** A tutor who wrote down what beginners take gets just that for beginners, and half of it for the experienced. */
    @Test
    void takesTheTimesAsThoseOfWhomTheyAre() {
        ClassFile file = SmallClass.of(2).makes("knot", 10).file();
        ProjectSpec ofBeginners = file.project().withTimesOf(SkillLevel.BEGINNER);
        assertThat(pace(of(ofBeginners, file), SkillLevel.BEGINNER)).isEqualTo(1);
        assertThat(pace(of(ofBeginners, file), SkillLevel.EXPERIENCED)).isEqualTo(0.5);
        assertThat(pace(file, SkillLevel.BEGINNER)).isEqualTo(1.5);
    }

    private static ClassFile of(ProjectSpec project, ClassFile file) {
        return new ClassFile(project, file.setup(), file.venue(), file.materials(), file.suppliers());
    }

    private static double pace(ClassFile file, SkillLevel level) {
        LessonRequest request = ClassPlanner.request(file.with(file.setup().withLevel(level)));
        return ((Step.Make) request.steps().get(0)).time().scale(0);
    }

    @Test
    void promisesWhatTheClassSays() {
        assertThat(asked(SmallClass.of(2).makes("knot", 10)).promise()).isEqualTo(0.9);
        assertThat(asked(SmallClass.of(2).makes("knot", 10).promises(Promise.THREE_IN_FOUR)).promise()).isEqualTo(0.75);
    }

    @Test
    void growsWithHeadsAndLoads() {
        benchful.projects.Step hand = benchful.projects.Step.of("hand", "Hand out", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)).withPerStudent(Duration.ofSeconds(30));
        benchful.projects.Step fire = benchful.projects.Step.of("fire", "Fire", StepKind.WAIT).withLasts(Duration.ofMinutes(60)).withPlaces(4)
                .withTools(List.of(new benchful.projects.Step.ToolUse("kiln", 1)));
        LessonRequest request = asked(SmallClass.of(10).step(hand).step(fire));
        assertThat(request.steps()).extracting(step -> request.length(step, 10)).containsExactly(Duration.ofMinutes(10), Duration.ofMinutes(180));
    }

    private static LessonRequest asked(SmallClass file) {
        return ClassPlanner.request(file.file());
    }

    private static Step step(SmallClass file) {
        return asked(file).steps().get(0);
    }

    private static Step.Make make(SmallClass file) {
        return (Step.Make) step(file);
    }
}
