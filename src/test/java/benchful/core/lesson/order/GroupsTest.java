package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Risk;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void breaksNoConstraintOfADrawnLessonInGroups(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        LessonRequest request = drawn.toBuilder().headcount(drawn.headcount() + 3).groups(2 + (int) seed % 2).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(LessonChecker.faults(request, plan(new ListPlanner().plan(request)))).isEmpty();
        assertThat(planner.plan(request)).isEqualTo(planner.plan(request));
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void takesNoLongerInGroupsWithOneMoreTool(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        LessonRequest request = drawn.toBuilder().headcount(drawn.headcount() + 3).groups(2 + (int) seed % 2).build();
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
