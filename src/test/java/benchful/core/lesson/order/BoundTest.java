package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** All in minutes from ten. */
class BoundTest {

    private static LessonRequest.Builder lesson() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(4));
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step show(String id, int minutes) {
        return new Step.Show(id, id, Duration.ofMinutes(minutes));
    }

    private static Step fire(String id, int minutes, int kilns) {
        return new Step.Wait(id, id, Duration.ofMinutes(minutes), Optional.empty(), List.of(new ToolUse("kiln", kilns)), false);
    }

    private static long bound(LessonRequest.Builder lesson) {
        Model model = new ModelBuilder(lesson.build()).build();
        return model.hours().toLength(new Bound(model).earliestFinish()).toMinutes();
    }

    @Test
    void isTheLongestChain() {
        LessonRequest.Builder dried = lesson().step(new Step.Wait("dry", "dry", Duration.ofMinutes(90))).step(make("cut", 20)).link(new Link("cut", "dry", Duration.ofMinutes(5), Optional.empty()));
        assertThat(bound(dried)).isEqualTo(115);
    }

    /** Tea is from 40 to 55. */
    @Test
    void isTheWorkOfTheClassWithItsBreaks() {
        assertThat(bound(lesson().step(make("cut", 30)).step(make("sew", 31)))).isEqualTo(61);
        assertThat(bound(lesson().pause("Tea", TEN.plusMinutes(40), TEN.plusMinutes(55)).step(make("cut", 30)).step(make("sew", 31)))).isEqualTo(76);
        assertThat(bound(lesson().step(new Step.Wait("dry", "dry", Duration.ofMinutes(7))))).as("without work").isEqualTo(7);
    }

    /** Half of four do 30 and 20 each; the talk of 10 is for all. */
    @Test
    void isTheWorkOfTheBusiestGroup() {
        assertThat(bound(lesson().headcount(4).groups(2).step(show("talk", 10)).step(make("cut", 30)).step(make("sew", 20)))).isEqualTo(60);
    }

    /** Ten minutes before the first firing and five behind the last; three of 30 share two kilns in 45 at least. */
    @Test
    void isWhatTheKilnTakesBetweenWhatIsBeforeAndBehind() {
        assertThat(bound(fired(1))).isEqualTo(10 + 90 + 5);
        assertThat(bound(fired(2))).isEqualTo(10 + 45 + 5);
        assertThat(bound(lesson().tool("kiln", 2).step(fire("a", 30, 2)).step(fire("b", 20, 1)).step(fire("c", 21, 1)))).as("101 by two").isEqualTo(51);
    }

    private static LessonRequest.Builder fired(int kilns) {
        LessonRequest.Builder lesson = lesson().tool("kiln", kilns).step(show("talk", 10)).step(show("look", 5));
        for (String load : List.of("a", "b", "c")) {
            lesson.step(fire(load, 30, 1)).link("talk", load).link(load, "look");
        }
        return lesson;
    }

    /** What hardens at home keeps no class. */
    @Test
    void leavesOutWhatEndsAtHome() {
        Step home = new Step.Wait("cure", "cure", Duration.ofHours(24), Optional.empty(), List.of(new ToolUse("lamp", 1)), true);
        assertThat(bound(lesson().tool("lamp", 1).step(show("talk", 10)).step(home).link("talk", "cure"))).isEqualTo(10);
    }
}
