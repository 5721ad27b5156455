package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Cut for 20 minutes and let it dry for 40 (or longer), sew for 30, and look at both for 7. Starts in this order. */
class SequenceTest {

    private static LessonRequest.Builder lesson(int drying) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(4)).tool("rack", 3).tool("kiln", 1)
                .step(make("cut", 20)).step(dry(drying, false)).step(make("sew", 30)).step(new Step.Show("look", "look", Duration.ofMinutes(7)))
                .link("cut", "dry").link("dry", "look").link("sew", "look");
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step dry(int minutes, boolean endsAtHome) {
        return new Step.Wait("dry", "dry", Duration.ofMinutes(minutes), Optional.empty(), List.of(new ToolUse("rack", 2)), endsAtHome);
    }

    private static Model model(LessonRequest.Builder lesson) {
        return new ModelBuilder(lesson.build()).build();
    }

    @Test
    void movesAllAheadInTheSameOrder() {
        assertThat(new Sequence(model(lesson(40)), new long[] {0, 25, 30, 70}).earliest()).containsExactly(0, 20, 20, 60);
        assertThat(new Sequence(model(lesson(40)), new long[] {35, 60, 2, 110}).earliest()).as("sewn first").containsExactly(30, 50, 0, 90);
    }

    @Test
    void movesAllBackUnderTheSameFinish() {
        assertThat(new Sequence(model(lesson(40)), new long[] {0, 25, 30, 70}).latest()).containsExactly(10, 30, 40, 70);
        assertThat(new Sequence(model(lesson(40)), new long[] {30, 50, 0, 90}).latest()).containsExactly(30, 50, 0, 90);
    }

    @Test
    void placesTheLongestChainFirst() {
        assertThat(new SerialSchedule(model(lesson(40))).starts()).hasValueSatisfying(starts -> assertThat(starts).containsExactly(0, 20, 20, 60));
        LessonRequest.Builder sewn = LessonRequest.builder().meeting(TEN, TEN.plusHours(4)).step(make("sew", 31)).step(make("cut", 20)).step(new Step.Wait("dry", "dry", Duration.ofMinutes(40)))
                .link("cut", "dry");
        assertThat(new SerialSchedule(model(sewn)).starts()).hasValueSatisfying(starts -> assertThat(starts).containsExactly(20, 0, 20));
        LessonRequest.Builder equal = LessonRequest.builder().meeting(TEN, TEN.plusHours(4)).step(make("sew", 31)).step(make("cut", 31)).step(make("fold", 32));
        assertThat(new SerialSchedule(model(equal)).starts()).as("of equal ones the first").hasValueSatisfying(starts -> assertThat(starts).containsExactly(32, 63, 0));
    }

    /** Both have to be in the one kiln as soon as the talk is over. */
    @Test
    void findsNothingWhereTwoNeedTheKilnAtOnce() {
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(4)).tool("kiln", 1).step(new Step.Show("talk", "talk", Duration.ofMinutes(10)));
        for (String load : List.of("bowls", "tiles")) {
            lesson.step(new Step.Wait(load, load, Duration.ofMinutes(20), Optional.empty(), List.of(new ToolUse("kiln", 1)), false))
                    .link(new Link("talk", load, Duration.ZERO, Optional.of(Duration.ofMinutes(19))));
        }
        assertThat(new SerialSchedule(model(lesson)).starts()).isEmpty();
        assertThat(new ListPlanner().plan(lesson.build())).isNotInstanceOf(Planned.class);
    }

    @Test
    void writesWhatMayBeginLater() {
        LessonPlan plan = plan(new ListPlanner().plan(lesson(40).build()));
        assertThat(plan.blocks()).extracting(Block::step).containsExactly("cut", "sew", "dry", "look");
        assertThat(plan.blocks()).extracting(block -> block.slack().toMinutes()).containsExactly(0L, 10L, 0L, 0L);
        assertThat(plan.criticalChain()).extracting(Block::step).containsExactly("cut", "dry", "look");
        assertThat(plan.blocksOf("dry").get(0).uses()).containsExactly(new ToolUse("rack", 2));
        assertThat(plan.blocksOf("cut").get(0).uses()).isEmpty();
        assertThat(plan.proof().isShortest()).isTrue();
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(67));
    }

    /** Sewn from 90 on it is just done when all has dried at 120; of the 70 minutes till then tea takes 5. */
    @Test
    void countsWorkingTimeOnlyWhereTheClassWorks() {
        LessonRequest.Builder tea = lesson(100).pause("Tea", TEN.plusMinutes(52), TEN.plusMinutes(57));
        LessonPlan plan = plan(new ListPlanner().plan(tea.build()));
        assertThat(plan.blocksOf("sew").get(0).slack()).isEqualTo(Duration.ofMinutes(65));
        assertThat(plan.idle()).as("from 50 to 120").isEqualTo(Duration.ofMinutes(65));
        LessonRequest.Builder sewing = lesson(100).step(make("iron", 90)).link("sew", "iron").link("iron", "look");
        assertThat(plan(new ListPlanner().plan(sewing.build())).blocksOf("dry").get(0).slack()).as("clock time till 140").isEqualTo(Duration.ofMinutes(20));
    }

    /** Nothing can be late for what dries at home. */
    @Test
    void hasNoSlackToTellOfWhatEndsAtHome() {
        LessonRequest home = LessonRequest.builder().meeting(TEN, TEN.plusHours(4)).tool("rack", 3).step(make("cut", 20)).step(dry(600, true)).link("cut", "dry").build();
        LessonPlan plan = plan(new ListPlanner().plan(home));
        assertThat(plan.finish()).isEqualTo(TEN.plusMinutes(20));
        assertThat(plan.criticalChain()).extracting(Block::step).containsExactly("cut");
    }

    /** Washed at home when all is made, whenever that is. */
    @Test
    void hasNoSlackBehindTheClass() {
        LessonRequest wash = LessonRequest.builder().meeting(TEN, TEN.plusHours(1)).step(make("cut", 20)).step(new Step.Outside("wash", "wash", StepKind.HOMEWORK, Duration.ofMinutes(7)))
                .step(new Step.Outside("iron", "iron", StepKind.HOMEWORK, Duration.ofMinutes(9))).link("cut", "wash").link("cut", "iron").build();
        LessonPlan plan = plan(new ListPlanner().plan(wash));
        assertThat(plan.blocks()).extracting(block -> block.slack().toMinutes()).containsExactly(0L, 0L, 0L);
        assertThat(plan.criticalChain()).extracting(Block::step).containsExactly("cut");
    }

    /** Of two groups only one can be helped at a time. */
    @Test
    void keepsTheOrderOfWhatTheTutorHelpsWith() {
        assertThat(new Sequence(groups(new Help(6, 4)), new long[] {0, 100}).earliest()[1]).isEqualTo(groups(new Help(6, 4)).activity(0).work());
        assertThat(new Sequence(groups(Help.NONE), new long[] {0, 100}).earliest()).containsExactly(0, 0);
    }

    private static Model groups(Help help) {
        return model(LessonRequest.builder().headcount(4).groups(2).meeting(TEN, TEN.plusHours(4)).step(new Step.Make("hard", "hard", StudentTime.ofMinutes(20, 20, 20), List.of(), help, 1, true)));
    }

    private static long idle(LessonRequest.Builder lesson, long... starts) {
        return new Load(model(lesson), starts).idle();
    }

    @Test
    void countsHowLongTheClassWaits() {
        assertThat(idle(lesson(40), 0, 20, 20, 60)).isEqualTo(10);
        assertThat(idle(lesson(40), 3, 23, 23, 70)).isEqualTo(20);
        assertThat(idle(lesson(40).pause("Tea", TEN.plusMinutes(52), TEN.plusMinutes(57)), 0, 20, 20, 60)).isEqualTo(5);
    }

    /** One group of two waits for 10 minutes while the other cuts. */
    @Test
    void averagesOverTheGroups() {
        LessonRequest.Builder two = LessonRequest.builder().headcount(2).groups(2).meeting(TEN, TEN.plusHours(4)).step(new Step.Show("talk", "talk", Duration.ofMinutes(7))).step(make("cut", 10));
        assertThat(idle(two, 0, 7, 7)).isZero();
        assertThat(idle(two, 0, 7, 17)).isEqualTo(10);
    }
}
