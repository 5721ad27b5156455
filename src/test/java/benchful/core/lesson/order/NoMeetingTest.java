package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two days from ten to twelve: poured for 40 minutes, pressed in between, sanded on the second. */
class NoMeetingTest {

    private static LessonRequest.Builder lesson(Duration press, Duration least) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2))
                .step(make("pour", 40)).step(new Step.Outside("press", "press", StepKind.BETWEEN, press)).step(make("sand", 50))
                .link("pour", "press").link(new Link("press", "sand", least, Optional.empty()));
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static LessonOutcome plan(LessonRequest.Builder lesson) {
        return new ListPlanner().plan(lesson.build());
    }

    /** Twenty-two hours lie between the meetings. */
    @Test
    void leavesAMeetingForWhatIsJustDone() {
        assertThat(plan(lesson(Duration.ofHours(22), Duration.ZERO))).isInstanceOf(Planned.class);
        assertThat(plan(lesson(Duration.ofHours(22).plusMinutes(1), Duration.ZERO))).isInstanceOf(Contradiction.class);
    }

    /** Pressed till 12:10, it may be sanded from 11:59 on the second day, but not from the end at 12:00. */
    @Test
    void leavesNoMeetingWhereItIsReadyWhenTheLastEnds() {
        assertThat(plan(lesson(Duration.ofMinutes(10), Duration.ofHours(24).minusMinutes(11)))).isInstanceOf(Planned.class);
        LessonOutcome refused = plan(lesson(Duration.ofMinutes(10), Duration.ofHours(24).minusMinutes(10)));
        assertThat(refused).isInstanceOfSatisfying(Contradiction.class, none -> assertThat(none.conflicts()).singleElement().satisfies(conflict -> {
            assertThat(conflict.steps()).containsExactly("press", "sand");
            assertThat(conflict.what()).asString().endsWith("can begin on 2025-03-09 12:00 at the earliest, 2 h after the last meeting begins.");
        }));
    }

    /** Two days after it is sanded it is waxed at home. */
    @Test
    void countsOnlyWhatComesBeforeTheWork() {
        LessonRequest.Builder waxed = lesson(Duration.ofMinutes(10), Duration.ZERO)
                .step(new Step.Wait("wax", "wax", Duration.ofMinutes(30), Optional.empty(), List.of(), true)).link(new Link("sand", "wax", Duration.ofDays(2), Optional.empty()));
        assertThat(plan(waxed)).isInstanceOf(Planned.class);
    }
}
