package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.time.ClassTime;
import benchful.core.lesson.time.HelpQueue;
import benchful.core.lesson.time.Pace;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClassSimulationTest {

    private static final StudentTime TIME = StudentTime.ofMinutes(10, 15, 40);

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    private static LessonPlan plan(LessonRequest request) {
        return Lessons.plan(new ListPlanner().plan(request));
    }

    private static Risk risk(LessonRequest request) {
        return ClassSimulation.of(request, plan(request));
    }

    private static LessonRequest.Builder one(int students, Step.Make make) {
        return LessonRequest.builder().headcount(students).meeting(TEN, TEN.plusHours(1)).step(make);
    }

    /** Mean over many classes of when the class moves on from its only step [s]. */
    private static double meanEnd(LessonRequest request) {
        Replication played = new Replication(new ScriptWriter(request, plan(request)).script());
        double sum = 0;
        for (int number = 0; number < 20_000; number++) {
            played.play(request.seed(), number);
            sum += played.end[0];
        }
        return sum / 20_000;
    }

    @Test
    void agreesWithTheOrderStatisticOfTheLastToFinish() {
        double expected = Pace.of(TIME).expectedOrderStatistic(12, 12);
        assertThat(meanEnd(one(12, new Step.Make("a", "Cut", TIME)).build())).isCloseTo(expected, within(expected * 0.003));
    }

    @Test
    void agreesWithTheShareThatMustFinish() {
        double expected = Pace.of(TIME).expectedOrderStatistic(9, 12);
        Step.Make make = new Step.Make("a", "Cut", TIME, List.of(), Help.NONE, 0.75, true);
        assertThat(meanEnd(one(12, make).build())).isCloseTo(expected, within(expected * 0.003));
    }

    @Test
    void agreesWithTurnsAtSharedTools() {
        Step.Make make = new Step.Make("a", "Cut", TIME, List.of(new ToolUse("pliers", 1)), Help.NONE, 1, true);
        double planned = new ClassTime(List.of(new RoomTool("pliers", 5)), 0, 1).of(make, 12).length().toSeconds();
        assertThat(meanEnd(one(12, make).tool("pliers", 5).build())).isCloseTo(planned, within(planned * 0.02));
    }

    /** Until the first student is done all are at work, so the queue has its full source, see {@link HelpQueue}. */
    @Test
    void agreesWithTheFiniteSourceQueueForHelp() {
        StudentTime constant = StudentTime.ofMinutes(1200, 1200, 1200);
        Step.Make make = new Step.Make("a", "Cut", constant, List.of(), new Help(4, 2.5), 1.0 / 8, true);
        LessonRequest request = one(8, make).build();
        Script script = new ScriptWriter(request, plan(request)).script();
        Replication played = new Replication(script);
        double waited = 0;
        double taught = 0;
        for (int number = 0; number < 300; number++) {
            played.play(7, number);
            taught += played.end[0] * 8;
            for (double student : played.lost[script.helpCause()]) {
                waited += student;
            }
        }
        HelpQueue queue = HelpQueue.of(8, 4, 24, 1);
        assertThat(waited / taught).isCloseTo(queue.queue() / 8, within(queue.queue() / 8 * 0.03));
    }

    /** With no spread and no help nothing is left to chance; shared tools let the first to finish dry sooner. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void reproducesAPlanInWhichNothingIsLeftToChance(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        LessonRequest request = drawn.toBuilder().replications(3)
                .steps(drawn.steps().stream().map(ClassSimulationTest::certain).toList()).build();
        Risk risk = risk(request);
        assertThat(risk.late()).isEqualTo(plan(request).finish());
        assertThat(risk.onTime()).isEqualTo(plan(request).fits() ? 1 : 0);
    }

    private static Step certain(Step step) {
        if (step instanceof Step.Make make) {
            Duration usual = make.time().usual();
            return new Step.Make(make.id(), make.title(), new StudentTime(usual, usual, usual), List.of(), Help.NONE, 1, make.mayPause());
        }
        return step;
    }

    /** Told to the minute. A late end is one that nine classes in ten keep to, a likely one half of them. */
    @Test
    void callsAnEndLateThatNineClassesInTenKeepTo() {
        Risk risk = risk(one(12, new Step.Make("a", "Cut", TIME)).replications(1000).build());
        assertThat(risk.late()).isEqualTo(risk.finishes().get(18)).isAfter(risk.finishes().get(16));
        assertThat(risk.likely()).isEqualTo(risk.finishes().get(10)).isAfter(risk.finishes().get(7));
        assertThat(risk.blocks().get(0).lateEnd()).isEqualTo(risk.late());
        assertThat(risk.blocks().get(0).likelyEnd()).isEqualTo(risk.likely());
    }

    @Test
    void givesTheSameAnswerForTheSameSeedAndAnotherForAnother() {
        LessonRequest request = Lessons.pendant().replications(500).build();
        assertThat(risk(request)).isEqualTo(risk(request));
        assertThat(risk(request.toBuilder().seed(2).build()).finishes()).isNotEqualTo(risk(request).finishes());
    }

    @Test
    void makesNoClassLaterWithAHelperOrMoreToolsOrAtOwnPace() {
        Step.Make cut = new Step.Make("a", "Cut", TIME, List.of(new ToolUse("pliers", 1)), new Help(4, 3), 1, true);
        Step.Make file = new Step.Make("b", "File", TIME, List.of(new ToolUse("pliers", 1)), new Help(4, 3), 1, true);
        LessonRequest request = one(10, cut).step(file).tool("pliers", 6).link("a", "b").build();
        Risk base = risk(request);
        assertThat(risk(request.toBuilder().helpers(1).build()).likely()).isBefore(base.likely());
        assertThat(risk(request.toBuilder().tool("pliers", 2).build()).likely()).isBefore(base.likely());
        assertThat(risk(request.toBuilder().pacing(Pacing.OWN_PACE).build()).likely()).isBefore(base.likely());
    }

    @Test
    void tellsWhatStudentsWaitForAndWhereTheQuickNeedMoreToDo() {
        LessonRequest request = LessonRequest.builder().headcount(12).meeting(TEN, TEN.plusHours(2)).tool("saw", 3)
                .step(new Step.Make("a", "Saw", StudentTime.ofMinutes(5, 10, 20), List.of(new ToolUse("saw", 1)), new Help(3, 2), 1, true))
                .step(new Step.Wait("w", "Dry", Duration.ofMinutes(20)))
                .step(new Step.Show("s", "Show the polish", Duration.ofMinutes(5)))
                .link("a", "w").link("w", "s").build();
        Risk risk = risk(request);
        assertThat(risk.waiting()).extracting(Risk.Waiting::cause)
                .contains(Risk.Cause.TOOL, Risk.Cause.HELP, Risk.Cause.DRYING, Risk.Cause.CLASS);
        assertThat(risk.waiting().get(0).sentence()).startsWith("A student waits ");
        assertThat(risk.extensions()).singleElement().satisfies(extension -> {
            assertThat(extension.before()).isEqualTo("Show the polish");
            assertThat(extension.spare()).isBetween(Duration.ofMinutes(15), Duration.ofMinutes(45));
        });
    }

    @Test
    void stopsThoseWhoHaveNotFinishedWhenTheClassGathers() {
        Step.Make make = new Step.Make("a", "Cut", TIME, List.of(), Help.NONE, 0.75, true);
        LessonRequest request = one(12, make).step(new Step.Show("s", "Show", Duration.ofMinutes(5))).link("a", "s").build();
        assertThat(risk(request).blocks().get(0).unfinished()).isCloseTo(0.25, within(1e-9));
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void worksInNoBreakAndKeepsEveryBlockInOrder(long seed) {
        LessonRequest request = Lessons.drawn(seed).toBuilder().replications(40).build();
        Risk risk = risk(request);
        assertThat(risk.blocks()).allSatisfy(block -> {
            assertThat(block.likelyStart()).isBeforeOrEqualTo(block.likelyEnd());
            assertThat(block.likelyEnd()).isBeforeOrEqualTo(block.lateEnd());
        });
        assertThat(risk.finishes()).isSorted();
        assertThat(risk.onTime()).isBetween(0.0, 1.0);
    }

    @Test
    void playsFewerClassesWhereThereAreVeryManyStudents() {
        LessonRequest request = one(1000, new Step.Make("a", "Cut", TIME)).replications(50_000).build();
        assertThat(risk(request).classes()).isEqualTo(4_000);
    }

    /** The paint must go into the kiln within five minutes, and the kiln is busy for an hour. */
    @Test
    void keepsToAPlanThatHoldsAStepBackForAGreatestGap() {
        List<ToolUse> kiln = List.of(new ToolUse("kiln", 1));
        LessonRequest request = LessonRequest.builder().headcount(6).meeting(TEN, TEN.plusHours(3)).tool("kiln", 1).replications(200)
                .step(new Step.Wait("bisque", "Fire the first load", Duration.ofMinutes(60), Optional.empty(), kiln, false))
                .step(new Step.Make("paint", "Paint", StudentTime.ofMinutes(10, 12, 14)))
                .step(new Step.Wait("glaze", "Fire the second load", Duration.ofMinutes(30), Optional.empty(), kiln, false))
                .link(new Link("paint", "glaze", Duration.ZERO, Optional.of(Duration.ofMinutes(5)))).link("bisque", "glaze").build();
        LessonPlan plan = plan(request);
        LocalDateTime held = TEN.plusMinutes(55).minus(plan.blocksOf("paint").get(0).length());
        assertThat(plan.blocksOf("paint").get(0).start()).isEqualTo(held).isBetween(TEN.plusMinutes(42), TEN.plusMinutes(43));
        assertThat(risk(request).blocks().get(1).likelyStart()).isEqualTo(TEN.plusMinutes(43));
        assertThat(risk(request).finishes().get(0)).isEqualTo(TEN.plusMinutes(90));
    }

    /** Twelve layers of three waits, each behind all of the layer before: half a million ways through. */
    @Test
    void followsManyWaysThroughWaitsAtOnce() {
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).replications(2);
        for (int i = 0; i < 36; i++) {
            lesson.step(new Step.Wait("w" + i, "Wait " + i, Duration.ofMinutes(1 + i % 3)));
            for (int before = i / 3 * 3 - 3; before >= 0 && before < i / 3 * 3; before++) {
                lesson.link("w" + before, "w" + i);
            }
        }
        assertThat(risk(lesson.build()).late()).isEqualTo(TEN.plusMinutes(36));
    }

    @Test
    void goesOnWhereWaitsBoundEachOther() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1)).replications(2)
                .step(new Step.Wait("a", "Warm the wax", Duration.ofMinutes(20))).step(new Step.Wait("b", "Warm the mould", Duration.ofMinutes(10)))
                .link(new Link("a", "b", Duration.ofMinutes(-5), Optional.empty())).link(new Link("b", "a", Duration.ofMinutes(-60), Optional.empty()))
                .build();
        assertThat(risk(request).late()).isEqualTo(TEN.plusMinutes(25));
    }
}
