package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.StudentTime.Work;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Classes of two groups of two in which nothing is left to chance. Ann and Cid make a piece in 10 minutes, Bob and Dot in 20; the group
 * moves on when one of the two is done. Then it is shown something for 10 minutes, and makes something more in 5.
 */
class ShownToGroupsTest {

    private static LessonRequest.Builder four(List<ToolUse> uses, Help help) {
        return LessonRequest.builder().headcount(4).groups(2).meeting(TEN, TEN.plusHours(2)).replications(3)
                .step(new Step.Make("saw", "Saw", time(10, 1, 2, 1, 2), uses, help, 0.5, true))
                .step(new Step.Show("show", "Show", Duration.ofMinutes(10), Duration.ZERO, Duration.ZERO, List.of(), 2))
                .step(new Step.Make("set", "Set", time(5, 1, 1, 1, 1))).link("saw", "show").link("show", "set");
    }

    private static StudentTime time(int minutes, int... repeats) {
        Duration length = Duration.ofMinutes(minutes);
        return new StudentTime(length, length, length, Arrays.stream(repeats).mapToObj(times -> new Work(times, 1)).toList());
    }

    /** Both groups are ready at 10; the tutor shows the first, and the second waits for her until 20. */
    @Test
    void showsOneGroupAfterTheOtherAndCutsOffWhoIsSlow() {
        Replication played = played(four(List.of(), Help.NONE).build());
        assertThat(ends()).containsExactlyInAnyOrder("saw/1 10", "saw/2 10", "show/1 20", "show/2 30", "set/1 25", "set/2 35");
        assertThat(minutes(played.done[0])).containsExactly(10, 10, 0, 0);
        assertThat(minutes(played.lost[script.helpCause()])).containsExactly(0, 0, 10, 10);
    }

    /** There are two saws, which Ann and Bob take first. Ann is done at 10, and Bob, who watches then, lets go of his too; so both of the others saw from 10 on. */
    @Test
    void letsGoOfToolsToWatch() {
        played(four(List.of(new ToolUse("saw", 1)), Help.NONE).tool("saw", 2).build());
        assertThat(ends()).containsExactlyInAnyOrder("saw/1 10", "show/1 20", "saw/2 20", "set/1 25", "show/2 30", "set/2 35");
    }

    /** From 20 on there are five minutes to the break: too few, so the second group is shown it from 35 on. */
    @Test
    void isNotBegunShortlyBeforeABreak() {
        played(four(List.of(), Help.NONE).pause("Tea", TEN.plusMinutes(25), TEN.plusMinutes(35)).build());
        assertThat(ends()).containsExactlyInAnyOrder("saw/1 10", "saw/2 10", "show/1 20", "set/1 25", "show/2 45", "set/2 50");
    }

    /** Each of two groups of two is shown it twice, as one can watch: four showings, each of which runs over by two minutes on average. */
    @Test
    void runsOverEachTimeByItself() {
        LessonRequest request = LessonRequest.builder().headcount(4).groups(2).meeting(TEN, TEN.plusHours(2))
                .step(new Step.Show("show", "Show", Duration.ofMinutes(10), Duration.ZERO, Duration.ofMinutes(6), List.of(), 1)).build();
        Replication played = played(request);
        double first = played.end[0] - 20 * 60;
        double second = played.end[1] - played.end[0] - 20 * 60;
        assertThat(first).isBetween(0.0, 12.0 * 60);
        assertThat(second).isBetween(0.0, 12.0 * 60).isNotEqualTo(first);
        double mean = IntStream.range(0, 4000).mapToDouble(number -> {
            played.play(7, number);
            return played.end[1] - 40 * 60;
        }).average().orElseThrow();
        assertThat(mean / 60).isBetween(7.8, 8.2);
    }

    /** While one group is shown something nobody answers the other, unless there is a helper. */
    @Test
    void answersNobodyMeanwhile() {
        LessonRequest request = LessonRequest.builder().headcount(2).groups(2).meeting(TEN, TEN.plusHours(4)).replications(1)
                .step(new Step.Show("show", "Show", Duration.ofMinutes(60), Duration.ZERO, Duration.ZERO, List.of(), 1))
                .step(new Step.Make("saw", "Saw", time(60, 1, 1), List.of(), new Help(30, 1), 1, true)).build();
        Replication alone = played(request);
        double waited = Arrays.stream(alone.lost[script.helpCause()]).sum();
        Replication helped = played(request.toBuilder().helpers(1).build());
        assertThat(waited / 60).isGreaterThan(50);
        assertThat(Arrays.stream(helped.lost[script.helpCause()]).sum() / 60).isLessThan(5);
    }

    private Script script;
    private Replication replication;

    private Replication played(LessonRequest request) {
        LessonPlan plan = Lessons.plan(new ListPlanner().plan(request));
        script = new ScriptWriter(request, plan).script();
        replication = new Replication(script);
        replication.play(7, 1);
        return replication;
    }

    private List<String> ends() {
        return script.parts().stream().map(part -> "%s/%d %d".formatted(part.step(), part.group(), Math.round(replication.end[part.index()] / 60))).toList();
    }

    private static int[] minutes(double[] seconds) {
        return Arrays.stream(seconds).mapToInt(time -> (int) Math.round(time / 60)).toArray();
    }
}
