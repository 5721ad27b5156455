package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What students could do at home: they dip for forty minutes, trim for eight, tie on a label for ten, and tidy up. */
class HomeChangesTest {

    private static LessonRequest.Builder candles(Step.Make label) {
        return LessonRequest.builder().headcount(4).meeting(TEN, TEN.plusHours(1)).tool("awl", 4).step(make("dip", 40)).step(make("trim", 8)).step(label)
                .step(new Step.Together("tidy", "Tidy", Duration.ofMinutes(5))).link("dip", "trim").link("trim", "label").link("label", "tidy");
    }

    private static Step.Make make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step.Make label(Help help, boolean beside, ToolUse... tools) {
        return new Step.Make("label", "label", StudentTime.ofMinutes(10, 10, 10), List.of(tools), help, 1, true, beside);
    }

    private static List<String> titles(LessonRequest.Builder request) {
        return HomeChanges.of(request.build(), step -> true).stream().map(change -> change.title().toString()).toList();
    }

    /** The last alone, or the last two together; never what they came for. */
    @Test
    void offersWhatComesLast() {
        assertThat(titles(candles(make("label", 10)))).containsExactly("Let them do \"trim\" and \"label\" at home", "Let them do \"label\" at home");
        assertThat(titles(candles(make("label", 50)))).as("the longest").isEmpty();
        assertThat(titles(candles(make("label", 30)))).as("half an hour at most").containsExactly("Let them do \"label\" at home");
        assertThat(titles(candles(make("label", 31)))).isEmpty();
        assertThat(titles(candles(make("label", 10)).step(make("wrap", 5)).link("label", "wrap"))).as("no three").containsExactly(
                "Let them do \"label\" and \"wrap\" at home", "Let them do \"wrap\" at home");
    }

    @Test
    void offersNothingThatNeedsTheBenchTheTutorOrHaste() {
        assertThat(titles(candles(label(Help.NONE, false, new ToolUse("awl", 1))))).as("a tool").isEmpty();
        assertThat(titles(candles(label(Help.NONE, true)))).as("somebody beside").isEmpty();
        assertThat(titles(candles(label(new Help(2.5, 1), false)))).as("help").isEmpty();
        assertThat(titles(candles(label(new Help(2, 1), false)))).hasSize(2);
        assertThat(titles(candles(make("label", 10)).link(new Link("dip", "label", Duration.ZERO, Optional.of(Duration.ofMinutes(20)))))).as("in time").isEmpty();
        assertThat(titles(candles(make("label", 10)).step(new Step.Wait("glue", "Glue", Duration.ofMinutes(1), Optional.of(Duration.ofMinutes(5)), List.of(), false))
                .link("trim", "glue").link("glue", "label"))).as("what ages").isEmpty();
        assertThat(titles(candles(make("label", 10)).preparedAhead(Set.of("dip", "trim", "label")))).as("done before").isEmpty();
        assertThat(HomeChanges.of(candles(make("label", 10)).build(), step -> !step.id().equals("label"))).as("a hazard").isEmpty();
    }

    /** What lies on a rack is waited for, and so is what the class goes on with. */
    @Test
    void offersNothingThatTheClassWaitsFor() {
        Step rack = new Step.Wait("set", "Set", Duration.ofMinutes(20), Optional.empty(), List.of(new ToolUse("awl", 1)), false);
        assertThat(titles(candles(make("label", 10)).step(rack).link("label", "set"))).isEmpty();
        assertThat(titles(candles(make("label", 10)).step(new Step.Wait("dry", "Dry", Duration.ofMinutes(20))).link("label", "dry"))).hasSize(2);
    }

    @Test
    void saysWhatItAsks() {
        Change home = HomeChanges.of(candles(make("label", 10)).build(), step -> true).get(0);
        assertThat(home.loses()).isEqualTo("They go home with an unfinished piece, and need about 18 min more");
        assertThat(home.extent()).isEqualTo(18);
        assertThat(home.trouble()).isEqualTo(Change.Trouble.ASK);
    }
}
