package benchful.core.lesson.order.solver;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Proof;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.ExhaustiveSearch;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SolverPlannerTest {

    private final SolverPlanner planner = new SolverPlanner();

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @BeforeAll
    static void loadTheSolver() {
        assertThat(SolverPlanner.warmUp()).isTrue();
    }

    /** One student and a grid of five minutes, so that every start can be tried. */
    private static LessonRequest tiny(long seed) {
        Random random = new Random(seed);
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).tool("kiln", 2);
        if (random.nextBoolean()) {
            lesson.pause("tea", TEN.plusMinutes(15), TEN.plusMinutes(25));
        }
        for (int i = 0; i < 5; i++) {
            lesson.step(tinyStep("s" + i, random));
            if (i > 0 && random.nextInt(3) > 0) {
                lesson.link(new Link("s" + random.nextInt(i), "s" + i, Duration.ofMinutes(5L * (random.nextInt(3) - 1)),
                        random.nextInt(3) == 0 ? Optional.of(Duration.ofMinutes(5L * random.nextInt(4) + 5)) : Optional.empty()));
            }
        }
        return lesson.build();
    }

    private static Step tinyStep(String id, Random random) {
        Duration length = Duration.ofMinutes(5L * (1 + random.nextInt(4)));
        List<ToolUse> kilns = random.nextBoolean() ? List.of(new ToolUse("kiln", 1 + random.nextInt(2))) : List.of();
        return switch (random.nextInt(4)) {
            case 0 -> new Step.Show(id, id, length, kilns);
            case 1 -> new Step.Make(id, id, new StudentTime(length, length, length), kilns, Help.NONE, 1, random.nextInt(3) > 0);
            default -> new Step.Wait(id, id, length, Optional.empty(), kilns, random.nextInt(3) == 0);
        };
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatTryingEveryStartFinds(long seed) {
        for (long drawn = seed * 10; drawn < seed * 10 + 5; drawn++) {
            agreesWithTryingEveryStart(tiny(drawn), 120, drawn);
        }
    }

    /** Two meetings, waits that age, and waits that only mark a moment. */
    private static LessonRequest tinyInTwoMeetings(long seed) {
        Random random = new Random(seed);
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusMinutes(30)).tool("kiln", 2)
                .meeting(TEN.plusMinutes(50), TEN.plusMinutes(110));
        if (random.nextBoolean()) {
            lesson.pause("tea", TEN.plusMinutes(70), TEN.plusMinutes(75));
        }
        for (int i = 0; i < 4; i++) {
            boolean ages = i % 2 == 1 && random.nextBoolean();
            Duration least = Duration.ofMinutes(5L * random.nextInt(4));
            lesson.step(ages ? new Step.Wait("s" + i, "Wait " + i, least, Optional.of(least.plusMinutes(5L * random.nextInt(3))), List.of(), false)
                    : tinyStep("s" + i, random));
            if (i > 0 && random.nextInt(4) > 0) {
                lesson.link("s" + random.nextInt(i), "s" + i);
            }
        }
        return lesson.build();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatTryingEveryStartFindsInTwoMeetings(long seed) {
        for (long drawn = seed * 10; drawn < seed * 10 + 3; drawn++) {
            agreesWithTryingEveryStart(tinyInTwoMeetings(drawn), 170, drawn);
        }
    }

    /** Work of the tutor and of students outside two meetings, and collecting, between what the class makes and waits for. */
    private static LessonRequest tinyWithWorkOutside(long seed) {
        Random random = new Random(seed * 31 + 7);
        LocalDateTime second = TEN.plusMinutes(45 + 5L * random.nextInt(6));
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusMinutes(30)).tool("kiln", 2)
                .meeting(second, second.plusMinutes(60));
        for (int i = 0; i < 4; i++) {
            StepKind kind = List.of(StepKind.BETWEEN, StepKind.BETWEEN, StepKind.HOMEWORK, StepKind.COLLECT).get(random.nextInt(4));
            Duration length = kind == StepKind.COLLECT ? Duration.ZERO : Duration.ofMinutes(5L * (1 + random.nextInt(4)));
            lesson.step(random.nextInt(2) == 0 ? new Step.Outside("s" + i, "Outside " + i, kind, length) : tinyStep("s" + i, random));
            if (i > 0 && random.nextInt(5) > 0) {
                lesson.link("s" + random.nextInt(i), "s" + i);
            }
        }
        return lesson.build();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatTryingEveryStartFindsWithWorkOutsideTheMeetings(long seed) {
        for (long drawn = seed * 10; drawn < seed * 10 + 2; drawn++) {
            agreesWithTryingEveryStart(tinyWithWorkOutside(drawn), 200, drawn);
        }
    }

    /** Times asked for, some of which must be missed. */
    private static LessonRequest tinyWithTimesAskedFor(long seed) {
        Random random = new Random(seed * 17 + 3);
        LessonRequest tiny = tiny(seed);
        Map<String, LocalDateTime> times = new TreeMap<>();
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            times.put("s" + random.nextInt(5), TEN.plusMinutes(5L * (1 + random.nextInt(8))));
        }
        return tiny.toBuilder().notBefore(times).build();
    }

    /** Two students, each a group of her own, two places at each bench, and demonstrations that one of them can watch, or both. */
    private static LessonRequest tinyInGroups(long seed) {
        Random random = new Random(seed * 53 + 11);
        LessonRequest.Builder lesson = LessonRequest.builder().headcount(2).groups(2).meeting(TEN, TEN.plusHours(2)).tool("saw", 1);
        if (random.nextBoolean()) {
            lesson.pause("tea", TEN.plusMinutes(15), TEN.plusMinutes(25));
        }
        for (int i = 0; i < 4; i++) {
            Duration length = Duration.ofMinutes(5L * (1 + random.nextInt(3)));
            List<ToolUse> saw = random.nextBoolean() ? List.of(new ToolUse("saw", 1)) : List.of();
            lesson.step(i % 2 == 0 ? new Step.Show("s" + i, "s" + i, length, Duration.ZERO, Duration.ZERO, saw, random.nextInt(3), random.nextInt(4) == 0)
                    : new Step.Make("s" + i, "s" + i, new StudentTime(length, length, length), saw, Help.NONE, 1, random.nextBoolean()));
            if (i > 0 && random.nextInt(4) > 0) {
                lesson.link(new Link("s" + random.nextInt(i), "s" + i, Duration.ZERO,
                        random.nextBoolean() ? Optional.of(Duration.ofMinutes(5L * random.nextInt(4))) : Optional.empty()));
            }
        }
        return lesson.build();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatTryingEveryStartFindsWhereGroupsAreShownInTurn(long seed) {
        agreesWithTryingEveryStart(tinyInGroups(seed), 130, seed);
    }

    static LongStream fewSeeds() {
        return LongStream.range(0, 20);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("fewSeeds")
    void findsWhatTryingEveryStartFindsWithTimesAskedFor(long seed) {
        agreesWithTryingEveryStart(tinyWithTimesAskedFor(seed), 130, seed);
    }

    private void agreesWithTryingEveryStart(LessonRequest request, int horizon, long drawn) {
        LessonOutcome outcome = planner.plan(request);
        int shortest = ExhaustiveSearch.shortest(request, horizon);
        if (shortest < 0) {
            assertThat(outcome).as("drawn from %d", drawn).isInstanceOfSatisfying(Contradiction.class,
                    refused -> assertThat(refused.proven()).isTrue());
        } else {
            LessonPlan plan = plan(outcome);
            assertThat(LessonChecker.faults(request, plan)).as("drawn from %d", drawn).isEmpty();
            assertThat(plan.length().toMinutes()).as("drawn from %d", drawn).isEqualTo(shortest);
            assertThat(plan.proof().isShortest()).isTrue();
        }
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void breaksNoConstraintAndIsNeverLongerThanTheList(long seed) {
        LessonRequest request = Lessons.drawn(seed);
        LessonPlan plan = plan(planner.plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(plan.finish()).isBeforeOrEqualTo(plan(new ListPlanner().plan(request)).finish());
        assertThat(plan.proof().method()).isEqualTo(Proof.Method.SOLVER);
        assertThat(plan(planner.plan(request))).isEqualTo(plan);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverLongerWithOneMoreToolNorShorterWithALongerWait(long seed) {
        LessonRequest request = Lessons.drawn(seed);
        LessonPlan plan = plan(planner.plan(request));
        for (RoomTool tool : request.room()) {
            LessonPlan more = plan(planner.plan(request.toBuilder().tool(tool.name(), 1).build()));
            assertThat(more.proof().bound()).as("one more %s", tool.name()).isBeforeOrEqualTo(plan.finish());
            assertThat(!more.proof().isShortest() || !more.finish().isAfter(plan.finish())).isTrue();
        }
        List<Step> longer = request.steps().stream().map(SolverPlannerTest::lengthened).toList();
        LessonPlan later = plan(planner.plan(request.toBuilder().steps(longer).build()));
        assertThat(!plan.proof().isShortest() || !later.finish().isBefore(plan.finish())).isTrue();
    }

    private static Step lengthened(Step step) {
        return step instanceof Step.Wait wait ? new Step.Wait(wait.id(), wait.title(), wait.least().plusMinutes(7), wait.greatest(),
                wait.uses(), wait.endsAtHome()) : step;
    }

    @Test
    void provesMostDrawnLessons() {
        long proven = seeds().filter(seed -> plan(planner.plan(Lessons.drawn(seed))).proof().isShortest()).count();
        assertThat(proven).isGreaterThanOrEqualTo(57);
    }

    @Test
    void namesTheFewStepsThatCannotAllBeKept() {
        List<ToolUse> kiln = List.of(new ToolUse("kiln", 1));
        Optional<Duration> atOnce = Optional.of(Duration.ZERO);
        LessonRequest request = Lessons.pendant().tool("kiln", 1)
                .step(new Step.Wait("bowls", "Fire the bowls", Duration.ofMinutes(20), Optional.empty(), kiln, false))
                .step(new Step.Wait("tiles", "Fire the tiles", Duration.ofMinutes(20), Optional.empty(), kiln, false))
                .link(new Link("show", "bowls", Duration.ZERO, atOnce)).link(new Link("show", "tiles", Duration.ZERO, atOnce))
                .link(new Link("pour", "hang", Duration.ZERO, Optional.of(Duration.ofHours(5)))).build();
        Contradiction refused = (Contradiction) planner.plan(request);
        assertThat(refused.proven()).isTrue();
        assertThat(refused.conflicts().get(0).steps()).containsExactly("show", "bowls", "tiles");
    }

    @Test
    void showsEachStepJustBeforeItIsMade() {
        LessonRequest.Builder request = LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).headcount(4);
        for (String piece : List.of("fold", "glue", "sew")) {
            request.step(new Step.Show("show_" + piece, "Show how to " + piece, Duration.ofMinutes(5)))
                    .step(new Step.Make(piece, piece, StudentTime.ofMinutes(20, 20, 20))).link("show_" + piece, piece);
        }
        LessonPlan plan = plan(new SolverPlanner().plan(request.build()));
        assertThat(List.of("fold", "glue", "sew")).allSatisfy(piece ->
                assertThat(plan.blocksOf(piece).get(0).start()).as(piece).isEqualTo(plan.blocksOf("show_" + piece).get(0).end()));
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(75));
    }

    @Test
    void beginsEveryStepAsSoonAsTheShortestPlanAllows() {
        LessonPlan plan = plan(planner.plan(Lessons.pendant().build()));
        assertThat(plan).usingRecursiveComparison().ignoringFields("proof.method").isEqualTo(plan(new ListPlanner().plan(Lessons.pendant().build())));
    }

    @Test
    void answersWithTheListScheduleWhereThereIsNoTimeToSearch() {
        LessonRequest request = Lessons.drawn(11).toBuilder().timeLimit(Duration.ZERO).build();
        assertThat(LessonChecker.faults(request, plan(planner.plan(request)))).isEmpty();
        assertThat(planner.plan(request)).isInstanceOf(Planned.class);
    }
}
