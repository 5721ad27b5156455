package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LessonCheckerTest {

    private final LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).tool("kiln", 1)
            .meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2)).pause("tea", TEN.plusMinutes(60), TEN.plusMinutes(70))
            .step(new Step.Show("show", "Show", Duration.ofMinutes(20)))
            .step(new Step.Make("make", "Make", StudentTime.ofMinutes(20, 20, 20)))
            .step(new Step.Wait("fire", "Fire", Duration.ofMinutes(30), Optional.of(Duration.ofMinutes(40)),
                    List.of(new ToolUse("kiln", 1)), false))
            .step(new Step.Make("hang", "Hang", StudentTime.ofMinutes(5, 5, 5)))
            .step(new Step.Wait("test", "Test firing", Duration.ofMinutes(10), Optional.empty(), List.of(new ToolUse("kiln", 1)), false))
            .link(new Link("show", "make", Duration.ZERO, Optional.of(Duration.ofMinutes(30))))
            .link("make", "fire").link("fire", "hang").build();
    private final LessonPlan good = plan(new ListPlanner().plan(request));

    private List<String> faultsWith(String step, long start) {
        List<Block> blocks = good.blocks().stream().map(block -> block.step().equals(step) ? moved(block, start) : block).toList();
        return faults(blocks);
    }

    private List<String> faults(List<Block> blocks) {
        return LessonChecker.faults(request, new LessonPlan(blocks, good.start(), good.finish(), good.bookedEnd(), good.meetings(),
                good.tutor(), good.idle(), good.proof(), good.preparation()));
    }

    private static Block moved(Block block, long start) {
        Duration length = Duration.between(block.start(), block.end());
        Segment all = new Segment(TEN.plusMinutes(start), TEN.plusMinutes(start).plus(length));
        return block.at(List.of(all), block.lane());
    }

    @Test
    void findsNothingWrongWithASoundPlan() {
        assertThat(LessonChecker.faults(request, good)).isEmpty();
    }

    @Test
    void seesAStepThatBeginsBeforeTheTimeAskedFor() {
        LessonRequest asked = request.toBuilder().notBefore(Map.of("make", TEN.plusMinutes(21))).build();
        assertThat(LessonChecker.faults(asked, good)).containsExactly("\"Make\" begins before the time asked for.");
        assertThat(LessonChecker.faults(asked.toBuilder().notBefore(Map.of("make", TEN.plusMinutes(20))).build(), good)).isEmpty();
    }

    @Test
    void seesAStepThatIsMissingOrDoubled() {
        assertThat(faults(good.blocks().stream().filter(block -> !block.step().equals("show")).toList()))
                .contains("\"Show\" is not in the plan exactly as often as it must be.");
    }

    @Test
    void seesAStepThatBeginsTooSoonOrTooLate() {
        assertThat(faultsWith("make", 10)).contains("\"Make\" begins too soon after \"Show\".");
        assertThat(faultsWith("make", 80)).contains("\"Make\" begins too long after \"Show\".");
        assertThat(faultsWith("hang", 95)).contains("\"Hang\" begins too long after \"Fire\".");
    }

    @Test
    void seesWorkInABreakAndBetweenMeetings() {
        assertThat(faultsWith("show", 50)).contains("\"Show\" is worked on from 2025-03-08T10:50, when the class is not.");
        assertThat(faultsWith("show", 110)).contains("\"Show\" is worked on from 2025-03-08T11:50, when the class is not.");
        assertThat(faultsWith("test", 130)).contains("\"Test firing\" begins when nobody is there.");
    }

    @Test
    void seesAClassAtTwoStepsAndAKilnWithTwoLoads() {
        assertThat(faultsWith("show", 21)).contains("\"Show\" and \"Make\" need the class at once.");
        assertThat(faultsWith("test", 45)).contains("\"Test firing\" finds 2 × kiln in use, but there are not so many.");
    }

    @Test
    void seesAWrongLengthAndAWrongFinish() {
        Block hang = good.blocksOf("hang").get(0);
        Segment brief = new Segment(hang.start(), hang.end().minusMinutes(1));
        List<Block> blocks = good.blocks().stream().map(block -> block != hang ? block : hang.at(List.of(brief), hang.lane())).toList();
        assertThat(faults(blocks)).anyMatch(fault -> fault.contains("not for the time it takes"))
                .anyMatch(fault -> fault.startsWith("The plan says that it finishes at"));
    }
}
