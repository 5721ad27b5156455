package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Risk;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroupsTest {

    private final SolverPlanner planner = new SolverPlanner();

    private static Step.Make station(String id, Help help) {
        return new Step.Make(id, "Station " + id, StudentTime.ofMinutes(20, 20, 20), List.of(new ToolUse(id, 1)), help, 1, true);
    }

    /** Eight students, two stations of four places, twenty minutes each. */
    private static LessonRequest.Builder stations(Help help) {
        return LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(2)).tool("saw", 4).tool("file", 4)
                .step(new Step.Show("show", "Show both", Duration.ofMinutes(10)))
                .step(station("saw", help)).step(station("file", help))
                .step(new Step.Together("tidy", "Tidy up", Duration.ofMinutes(5)))
                .link("show", "saw").link("show", "file").link("saw", "tidy").link("file", "tidy");
    }

    @Test
    void rotatesGroupsThroughStationsWhenToolsAreScarce() {
        LessonPlan whole = plan(planner.plan(stations(Help.NONE).build()));
        LessonPlan rotating = plan(planner.plan(stations(Help.NONE).groups(2).build()));
        assertThat(whole.length()).isEqualTo(Duration.ofMinutes(10 + 40 + 40 + 5));
        assertThat(rotating.length()).isEqualTo(Duration.ofMinutes(10 + 20 + 20 + 5));
        assertThat(rotating.proof().isShortest()).isTrue();
        assertThat(rotating.blocksOf("saw")).extracting(Block::group).containsExactlyInAnyOrder(1, 2);
        assertThat(rotating.idle()).isZero();
    }

    @Test
    void gathersAllGroupsForWhatIsShown() {
        LessonPlan plan = plan(planner.plan(stations(Help.NONE).groups(2).build()));
        assertThat(plan.blocksOf("show")).extracting(Block::group).containsExactly(0);
        assertThat(plan.blocksOf("tidy").get(0).start()).isEqualTo(TEN.plusMinutes(50));
    }

    /** Four saws, four pins to set at, and a demonstration in between that only four can watch, if so many are said. */
    private static LessonRequest.Builder inTurns(int watchers) {
        return LessonRequest.builder().headcount(8).groups(2).meeting(TEN, TEN.plusHours(2)).tool("saw", 4).tool("pin", 4)
                .step(station("saw", Help.NONE)).step(show("show", watchers)).step(station("pin", Help.NONE))
                .link("saw", "show").link(new Link("show", "pin", Duration.ZERO, Optional.of(Duration.ofMinutes(20))));
    }

    private static Step show(String id, int watchers) {
        return new Step.Show(id, "Show " + id, Duration.ofMinutes(10), Duration.ZERO, Duration.ZERO, List.of(), watchers);
    }

    private static List<String> starts(LessonPlan plan) {
        return plan.blocks().stream().map(block -> "%s/%d %d-%d".formatted(block.step(), block.group(), minutes(block.start()), minutes(block.end()))).toList();
    }

    private static long minutes(LocalDateTime time) {
        return Duration.between(TEN, time).toMinutes();
    }

    /**
     * Each group saws for 20 minutes, the second when the first frees the saws at 20. Shown to all it begins when the second has sawn, at 40, and the
     * pins take 20 minutes for each group from 50 on: 90. Shown to each, the first group watches at 20 while the second saws, sets from 30 to
     * 50, and the second watches at 40 and finds the pins free at 50: 70, and no shorter, as saws, showing and pins take the second so long.
     */
    @ParameterizedTest
    @MethodSource("planners")
    void showsToEachGroupInTurnWhileTheOthersGoOn(LessonPlanner each) {
        LessonRequest request = inTurns(4).build();
        LessonPlan plan = plan(each.plan(request));
        assertThat(starts(plan)).containsExactly("saw/1 0-20", "show/1 20-30", "saw/2 20-40", "pin/1 30-50", "show/2 40-50", "pin/2 50-70");
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(plan.proof().isShortest()).isTrue();
        LessonPlan toAll = plan(each.plan(inTurns(0).build()));
        assertThat(starts(toAll)).contains("show/0 40-50").hasSize(5);
        assertThat(toAll.length()).isEqualTo(Duration.ofMinutes(90));
    }

    /** Each group makes it within as long after it was shown as is stated; shown to all, the second could not. */
    @Test
    void keepsTheTimeBetweenWhatIsShownAndMadeForEachGroup() {
        List<Link> soon = List.of(new Link("saw", "show"), new Link("show", "pin", Duration.ZERO, Optional.of(Duration.ofMinutes(5))));
        LessonPlan plan = plan(planner.plan(inTurns(4).links(soon).build()));
        assertThat(plan.length()).isEqualTo(Duration.ofMinutes(70));
        assertThat(LessonChecker.faults(inTurns(4).links(soon).build(), plan)).isEmpty();
        assertThat(planner.plan(inTurns(0).links(soon).build())).isInstanceOf(Contradiction.class);
    }

    static List<LessonPlanner> planners() {
        return List.of(new ListPlanner(), new SolverPlanner());
    }

    @Test
    void showsToAllWhereAllCanWatch() {
        LessonRequest request = stations(Help.NONE).groups(2).steps(List.of(show("show", 8), station("saw", Help.NONE), station("file", Help.NONE), show("tidy", 0))).build();
        assertThat(starts(plan(planner.plan(request)))).containsExactly("show/0 0-10", "saw/1 10-30", "file/2 10-30", "saw/2 30-50", "file/1 30-50", "tidy/0 50-60");
    }

    /** The tutor shows one thing at a time: to two groups of four, ten minutes each. */
    @Test
    void showsToOneGroupAfterTheOther() {
        LessonRequest request = LessonRequest.builder().headcount(8).groups(2).meeting(TEN, TEN.plusHours(2)).step(show("show", 4)).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(starts(plan)).containsExactly("show/1 0-10", "show/2 10-20");
        assertThat(plan.blocksOf("show").get(1).reasons()).extracting(reason -> reason.sentence().toString()).containsExactly("Shown to each group by itself, so that at most 4 watch at once.", "Begins when \"Show show (group 1)\" frees the tutor.");
        assertThat(plan.tutor().peak()).isEqualTo(1);
    }

    /** Twelve, six of whom can watch: twice ten minutes for all who work together, then half an hour; once for each group of six; twice for each of three groups of four, where two can watch. */
    @ParameterizedTest
    @CsvSource({"1, 6, show/0 0-20", "2, 6, show/1 0-10 show/2 10-20", "3, 2, show/1 0-20 show/2 20-40 show/3 40-60"})
    void showsAsOftenAsAllHaveSeenIt(int groups, int watchers, String expected) {
        LessonRequest request = LessonRequest.builder().headcount(12).groups(groups).meeting(TEN, TEN.plusHours(2)).step(show("show", watchers))
                .step(new Step.Make("make", "Make", StudentTime.ofMinutes(30, 30, 30))).link("show", "make").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(String.join(" ", starts(plan).stream().filter(block -> block.startsWith("show")).toList())).isEqualTo(expected);
        assertThat(plan.length()).isEqualTo(Duration.ofMinutes(30 + List.of(20, 20, 60).get(groups - 1)));
        assertThat(plan.blocksOf("show").get(0).reasons().get(0).sentence().toString()).isEqualTo(List.of("Shown 2 times, so that at most 6 watch at once.",
                "Shown to each group by itself, so that at most 6 watch at once.", "Shown to each group by itself, 2 times, so that at most 2 watch at once.").get(groups - 1));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(plan.proof().isShortest()).isTrue();
    }

    /** Who stays beside students at a torch, twenty minutes each, shows nothing meanwhile; with a helper the one at the torch has all of them. */
    @ParameterizedTest
    @CsvSource({"0, 60", "1, 40"})
    void showsNothingWhileBesideAStudent(int helpers, int minutes) {
        LessonRequest request = LessonRequest.builder().headcount(2).helpers(helpers).groups(2).meeting(TEN, TEN.plusHours(2)).step(show("show", 1))
                .step(new Step.Make("torch", "Torch", StudentTime.ofMinutes(20, 20, 20), List.of(), Help.NONE, 1, true, true)).link("show", "torch").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.length()).isEqualTo(Duration.ofMinutes(minutes));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(plan.proof().isShortest()).isTrue();
    }

    @Test
    void keepsTheTutorsPeakLoadLowWhereThatCostsNoTime() {
        LessonRequest request = LessonRequest.builder().headcount(4).groups(2).meeting(TEN, TEN.plusHours(2))
                .step(new Step.Make("hard", "Hard", StudentTime.ofMinutes(20, 20, 20), List.of(), new Help(6, 4), 1, true))
                .step(new Step.Make("easy", "Easy", StudentTime.ofMinutes(30, 30, 30)))
                .build();
        LessonPlan plan = plan(planner.plan(request));
        List<Block> hard = plan.blocksOf("hard");
        assertThat(hard.get(1).start()).isAfterOrEqualTo(hard.get(0).end());
    }

    /** Of every other lesson some demonstrations can be watched by a few only. */
    private static LessonRequest inGroups(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        Random random = new Random(seed);
        List<Step> steps = drawn.steps().stream().map(step -> step instanceof Step.Show show && random.nextBoolean()
                ? new Step.Show(show.id(), show.title(), show.length(), show.perStudent(), show.over(), show.uses(), random.nextInt(6), random.nextInt(3) == 0) : step).toList();
        return drawn.toBuilder().headcount(drawn.headcount() + 3).groups(2 + (int) seed % 2).steps(seed % 2 == 0 ? steps : drawn.steps()).build();
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void breaksNoConstraintOfADrawnLessonInGroups(long seed) {
        LessonRequest request = inGroups(seed);
        LessonPlan plan = plan(planner.plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(LessonChecker.faults(request, plan(new ListPlanner().plan(request)))).isEmpty();
        assertThat(planner.plan(request)).isEqualTo(planner.plan(request));
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void takesNoLongerInGroupsWithOneMoreTool(long seed) {
        LessonRequest request = inGroups(seed);
        LessonPlan plan = plan(planner.plan(request));
        LessonPlan more = plan(planner.plan(request.toBuilder().tool("pliers", 1).build()));
        assertThat(more.proof().bound()).isBeforeOrEqualTo(plan.finish());
        assertThat(!more.proof().isShortest() || !more.finish().isAfter(plan.finish())).isTrue();
    }

    @Test
    void simulatesGroupsThatShareTheRoom() {
        for (Pacing pacing : Pacing.values()) {
            LessonRequest request = stations(Help.NONE).groups(2).pacing(pacing).replications(20).build();
            Risk risk = ClassSimulation.of(request, plan(planner.plan(request)));
            assertThat(risk.late()).isEqualTo(TEN.plusMinutes(55));
        }
    }
}
