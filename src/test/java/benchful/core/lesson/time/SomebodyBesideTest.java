package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Progress;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.advice.Advisor;
import benchful.core.lesson.advice.Change;
import benchful.core.lesson.advice.Costs;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A step at which the tutor or a helper stays beside each student: a torch. */
class SomebodyBesideTest {

    /** Filing takes everybody ten minutes, soldering five with the tutor beside, at one of three torches. */
    private static LessonRequest torch(int students, int helpers, int torches) {
        return LessonRequest.builder().headcount(students).helpers(helpers).meeting(Lessons.TEN, Lessons.TEN.plusHours(2)).tool("torch", torches)
                .step(new Step.Make("file", "File", StudentTime.ofMinutes(10, 10, 10)))
                .step(new Step.Make("solder", "Solder", StudentTime.ofMinutes(5, 5, 5), List.of(new ToolUse("torch", 1)), Help.NONE, 1, true, true))
                .link("file", "solder").build();
    }

    private static long minutes(LessonRequest request) {
        LessonPlan plan = Lessons.plan(new SolverPlanner().plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        return plan.length().toMinutes();
    }

    @Test
    void takesOneStudentAfterTheOtherForEachPersonWhoCanStay() {
        assertThat(minutes(torch(6, 0, 3))).isEqualTo(10 + 6 * 5);
        assertThat(minutes(torch(6, 1, 3))).isEqualTo(10 + 3 * 5);
        assertThat(minutes(torch(6, 5, 3))).as("three torches").isEqualTo(10 + 2 * 5);
        assertThat(minutes(torch(6, 1, 1))).as("one torch").isEqualTo(10 + 6 * 5);
    }

    @Test
    void saysSo() {
        LessonPlan plan = Lessons.plan(new SolverPlanner().plan(torch(6, 0, 3)));
        assertThat(plan.blocksOf("solder").get(0).reasons()).extracting(reason -> reason.sentence().toString()).contains("1 × tutor or helper for 6 students: 6 turns of up to 1 add 25 min.");
        assertThat(plan.blocksOf("solder").get(0).tutorShare()).isEqualTo(1);
    }

    /** Exact times leave nothing to chance; the simulation, which plays each student, comes to the same. */
    @Test
    void isPlayedSo() {
        for (int helpers = 0; helpers < 3; helpers++) {
            LessonRequest request = torch(6, helpers, 3);
            assertThat(ClassSimulation.of(request, Lessons.plan(new SolverPlanner().plan(request))).promised()).isEqualTo(Lessons.TEN.plusMinutes(minutes(request)));
        }
    }

    @Test
    void countsTheHelpersAnewWhereTheyChange() {
        LessonRequest more = torch(6, 0, 3).toBuilder().helpers(2).tool("torch", 1).build();
        assertThat(more.room()).contains(new RoomTool("tutor or helper", 3));
        assertThat(more.inRoom("tutor or helper")).isEqualTo(3);
        assertThat(more.toBuilder().steps(List.of(new Step.Show("look", "Look", Duration.ofMinutes(5)))).links(List.of()).build().room()).extracting(RoomTool::name).doesNotContain("tutor or helper");
    }

    /** More of what stands in the way: people, not torches. */
    @Test
    void isHelpedByAHelperAndNotByTools() {
        LessonRequest late = torch(8, 0, 3).toBuilder().meetings(List.of(new Meeting(Lessons.TEN, Lessons.TEN.plusMinutes(35)))).build();
        List<Change> offered = new Advisor(new SolverPlanner(), Costs.UNKNOWN).advise(late, List.of(), Progress.NONE).orElseThrow().suggestions().stream().flatMap(suggestion -> suggestion.changes().stream()).toList();
        assertThat(offered).hasAtLeastOneElementOfType(Change.Helper.class);
        assertThat(offered).noneMatch(Change.MoreTools.class::isInstance);
    }
}
