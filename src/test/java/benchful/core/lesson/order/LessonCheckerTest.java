package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
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

    private final LessonRequest inGroups = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).headcount(4).groups(2)
            .step(new Step.Show("show", "Show", Duration.ofMinutes(10), Duration.ZERO, Duration.ZERO, List.of(), 2))
            .step(new Step.Make("torch", "Torch", StudentTime.ofMinutes(5, 5, 5), List.of(), Help.NONE, 1, true, true)).build();

    private List<String> faultsOfGroups(int first, int second, int torch) {
        LessonPlan plan = plan(new ListPlanner().plan(inGroups));
        assertThat(LessonChecker.faults(inGroups, plan)).isEmpty();
        List<Block> blocks = plan.blocks().stream().map(block -> moved(block, block.kind() == StepKind.SHOW ? block.group() == 1 ? first : second
                : block.group() == 1 ? torch : 60)).toList();
        return LessonChecker.faults(inGroups, new LessonPlan(blocks, plan.start(), TEN.plusMinutes(70), plan.bookedEnd(), plan.meetings(), plan.tutor(), plan.idle(), plan.proof(), plan.preparation()));
    }

    @Test
    void seesATutorInTwoPlaces() {
        assertThat(faultsOfGroups(0, 10, 30)).isEmpty();
        assertThat(faultsOfGroups(0, 9, 30)).contains("\"Show\" and \"Show\" need the tutor at once.");
        assertThat(faultsOfGroups(0, 30, 30)).contains("\"Show\" finds the tutor busy elsewhere.");
        assertThat(faultsOfGroups(0, 10, 15)).contains("\"Torch\" finds the tutor busy elsewhere.");
    }

    @Test
    void seesWhatIsShownToAllAndNotToEach() {
        LessonRequest toAll = inGroups.toBuilder().steps(inGroups.steps().stream().map(step -> step instanceof Step.Show show
                ? new Step.Show(show.id(), show.title(), show.length()) : step).toList()).build();
        LessonPlan plan = plan(new ListPlanner().plan(toAll));
        assertThat(LessonChecker.faults(toAll, plan)).isEmpty();
        assertThat(LessonChecker.faults(inGroups, plan)).contains("\"Show\" is not in the plan exactly as often as it must be.");
    }
}
