package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.solver.SolverPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Make steps that students take home. It is dipped for forty minutes, a label is tied on in ten, glue on it dries, and all tidy up. */
class AtHomeTest {
    private static final Step.Make LABEL = new Step.Make("label", "Label", StudentTime.ofMinutes(5, 10, 15));

    private static LessonRequest.Builder candles() {
        return LessonRequest.builder().headcount(4).meeting(TEN, TEN.plusHours(1)).step(make("dip", 40)).step(LABEL)
                .step(new Step.Wait("dry", "Dry", Duration.ofMinutes(20))).step(new Step.Together("tidy", "Tidy", Duration.ofMinutes(5)))
                .link("dip", "label").link("label", "dry").link("dry", "tidy");
    }

    private static Step.Make make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    /** The class tidies at once, and is over at 10:45; the label and what dries on it are theirs. */
    @Test
    void goesOnWithoutWhatIsTakenHome() {
        LessonRequest home = AtHome.of(candles().build(), List.of("label"));
        assertThat(home.links()).containsExactlyInAnyOrder(new Link("dip", "label"), new Link("label", "dry"), new Link("dip", "tidy"));
        assertThat(home.steps()).filteredOn(step -> step.id().equals("label")).containsExactly(new Step.Outside("label", "Label", StepKind.HOMEWORK, Duration.ofMinutes(10)));
        for (LessonPlan plan : List.of(Lessons.plan(new ListPlanner().plan(home)), Lessons.plan(new SolverPlanner().plan(home)))) {
            assertThat(LessonChecker.faults(home, plan)).isEmpty();
            assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(45));
            assertThat(plan.blocksOf("label").get(0).lane()).isEqualTo(Lane.OUTSIDE);
            assertThat(plan.blocksOf("label").get(0).start()).isAfterOrEqualTo(TEN.plusHours(1));
        }
    }

    /** A night between: what is shown the second day waits for nobody, what is made then waits for what was done at home. */
    @Test
    void isDoneBetweenMeetingsWhereTheClassGoesOnWithIt() {
        LessonRequest request = candles().meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(1)).step(new Step.Show("look", "Look", Duration.ofMinutes(5))).step(make("box", 10))
                .link("tidy", "look").link("look", "box").build();
        LessonRequest home = AtHome.of(request, List.of("label"));
        assertThat(home.links()).contains(new Link("dry", "box"), new Link("look", "box")).doesNotContain(new Link("dry", "look"));
        LessonPlan plan = Lessons.plan(new SolverPlanner().plan(home));
        assertThat(LessonChecker.faults(home, plan)).isEmpty();
        assertThat(plan.blocksOf("box").get(0).start()).isEqualTo(TEN.plusDays(1));
        assertThat(plan.blocksOf("look").get(0).start()).isEqualTo(TEN.plusMinutes(45));
    }

    /** Who has most to do makes three. */
    @Test
    void takesAsLongAsForWhoHasMostToDo() {
        StudentTime own = new StudentTime(Duration.ofMinutes(5), Duration.ofMinutes(10), Duration.ofMinutes(15), List.of(new StudentTime.Work(1, 1), new StudentTime.Work(3, 1.5)));
        assertThat(AtHome.length(new Step.Make("label", "Label", own))).isEqualTo(Duration.ofMinutes(45));
    }

    /** Nobody has the room's rack at home. */
    @Test
    void leavesEquipmentWhereItIs() {
        LessonRequest rack = candles().tool("rack", 1).step(make("wrap", 5)).step(new Step.Wait("set", "Set", Duration.ofMinutes(20), Optional.empty(), List.of(new ToolUse("rack", 1)), false))
                .link("label", "set").link("set", "wrap").build();
        assertThat(AtHome.of(rack, List.of("label")).links()).contains(new Link("label", "set"), new Link("set", "wrap"));
    }

    @Test
    void passesOverWhatIsNoMakingOrIsDoneBefore() {
        LessonRequest request = candles().build();
        assertThat(AtHome.of(request, List.of("tidy", "dry", "gone"))).isEqualTo(request);
        LessonRequest ahead = candles().preparedAhead(Set.of("dip", "label")).build();
        assertThat(AtHome.of(ahead, List.of("label"))).isEqualTo(ahead);
    }

    @Test
    void asksForNoTimeInTheClassAnyMore() {
        LocalDateTime half = TEN.plusMinutes(30);
        assertThat(AtHome.of(candles().notBefore(Map.of("label", half, "tidy", half)).build(), List.of("label")).notBefore()).isEqualTo(Map.of("tidy", half));
    }
}
