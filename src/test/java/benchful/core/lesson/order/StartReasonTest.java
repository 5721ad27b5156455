package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StartReasonTest {

    private static LessonRequest.Builder hours(int hours) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(hours)).tool("kiln", 1);
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, "The " + id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step show(String id, int minutes) {
        return new Step.Show(id, "The " + id, Duration.ofMinutes(minutes));
    }

    private static Step fire(String id, int minutes) {
        return new Step.Wait(id, "The " + id, Duration.ofMinutes(minutes), Optional.empty(), List.of(new ToolUse("kiln", 1)), false);
    }

    /** Why the step begins when it does, with the minutes from ten. */
    private static String reason(LessonRequest request, String step) {
        var block = plan(new ListPlanner().plan(request)).blocksOf(step).get(0);
        List<String> said = block.reasons().stream().filter(reason -> reason.subject() == Reason.Subject.START).map(reason -> reason.sentence().toString()).toList();
        assertThat(said).hasSize(1);
        return Duration.between(TEN, block.start()).toMinutes() + ": " + said.get(0);
    }

    private static String linked(int least) {
        return reason(hours(2).step(make("cut", 30)).step(fire("bake", 10)).link(new Link("cut", "bake", Duration.ofMinutes(least), Optional.empty())).build(), "bake");
    }

    @Test
    void namesWhatItFollows() {
        assertThat(reason(hours(2).step(make("cut", 30)).build(), "cut")).isEqualTo("0: Begins with the class.");
        assertThat(linked(0)).isEqualTo("30: Follows \"The cut\".");
        assertThat(linked(5)).isEqualTo("35: Begins 5 min after \"The cut\" ends.");
        assertThat(linked(-10)).isEqualTo("20: Begins 10 min before \"The cut\" ends.");
        LessonRequest baked = hours(2).step(fire("bake", 10)).step(make("ice", 30)).link("bake", "ice").build();
        assertThat(reason(baked, "ice")).isEqualTo("10: Begins as soon as \"The bake\" is over.");
    }

    @Test
    void namesTheBreakAndTheMeeting() {
        LessonRequest tea = hours(2).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(35)).step(make("cut", 20)).step(show("knot", 10)).link("cut", "knot").build();
        assertThat(reason(tea, "knot")).isEqualTo("35: Begins after the break.");
        LessonRequest two = LessonRequest.builder().meeting(TEN, TEN.plusMinutes(20)).meeting(TEN.plusHours(2), TEN.plusHours(3))
                .step(make("cut", 20)).step(show("knot", 10)).link("cut", "knot").build();
        assertThat(reason(two, "knot")).isEqualTo("120: Begins the next meeting.");
        LessonRequest wash = hours(1).step(make("cut", 20)).step(new Step.Outside("wash", "The wash", StepKind.HOMEWORK, Duration.ofMinutes(10))).link("cut", "wash").build();
        assertThat(reason(wash, "wash")).isEqualTo("60: Begins when the class is over.");
    }

    @Test
    void namesWhoseToolItWaitsFor() {
        LessonRequest kiln = hours(2).step(fire("first", 40)).step(fire("second", 30)).build();
        assertThat(reason(kiln, "second")).isEqualTo("40: Begins when \"The first\" frees the kiln.");
        assertThat(reason(hours(2).step(make("cut", 30)).step(make("sew", 20)).build(), "sew")).isEqualTo("30: Begins when \"The cut\" frees the class.");
    }

    /** Neither what dries for as long, nor what follows the first load, nor the later break keeps the second. */
    @Test
    void namesNothingThatHappensToEndThen() {
        LessonRequest kiln = hours(2).pause("Tea", TEN.plusMinutes(80), TEN.plusMinutes(90)).step(new Step.Wait("dry", "dry", Duration.ofMinutes(40)))
                .step(fire("first", 40)).step(show("look", 10)).step(fire("second", 30)).link("first", "look").build();
        assertThat(reason(kiln, "look")).isEqualTo("40: Begins as soon as \"The first\" is over.");
        assertThat(reason(kiln, "second")).isEqualTo("40: Begins when \"The first\" frees the kiln.");
    }

    /** Painted at most 5 minutes before the kiln is free again. */
    @Test
    void saysThatItIsHeldBack() {
        LessonRequest paint = hours(2).step(fire("bisque", 60)).step(make("paint", 10)).step(fire("glaze", 30))
                .link(new Link("paint", "glaze", Duration.ZERO, Optional.of(Duration.ofMinutes(5)))).link("bisque", "glaze").build();
        assertThat(reason(paint, "paint")).isEqualTo("45: Is held back so that the gaps around it are kept.");
        assertThat(reason(paint, "glaze")).isEqualTo("60: Begins as soon as \"The bisque\" is over.");
    }
}
