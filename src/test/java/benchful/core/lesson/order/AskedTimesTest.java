package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Risk;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Times that a tutor asks for: kept where they can be, missed by as little as can be where not. */
class AskedTimesTest {

    static Stream<LessonPlanner> planners() {
        return Stream.of(new SolverPlanner(), new ListPlanner());
    }

    /** Thirty minutes of cutting, twenty of folding and ten of talk, in any order. */
    private static LessonRequest.Builder free() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2))
                .step(new Step.Make("cut", "Cut", StudentTime.ofMinutes(30, 30, 30)))
                .step(new Step.Make("fold", "Fold", StudentTime.ofMinutes(20, 20, 20)))
                .step(new Step.Show("talk", "A guest talks", Duration.ofMinutes(10)));
    }

    private static Map<String, LocalDateTime> at(String step, int minutes) {
        return Map.of(step, TEN.plusMinutes(minutes));
    }

    private static List<String> starts(LessonPlan plan) {
        return plan.blocks().stream().map(block -> block.step() + " " + Duration.between(TEN, block.start()).toMinutes()).toList();
    }

    @ParameterizedTest
    @MethodSource("planners")
    void beginsThenAndFillsTheTimeBefore(LessonPlanner planner) {
        LessonRequest request = free().notBefore(at("talk", 25)).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.blocksOf("talk").get(0).start()).isEqualTo(TEN.plusMinutes(25));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
    }

    @Test
    void findsTheOrderThatEndsSoonestAroundIt() {
        assertThat(starts(plan(new SolverPlanner().plan(free().notBefore(at("talk", 25)).build())))).containsExactly("fold 0", "talk 25", "cut 35");
        assertThat(starts(plan(new SolverPlanner().plan(free().notBefore(at("talk", 50)).build())))).element(2).isEqualTo("talk 50");
        assertThat(plan(new SolverPlanner().plan(free().notBefore(at("talk", 25)).build())).finish()).isEqualTo(TEN.plusMinutes(65));
    }

    @ParameterizedTest
    @MethodSource("planners")
    void bringsForwardWhatMustComeBefore(LessonPlanner planner) {
        LessonPlan plan = plan(planner.plan(free().link("fold", "talk").notBefore(at("talk", 20)).build()));
        assertThat(starts(plan)).containsExactly("fold 0", "talk 20", "cut 30");
        assertThat(why(plan)).isEqualTo("Begins at the time you asked for.");
    }

    @ParameterizedTest
    @MethodSource("planners")
    void missesItByAsLittleAsCanBe(LessonPlanner planner) {
        LessonPlan plan = plan(planner.plan(free().link("cut", "talk").notBefore(at("talk", 25)).build()));
        assertThat(starts(plan)).containsExactly("cut 0", "talk 30", "fold 40");
        assertThat(why(plan)).isEqualTo("You asked for 10:25. Follows \"Cut\".");
    }

    @Test
    void waitsForTheEndOfABreak() {
        LessonPlan plan = plan(new SolverPlanner().plan(free().pause("tea", TEN.plusMinutes(20), TEN.plusMinutes(30)).notBefore(at("talk", 25)).build()));
        assertThat(starts(plan)).containsExactly("fold 0", "talk 30", "cut 40");
        assertThat(why(plan)).isEqualTo("You asked for 10:25. Begins after the break.");
    }

    /** Nobody of any class begins sooner, however quick; whoever is slow begins later. */
    @Test
    void isKeptByEverySimulatedClass() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).headcount(5)
                .step(new Step.Make("fold", "Fold", StudentTime.ofMinutes(10, 20, 40))).step(new Step.Show("talk", "A guest talks", Duration.ofMinutes(10)))
                .step(new Step.Make("cut", "Cut", StudentTime.ofMinutes(10, 10, 10))).link("fold", "talk").link("talk", "cut").build();
        LessonRequest asked = request.toBuilder().notBefore(at("talk", 60)).build();
        Risk risk = ClassSimulation.of(asked, plan(new SolverPlanner().plan(asked)));
        assertThat(risk.finishes().get(0)).isEqualTo(TEN.plusMinutes(80));
        assertThat(ClassSimulation.of(request, plan(new SolverPlanner().plan(request))).finishes().get(0)).isBefore(TEN.plusMinutes(60));
    }

    private static String why(LessonPlan plan) {
        return plan.blocksOf("talk").get(0).reasons().stream().filter(reason -> reason.subject() == Reason.Subject.START).findFirst().orElseThrow().sentence().toString();
    }
}
