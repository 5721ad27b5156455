package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class ClassReviewerTest {
    private static final LocalDateTime START = LocalDateTime.of(2027, 3, 6, 13, 0);
    private static final List<PlannedStep> PLAN = List.of(
            step("welcome", 0, 10, true), step("knot", 10, 60, true), step("dry", 60, 80, false), step("tidy", 60, 70, true));

    @Test
    void takesMinutesAsTyped() {
        assertThat(reviewed(List.of(), new Actual("knot", Duration.ofMinutes(65), null)))
                .containsExactly(
                        new StepReview("welcome", "welcome", Duration.ofMinutes(10), null),
                        new StepReview("knot", "knot", Duration.ofMinutes(50), Duration.ofMinutes(65)),
                        new StepReview("dry", "dry", Duration.ofMinutes(20), null),
                        new StepReview("tidy", "tidy", Duration.ofMinutes(10), null));
    }

    @Test
    void worksOutMinutesFromEndsAndLeavesPausesOut() {
        List<Pause> tea = List.of(new Pause(START.plusMinutes(30), START.plusMinutes(45)));
        List<StepReview> reviews = reviewed(tea, ended("welcome", 12), ended("knot", 90), ended("tidy", 99));
        assertThat(reviews).extracting(StepReview::actual)
                .containsExactly(Duration.ofMinutes(12), Duration.ofMinutes(63), null, Duration.ofMinutes(9));
        assertThat(reviews).extracting(StepReview::verdict).containsExactly(
                StepReview.Verdict.AS_PLANNED, StepReview.Verdict.RAN_OVER, StepReview.Verdict.NOT_TYPED, StepReview.Verdict.AS_PLANNED);
    }

    @Test
    void goesOnFromMinutesWhenTheNextIsAnEnd() {
        List<StepReview> reviews = reviewed(List.of(), new Actual("welcome", Duration.ofMinutes(20), null), ended("knot", 75));
        assertThat(reviews.get(1).actual()).isEqualTo(Duration.ofMinutes(55));
    }

    @Test
    void doesNotGuessAcrossAGap() {
        assertThat(reviewed(List.of(), ended("knot", 75)).get(1).actual()).isNull();
    }

    @Test
    void countsAWaitFromWhereTheClassReallyStood() {
        List<StepReview> reviews = reviewed(List.of(), ended("welcome", 10), ended("knot", 70), ended("dry", 95));
        assertThat(reviews.get(2).actual()).isEqualTo(Duration.ofMinutes(25));
    }

    @Test
    void namesStepsThatRunOverAgainAndAgain() {
        List<Habit> habits = Habit.over(List.of(
                List.of(new StepReview("knot", "Knot", Duration.ofMinutes(50), Duration.ofMinutes(65)), of("tidy", 10, 10)),
                List.of(new StepReview("knot", "Knot", Duration.ofMinutes(50), Duration.ofMinutes(60)), of("tidy", 10, 14)),
                List.of(new StepReview("knot", "Knot", Duration.ofMinutes(50), null), of("tidy", 10, 9))));
        assertThat(habits).containsExactly(new Habit("knot", "Knot", 2, 2, 1.25), new Habit("tidy", "tidy", 3, 1, 1.0));
        assertThat(habits).extracting(Habit::againAndAgain).containsExactly(true, false);
    }

    @Test
    void doesNotBlameTwoMinutesOrATenth() {
        assertThat(of("a", 5, 7).ranOver()).isFalse();
        assertThat(of("a", 5, 8).ranOver()).isTrue();
        assertThat(of("a", 60, 66).ranOver()).isFalse();
        assertThat(of("a", 60, 67).ranOver()).isTrue();
    }

    private static List<StepReview> reviewed(List<Pause> pauses, Actual... actuals) {
        return new ClassReviewer(START, pauses).review(PLAN, List.of(actuals));
    }

    private static StepReview of(String step, int planned, int actual) {
        return new StepReview(step, step, Duration.ofMinutes(planned), Duration.ofMinutes(actual));
    }

    private static Actual ended(String step, int minute) {
        return new Actual(step, null, START.plusMinutes(minute));
    }

    private static PlannedStep step(String id, int from, int to, boolean handsOn) {
        return new PlannedStep(id, id, handsOn, START.plusMinutes(from), START.plusMinutes(to), Duration.ofMinutes(to - from));
    }
}
