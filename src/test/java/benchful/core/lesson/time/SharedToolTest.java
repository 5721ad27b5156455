package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Students who share a tool: pairs at a press, a table at one pot of glue. */
class SharedToolTest {

    /** Everybody inks for six minutes, so many together at one press. */
    private static LessonRequest printing(int students, int presses, int together) {
        return LessonRequest.builder().headcount(students).meeting(Lessons.TEN, Lessons.TEN.plusHours(3)).tool("press", presses)
                .step(new Step.Make("print", "Print", StudentTime.ofMinutes(6, 6, 6), List.of(new ToolUse("press", 1, together)), Help.NONE, 1, true)).build();
    }

    private static long minutes(LessonRequest request) {
        LessonPlan plan = Lessons.plan(new SolverPlanner().plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(ClassSimulation.of(request, plan).promised()).as("played").isEqualTo(plan.finish());
        return plan.length().toMinutes();
    }

    @Test
    void takeTurnsByPairs() {
        assertThat(minutes(printing(12, 2, 1))).isEqualTo(6 * 6);
        assertThat(minutes(printing(12, 2, 2))).isEqualTo(3 * 6);
        assertThat(minutes(printing(12, 2, 6))).isEqualTo(6);
        assertThat(minutes(printing(7, 1, 2))).as("the last is alone").isEqualTo(4 * 6);
    }

    @Test
    void saySo() {
        LessonPlan plan = Lessons.plan(new SolverPlanner().plan(printing(12, 2, 2)));
        assertThat(plan.blocksOf("print").get(0).reasons()).extracting(reason -> reason.sentence().toString()).contains("2 × press for 12 students: 3 turns of up to 4 add 12 min.");
        assertThat(plan.blocksOf("print").get(0).uses()).containsExactly(new ToolUse("press", 2));
    }

    @Test
    void keepAsManyBusyAsTheyAreGroups() {
        ToolUse pairs = new ToolUse("press", 3, 2);
        assertThat(List.of(pairs.of(1), pairs.of(2), pairs.of(5))).containsExactly(3, 3, 9);
        assertThat(List.of(pairs.atOnce(2), pairs.atOnce(3), pairs.atOnce(8))).containsExactly(0, 2, 4);
        assertThatIllegalArgumentException().isThrownBy(() -> new ToolUse("press", 1, 9)).withMessageContaining("at most 8");
        assertThatIllegalArgumentException().isThrownBy(() -> new ToolUse("press", 1, 0));
    }
}
