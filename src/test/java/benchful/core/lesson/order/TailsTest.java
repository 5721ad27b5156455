package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** In minutes, in the order of the steps; 7 minutes somewhere keep the grain at one. */
class TailsTest {

    private static LessonRequest.Builder lesson() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2));
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static long[] tails(LessonRequest.Builder lesson) {
        Model model = new ModelBuilder(lesson.build()).build();
        return new Tails(model).tails();
    }

    /** Cut, 5 minutes later dried and looked at; or sewn, and looked at. */
    @Test
    void isTheLongestChainBehind() {
        assertThat(tails(lesson().step(make("cut", 20)).step(new Step.Wait("dry", "dry", Duration.ofMinutes(40))).step(make("sew", 30)).step(new Step.Show("look", "look", Duration.ofMinutes(7)))
                .link(new Link("cut", "dry", Duration.ofMinutes(5), Optional.empty())).link("cut", "look").link("dry", "look").link("sew", "look"))).containsExactly(72, 47, 37, 7);
    }

    @Test
    void hangsNothingOnWhatEndsAtHome() {
        assertThat(tails(lesson().step(make("cut", 7)).step(new Step.Wait("cure", "cure", Duration.ofHours(9), Optional.empty(), List.of(), true))
                .link(new Link("cut", "cure", Duration.ofMinutes(5), Optional.empty())))).containsExactly(7, 0);
    }

    @Test
    void goesOnThroughWorkBetweenTheMeetings() {
        assertThat(tails(lesson().step(make("pour", 40)).step(new Step.Outside("press", "press", StepKind.BETWEEN, Duration.ofMinutes(10))).step(make("sand", 57))
                .link("pour", "press").link("press", "sand"))).containsExactly(107, 67, 57);
    }
}
