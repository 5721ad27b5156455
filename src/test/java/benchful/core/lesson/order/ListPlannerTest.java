package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ListPlannerTest {

    private final LessonPlanner planner = new ListPlanner();

    @Test
    void fillsAWaitWithOtherWork() {
        LessonPlan plan = plan(planner.plan(Lessons.pendant().build()));
        Block cure = plan.blocksOf("cure").get(0);
        Block cord = plan.blocksOf("cord").get(0);
        assertThat(cord.start()).isEqualTo(cure.start());
        assertThat(plan.blocksOf("hang").get(0).start()).isEqualTo(cure.end());
        assertThat(plan.fits()).isTrue();
        assertThat(plan.idle()).isEqualTo(Duration.between(cord.end(), cure.end()));
    }

    @Test
    void interruptsMakingButNotShowingForABreak() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(3))
                .pause("tea", TEN.plusMinutes(20), TEN.plusMinutes(30))
                .step(new Step.Make("cut", "Cut", StudentTime.ofMinutes(25, 25, 25)))
                .step(new Step.Show("file", "Show filing", Duration.ofMinutes(15)))
                .link("cut", "file").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.blocksOf("cut").get(0).segments()).containsExactly(
                new Segment(TEN, TEN.plusMinutes(20)), new Segment(TEN.plusMinutes(30), TEN.plusMinutes(35)));
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(50));
        assertThat(plan.proof().isShortest()).isTrue();
    }

    @Test
    void runsAWaitAcrossTheDaysBetweenMeetings() {
        LessonRequest request = LessonRequest.builder()
                .meeting(TEN, TEN.plusHours(1)).meeting(TEN.plusDays(2), TEN.plusDays(2).plusHours(1))
                .step(new Step.Make("pour", "Pour", StudentTime.ofMinutes(30, 30, 30)))
                .step(new Step.Wait("cure", "Cure", Duration.ofHours(24)))
                .step(new Step.Make("sand", "Sand", StudentTime.ofMinutes(40, 40, 40)))
                .link("pour", "cure").link("cure", "sand").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.blocksOf("sand").get(0).start()).isEqualTo(TEN.plusDays(2));
        assertThat(plan.meetings()).extracting(meeting -> meeting.steps()).containsExactly(List.of("pour", "cure"), List.of("sand"));
        assertThat(plan.spare()).isEqualTo(Duration.ofMinutes(20));
    }

    @Test
    void letsAWaitBehindAWaitBeginBetweenMeetings() {
        LessonRequest.Builder request = LessonRequest.builder()
                .meeting(TEN, TEN.plusHours(1)).meeting(TEN.plusDays(7), TEN.plusDays(7).plusHours(1))
                .step(new Step.Make("pour", "Pour", StudentTime.ofMinutes(30, 30, 30)))
                .step(new Step.Wait("set", "Set", Duration.ofHours(24)))
                .step(new Step.Wait("cure", "Cure", Duration.ofHours(24)))
                .step(new Step.Make("sand", "Sand", StudentTime.ofMinutes(40, 40, 40)))
                .link("pour", "set").link("set", "cure").link("cure", "sand");
        LessonPlan plan = plan(planner.plan(request.build()));
        assertThat(plan.blocksOf("cure").get(0).start()).isEqualTo(TEN.plusMinutes(30).plusDays(1));
        assertThat(plan.blocksOf("sand").get(0).start()).isEqualTo(TEN.plusDays(7));
        assertThat(plan.meetings().get(0).steps()).containsExactly("pour", "set", "cure");
        assertThat(plan.fits()).isTrue();

        LessonPlan inAnOven = plan(planner.plan(request.tool("oven", 1).steps(request.build().steps().stream().map(step -> step.id().equals("cure")
                ? new Step.Wait("cure", "Cure", Duration.ofHours(24), Optional.empty(), List.of(new ToolUse("oven", 1)), false) : step).toList()).build()));
        assertThat(inAnOven.blocksOf("cure").get(0).start()).as("somebody puts it into the oven").isEqualTo(TEN.plusDays(7));
    }

    @Test
    void takesTheDryingAndTheDemonstrationOfWhatIsPreparedOutOfTheClass() {
        LessonRequest.Builder request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).headcount(4)
                .step(new Step.Show("show_cut", "Show cutting", Duration.ofMinutes(10)))
                .step(new Step.Make("cut", "Cut and glue", StudentTime.ofMinutes(20, 20, 20)))
                .step(new Step.Wait("dry", "Dry", Duration.ofMinutes(20)))
                .step(new Step.Show("show_sew", "Show sewing", Duration.ofMinutes(10)))
                .step(new Step.Make("sew", "Sew", StudentTime.ofMinutes(30, 30, 30)))
                .link("show_cut", "cut").link("cut", "dry").link("dry", "sew").link("show_sew", "sew");
        LessonPlan plan = plan(planner.plan(request.preparedAhead(Set.of("cut")).build()));
        assertThat(plan.blocks()).extracting(Block::step).containsExactly("show_sew", "sew");
        assertThat(plan.preparation().items()).extracting(Preparation.Item::step).containsExactly("show_cut", "cut", "dry");
        assertThat(LessonChecker.faults(request.build(), plan)).isEmpty();

        LessonPlan bothShown = plan(planner.plan(request.link("show_cut", "sew").build()));
        assertThat(bothShown.blocks()).as("it shows what is made in the class, too").extracting(Block::step).contains("show_cut").doesNotContain("cut", "dry");
    }

    @Test
    void keepsWhatMustBeUsedInTimeInTheClass() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2))
                .step(new Step.Make("glue", "Spread the glue", StudentTime.ofMinutes(5, 5, 5)))
                .step(new Step.Wait("tack", "Grows tacky", Duration.ofMinutes(10), Optional.of(Duration.ofMinutes(20)), List.of(), false))
                .step(new Step.Make("press", "Press", StudentTime.ofMinutes(5, 5, 5)))
                .link("glue", "tack").link("tack", "press").preparedAhead(Set.of("glue")).build();
        assertThat(plan(planner.plan(request)).blocks()).extracting(Block::step).contains("tack");
    }

    @Test
    void preparesMoreForMoreStudents() {
        LessonRequest.Builder request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1))
                .step(new Step.Ahead("kits", "Pack the kits", Duration.ofMinutes(10), Duration.ofSeconds(90)));
        assertThat(plan(planner.plan(request.headcount(3).build())).preparation().total()).isEqualTo(Duration.ofSeconds(870));
        Preparation thirty = plan(planner.plan(request.headcount(30).build())).preparation();
        assertThat(thirty.total()).isEqualTo(Duration.ofMinutes(55));
        assertThat(thirty.items().get(0).reason().sentence()).hasToString("Done by the tutor before the class: 10 min, and 90 s for each of 30.");
    }

    @Test
    void leavesAWaitThatEndsAtHomeOutOfTheFinish() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1))
                .step(new Step.Make("glue", "Glue", StudentTime.ofMinutes(10, 10, 10)))
                .step(new Step.Wait("cure", "Cure", Duration.ofHours(24), Optional.empty(), List.of(), true))
                .link("glue", "cure").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(10));
        assertThat(plan.blocksOf("cure").get(0).lane()).isEqualTo(Lane.HOME);
    }

    @Test
    void holdsAStepBackSoThatAGreatestGapIsKept() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).tool("kiln", 1)
                .step(new Step.Wait("bisque", "Fire the first load", Duration.ofMinutes(60), Optional.empty(),
                        List.of(new ToolUse("kiln", 1)), false))
                .step(new Step.Make("paint", "Paint", StudentTime.ofMinutes(10, 10, 10)))
                .step(new Step.Wait("glaze", "Fire the second load", Duration.ofMinutes(30), Optional.empty(),
                        List.of(new ToolUse("kiln", 1)), false))
                .link(new Link("paint", "glaze", Duration.ZERO, Optional.of(Duration.ofMinutes(5))))
                .link(new Link("bisque", "glaze")).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.blocksOf("paint").get(0).end()).isEqualTo(TEN.plusMinutes(55));
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(90));
    }

    @Test
    void startsTheNextStepInTimeAfterAWaitWithAGreatestLength() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2))
                .step(new Step.Make("glue", "Spread the glue", StudentTime.ofMinutes(10, 10, 10)))
                .step(new Step.Wait("open", "Let it tack", Duration.ofMinutes(10), Optional.of(Duration.ofMinutes(30)), List.of(), false))
                .step(new Step.Make("press", "Press together", StudentTime.ofMinutes(5, 5, 5)))
                .step(new Step.Make("dye", "Dye the edges", StudentTime.ofMinutes(60, 60, 60)))
                .link("glue", "open").link("open", "press").build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(LessonChecker.faults(request, plan)).isEmpty();
        assertThat(Duration.between(plan.blocksOf("glue").get(0).end(), plan.blocksOf("press").get(0).start()))
                .isBetween(Duration.ofMinutes(10), Duration.ofMinutes(30));
    }

    @Test
    void movesAStepAheadAndKeepsTheOrderOfWhatIsLeft() {
        LessonRequest request = Lessons.pendant().preparedAhead(Set.of("pour", "cure")).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.blocks()).extracting(Block::step).containsExactly("welcome", "cord", "hang");
        assertThat(plan.preparation().total()).isEqualTo(Duration.ofSeconds(8 * 200));
        assertThat(plan.blocksOf("hang").get(0).start()).isAfterOrEqualTo(plan.blocksOf("cord").get(0).end());
    }

    @Test
    void saysByHowMuchAPlanRunsOver() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusMinutes(30))
                .step(new Step.Show("talk", "Talk", Duration.ofMinutes(50))).build();
        LessonPlan plan = plan(planner.plan(request));
        assertThat(plan.fits()).isFalse();
        assertThat(plan.over()).isEqualTo(Duration.ofMinutes(20));
    }

    @Test
    void marksTheChainThatDecidesTheFinish() {
        LessonPlan plan = plan(planner.plan(Lessons.pendant().build()));
        assertThat(plan.criticalChain()).extracting(Block::step).containsExactly("welcome", "show", "pour", "cure", "hang");
        assertThat(plan.blocksOf("cord").get(0).slack()).isEqualTo(plan.idle().truncatedTo(ChronoUnit.MINUTES));
    }

    @Test
    void saysWhyAStepBeginsWhenItDoes() {
        LessonPlan plan = plan(planner.plan(Lessons.pendant().build()));
        assertThat(plan.blocksOf("hang").get(0).reasons()).extracting(reason -> reason.sentence().toString())
                .contains("Begins as soon as \"Cure under the lamp\" is over.");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void breaksNoConstraintOfADrawnLesson(long seed) {
        for (long drawn = seed * 100; drawn < seed * 100 + 20; drawn++) {
            LessonRequest request = Lessons.drawn(drawn);
            LessonPlan plan = plan(planner.plan(request));
            assertThat(LessonChecker.faults(request, plan)).as("lesson drawn from %d", drawn).isEmpty();
            assertThat(planner.plan(request)).isEqualTo(planner.plan(request));
        }
    }
}
