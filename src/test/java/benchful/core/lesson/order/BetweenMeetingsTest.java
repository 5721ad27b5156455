package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.Promised;
import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is done while no meeting is held, with invented times of crafts that can't do without. */
class BetweenMeetingsTest {

    private static final LocalDateTime SATURDAY = TEN;

    static Stream<LessonPlanner> planners() {
        return Stream.of(new ListPlanner(), new SolverPlanner());
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step kiln(String id, int hours) {
        return new Step.Wait(id, id, Duration.ofHours(hours), Optional.empty(), List.of(new ToolUse("kiln", 1)), false);
    }

    private static LessonRequest.Builder course(int meetings, int hours) {
        LessonRequest.Builder request = LessonRequest.builder().headcount(6).replications(200);
        for (int week = 0; week < meetings; week++) {
            request.meeting(SATURDAY.plusWeeks(week), SATURDAY.plusWeeks(week).plusHours(hours));
        }
        return request;
    }

    private static LessonRequest.Builder inTurn(LessonRequest.Builder request, Step... steps) {
        for (int i = 0; i < steps.length; i++) {
            request.step(steps[i]);
            if (i > 0) {
                request.link(steps[i - 1].id(), steps[i].id());
            }
        }
        return request;
    }

    /** Turning follows throwing a week later, the tutor loads the kiln twice, and the fourth meeting is for glazing's second coat. */
    private static LessonRequest pottery() {
        return inTurn(course(4, 2).tool("kiln", 1),
                make("throw", 90),
                new Step.Wait("stiffen", "stiffen", Duration.ofHours(24)),
                make("turn", 60),
                new Step.Wait("dry", "dry", Duration.ofDays(3)),
                new Step.Outside("load_bisque", "load_bisque", StepKind.BETWEEN, Duration.ofMinutes(20), Duration.ofMinutes(5)),
                kiln("bisque", 24),
                make("glaze", 45),
                new Step.Outside("load_glaze", "load_glaze", StepKind.BETWEEN, Duration.ofMinutes(60)),
                kiln("fire", 30),
                new Step.Show("look", "look", Duration.ofMinutes(30)),
                new Step.Outside("collect", "collect", StepKind.COLLECT, Duration.ZERO)).build();
    }

    private static Map<String, String> times(LessonPlan plan) {
        return plan.blocks().stream().collect(Collectors.toMap(Block::step, block -> block.start() + " " + block.end(), (a, b) -> a, TreeMap::new));
    }

    private static void isSound(LessonRequest request, LessonPlan plan) {
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("planners")
    void firesPotsWhileNobodyIsThere(LessonPlanner planner) {
        LessonPlan plan = plan(planner.plan(pottery()));
        isSound(pottery(), plan);
        assertThat(times(plan)).containsExactlyInAnyOrderEntriesOf(Map.ofEntries(
                Map.entry("throw", "2025-03-08T10:00 2025-03-08T11:30"),
                Map.entry("stiffen", "2025-03-08T11:30 2025-03-09T11:30"),
                Map.entry("turn", "2025-03-15T10:00 2025-03-15T11:00"),
                Map.entry("dry", "2025-03-15T11:00 2025-03-18T11:00"),
                Map.entry("load_bisque", "2025-03-18T11:00 2025-03-18T11:50"),
                Map.entry("bisque", "2025-03-18T11:50 2025-03-19T11:50"),
                Map.entry("glaze", "2025-03-22T10:00 2025-03-22T10:45"),
                Map.entry("load_glaze", "2025-03-22T12:00 2025-03-22T13:00"),
                Map.entry("fire", "2025-03-22T13:00 2025-03-23T19:00"),
                Map.entry("look", "2025-03-29T10:00 2025-03-29T10:30"),
                Map.entry("collect", "2025-03-29T12:00 2025-03-29T12:00")));
        assertThat(plan.finish()).isEqualTo(LocalDateTime.of(2025, 3, 29, 10, 30));
        assertThat(plan.blocksOf("load_glaze").get(0).lane()).isEqualTo(Lane.OUTSIDE);
        assertThat(plan.meetings()).extracting(MeetingPlan::steps).as("work outside the meetings belongs to none")
                .containsExactly(List.of("throw", "stiffen"), List.of("turn", "dry", "bisque"), List.of("glaze", "fire"), List.of("look"));
        assertThat(plan.tutor().spans()).as("it takes no tutor from the class").noneMatch(span -> span.title().contains("load"));
    }

    @Test
    void promisesTheSameWorkOutsideTheMeetings() {
        LessonPlan order = plan(new SolverPlanner().plan(pottery()));
        Promised promised = Promised.of(pottery(), order);
        isSoundOutside(promised.plan());
        assertThat(promised.risk().onTime()).isEqualTo(1);
        assertThat(times(promised.plan())).containsEntry("load_glaze", "2025-03-22T12:00 2025-03-22T13:00")
                .containsEntry("fire", "2025-03-22T13:00 2025-03-23T19:00").containsEntry("collect", "2025-03-29T12:00 2025-03-29T12:00");
        assertThat(promised.plan().blocksOf("load_bisque").get(0).start()).as("after the slowest of nine in ten classes has dried")
                .isEqualTo(promised.plan().blocksOf("turn").get(0).end().plusDays(3));
    }

    private static void isSoundOutside(LessonPlan plan) {
        plan.blocks().stream().filter(block -> block.lane() == Lane.OUTSIDE).forEach(block -> assertThat(plan.meetings())
                .noneMatch(meeting -> block.start().isBefore(meeting.end()) && block.end().isAfter(meeting.start())));
    }

    /** Poured on Saturday, out of the mould on Sunday, sanded a week later. */
    @ParameterizedTest
    @MethodSource("planners")
    void takesResinOutOfItsMouldsBetweenTheMeetings(LessonPlanner planner) {
        LessonRequest request = inTurn(course(2, 2),
                make("pour", 40),
                new Step.Wait("set", "set", Duration.ofHours(24)),
                new Step.Outside("demould", "demould", StepKind.BETWEEN, Duration.ZERO, Duration.ofMinutes(4)),
                new Step.Wait("cure", "cure", Duration.ofHours(24)),
                make("sand", 50)).build();
        LessonPlan plan = plan(planner.plan(request));
        isSound(request, plan);
        assertThat(times(plan)).containsExactlyInAnyOrderEntriesOf(Map.of(
                "pour", "2025-03-08T10:00 2025-03-08T10:40",
                "set", "2025-03-08T10:40 2025-03-09T10:40",
                "demould", "2025-03-09T10:40 2025-03-09T11:04",
                "cure", "2025-03-09T11:04 2025-03-10T11:04",
                "sand", "2025-03-15T10:00 2025-03-15T10:50"));
        assertThat(plan.blocksOf("demould").get(0).slack()).as("until 24 hours before the next meeting")
                .isEqualTo(Duration.between(LocalDateTime.of(2025, 3, 9, 11, 4), LocalDateTime.of(2025, 3, 14, 10, 0)));
        assertThat(plan.fits()).isTrue();
    }

    /** Six weeks on a shelf after the only meeting are no reason to say that the class does not fit. */
    @ParameterizedTest
    @MethodSource("planners")
    void postsSoapWhenItHasCured(LessonPlanner planner) {
        LessonRequest request = inTurn(course(1, 2),
                make("stir", 50),
                new Step.Wait("set", "set", Duration.ofHours(48)),
                new Step.Outside("cut", "cut", StepKind.BETWEEN, Duration.ofMinutes(15), Duration.ofMinutes(2)),
                new Step.Wait("cure", "cure", Duration.ofDays(42)),
                new Step.Outside("post", "post", StepKind.COLLECT, Duration.ZERO)).build();
        LessonPlan plan = plan(planner.plan(request));
        isSound(request, plan);
        assertThat(times(plan)).containsExactlyInAnyOrderEntriesOf(Map.of(
                "stir", "2025-03-08T10:00 2025-03-08T10:50",
                "set", "2025-03-08T10:50 2025-03-10T10:50",
                "cut", "2025-03-10T10:50 2025-03-10T11:17",
                "cure", "2025-03-10T11:17 2025-04-21T11:17",
                "post", "2025-04-21T11:17 2025-04-21T11:17"));
        assertThat(plan.finish()).isEqualTo(LocalDateTime.of(2025, 3, 8, 10, 50));
        assertThat(Promised.of(request, plan).risk().onTime()).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("planners")
    void letsStudentsKnitAtHomeOnePieceAfterTheOther(LessonPlanner planner) {
        LessonRequest request = course(2, 2).step(make("cast_on", 30)).step(make("join", 30))
                .step(new Step.Outside("front", "front", StepKind.HOMEWORK, Duration.ofHours(3)))
                .step(new Step.Outside("back", "back", StepKind.HOMEWORK, Duration.ofHours(2)))
                .link("cast_on", "front").link("cast_on", "back").link("front", "join").link("back", "join").build();
        LessonPlan plan = plan(planner.plan(request));
        isSound(request, plan);
        assertThat(plan.blocksOf("front").get(0).length().plus(plan.blocksOf("back").get(0).length())).isEqualTo(Duration.ofHours(5));
        assertThat(plan.blocksOf("join").get(0).start()).isEqualTo(SATURDAY.plusWeeks(1));
        assertThat(plan.blocks().stream().filter(block -> block.kind() == StepKind.HOMEWORK).map(Block::end).max(LocalDateTime::compareTo))
                .contains(SATURDAY.plusHours(2 + 5));
    }

    private static Conflict refused(LessonRequest request) {
        Contradiction contradiction = (Contradiction) new SolverPlanner().plan(request);
        assertThat(new ListPlanner().plan(request)).isEqualTo(contradiction);
        assertThat(contradiction.proven()).isTrue();
        return contradiction.conflicts().get(0);
    }

    /** Meetings on two days that follow each other leave 22 hours. */
    @Test
    void saysHowMuchTooShortTheTimeBetweenMeetingsIs() {
        LessonRequest request = inTurn(LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2)),
                make("pour", 40), new Step.Wait("set", "set", Duration.ofHours(24)),
                new Step.Outside("demould", "demould", StepKind.BETWEEN, Duration.ofMinutes(25)), make("sand", 50)).build();
        assertThat(refused(request)).isEqualTo(new Conflict(Conflict.Kind.BETWEEN_MEETINGS, List.of("demould", "sand"),
                Sentence.of("\"sand\" waits for \"demould\", which is done outside the meetings, and can begin on %s at the earliest, 2 h 25 min after the last meeting begins.", TEN.plusDays(1).withMinute(25).plusHours(2)),
                "Book that meeting 2 h 25 min later or one more after it, or shorten what comes before."));
    }

    @Test
    void asksForASecondMeetingWhereTheClassGoesOnAfterTheTutorsWork() {
        LessonRequest request = inTurn(course(1, 4), make("glue", 40), new Step.Outside("press", "press", StepKind.BETWEEN, Duration.ofMinutes(10)), make("sew", 50)).build();
        assertThat(refused(request).sentence()).isEqualTo("\"sew\" waits for \"press\", which is done outside the meetings, and can begin on 2025-03-08 14:10 at the earliest, "
                + "but there is one meeting only. Book another meeting after that, or do it before the class.");
    }

    /** The tutor is done in time, but what she did has not cured when the last meeting ends. */
    @Test
    void countsTheWaitBehindTheTutorsWork() {
        LessonRequest request = inTurn(course(2, 2), make("pour", 40), new Step.Outside("coat", "coat", StepKind.BETWEEN, Duration.ofMinutes(30)),
                new Step.Wait("cure", "cure", Duration.ofDays(7)), make("sand", 50)).build();
        assertThat(refused(request).what()).asString().endsWith("can begin on 2025-03-15 12:30 at the earliest, 2 h 30 min after the last meeting begins.");
    }

    @Test
    void refusesWorkOfTheClassAfterCollecting() {
        LessonRequest request = inTurn(course(2, 2), make("bake", 40), new Step.Outside("collect", "collect", StepKind.COLLECT, Duration.ZERO), make("eat", 10)).build();
        assertThat(refused(request).sentence()).isEqualTo("\"eat\" is done in the class, but follows \"collect\", which comes after the last meeting. Let it follow another step.");
    }

    /** Where the next meeting is too soon, the one after it serves. */
    @ParameterizedTest
    @MethodSource("planners")
    void goesOnInTheFirstMeetingThatIsLateEnough(LessonPlanner planner) {
        LessonRequest request = inTurn(course(3, 2), make("throw", 40), new Step.Wait("dry", "dry", Duration.ofDays(8)),
                new Step.Outside("fire", "fire", StepKind.BETWEEN, Duration.ofMinutes(30)), make("glaze", 50)).build();
        LessonPlan plan = plan(planner.plan(request));
        isSound(request, plan);
        assertThat(plan.blocksOf("fire").get(0).start()).isEqualTo(LocalDateTime.of(2025, 3, 16, 10, 40));
        assertThat(plan.blocksOf("glaze").get(0).start()).isEqualTo(LocalDateTime.of(2025, 3, 22, 10, 0));
    }

    @Test
    void doesNotEndAWaitThatStillKeepsTheClassBecauseItIsCollectedLater() {
        LessonRequest request = inTurn(course(1, 2), make("glue", 20), new Step.Wait("dry", "dry", Duration.ofMinutes(30)), make("polish", 20),
                new Step.Wait("cure", "cure", Duration.ofDays(2)), new Step.Outside("collect", "collect", StepKind.COLLECT, Duration.ZERO))
                .link(new Link("glue", "collect")).build();
        LessonPlan plan = plan(new SolverPlanner().plan(request));
        isSound(request, plan);
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(70));
        assertThat(plan.blocksOf("collect").get(0).start()).isEqualTo(TEN.plusMinutes(70).plusDays(2));
    }
}
