package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClassReviewerTest {
    private static final LocalDateTime START = LocalDateTime.of(2027, 3, 6, 13, 0);
    private static final List<PlannedStep> PLAN = List.of(
            step("welcome", 0, 10, true), step("knot", 10, 60, true), step("dry", 60, 80, false), step("tidy", 60, 70, true));

    @Test
    void takesMinutesAsTyped() {
        assertThat(reviewed(List.of(), new Actual("knot", Duration.ofMinutes(65), null)))
                .containsExactly(
                        new StepReview("welcome", 0, "welcome", Duration.ofMinutes(10), null),
                        new StepReview("knot", 0, "knot", Duration.ofMinutes(50), Duration.ofMinutes(65)),
                        new StepReview("dry", 0, "dry", Duration.ofMinutes(20), null),
                        new StepReview("tidy", 0, "tidy", Duration.ofMinutes(10), null));
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

    /** Since the step before ended, breaks left out; what was counted before the step, or of one that nobody knows when it began, is left out. */
    @Test
    void tellsHowLongAfterTheBeginSoManyHadFinished() {
        List<Pause> tea = List.of(new Pause(START.plusMinutes(30), START.plusMinutes(45)));
        List<StepReview> reviews = new ClassReviewer(START, tea).review(PLAN, List.of(ended("welcome", 12)), List.of(counted("knot", 24, 2), counted("knot", 60, 5),
                counted("knot", 12, 1), counted("dry", 70, 3), counted("tidy", 71, 4), counted("iron", 20, 1)));
        assertThat(reviews).extracting(StepReview::counts).containsExactly(List.of(), List.of(new Count(12 * 60, 2), new Count(33 * 60, 5)), List.of(), List.of());
    }

    private static Counted counted(String key, int minute, int finished) {
        return new Counted(key, START.plusMinutes(minute), finished);
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
    void countsAWaitAfterAStepThatNobodyTypedFromTheLastKnownEnd() {
        List<StepReview> reviews = reviewed(List.of(), ended("welcome", 14), ended("dry", 90));
        assertThat(reviews.get(2).actual()).isEqualTo(Duration.ofMinutes(26));
    }

    @Test
    void followsEachGroupByItself() {
        List<PlannedStep> plan = List.of(step("welcome", 0, 10, true), step("saw", 10, 40, true).of(1), step("drill", 10, 30, true).of(2),
                step("drill", 40, 60, true).of(1), step("saw", 40, 70, true).of(2), step("tidy", 70, 80, true));
        List<StepReview> reviews = new ClassReviewer(START, List.of()).review(plan, List.of(ended("welcome", 12),
                ended("saw/1", 45), ended("drill/2", 30), ended("drill/1", 70), ended("saw/2", 75), ended("tidy", 84)));
        assertThat(reviews).extracting(StepReview::name).containsExactly("welcome", "saw, group 1", "drill, group 2", "drill, group 1", "saw, group 2", "tidy");
        assertThat(reviews).extracting(r -> r.actual().toMinutes()).containsExactly(12L, 33L, 18L, 25L, 45L, 9L);
    }

    @Test
    void doesNotGuessWhenTheClassGoesOnWhereOneGroupsEndIsNotKnown() {
        List<PlannedStep> plan = List.of(step("saw", 0, 30, true).of(1), step("saw", 0, 30, true).of(2), step("tidy", 30, 40, true));
        assertThat(new ClassReviewer(START, List.of()).review(plan, List.of(ended("saw/1", 30), ended("tidy", 45))).get(2).actual()).isNull();
    }

    @Test
    void countsWhatGroupsDidOnceForAClass() {
        assertThat(Habit.over(List.of(List.of(new StepReview("saw", 1, "Saw", Duration.ofMinutes(30), Duration.ofMinutes(45)),
                new StepReview("saw", 2, "Saw", Duration.ofMinutes(30), Duration.ofMinutes(30))))))
                .containsExactly(new Habit("saw", "Saw", 1, 1, 1.25));
    }

    @Test
    void namesStepsThatRunOverAgainAndAgain() {
        List<Habit> habits = Habit.over(List.of(
                List.of(new StepReview("knot", 0, "Knot", Duration.ofMinutes(50), Duration.ofMinutes(65)), of("tidy", 10, 10)),
                List.of(new StepReview("knot", 0, "Knot", Duration.ofMinutes(50), Duration.ofMinutes(60)), of("tidy", 10, 14)),
                List.of(new StepReview("knot", 0, "Knot", Duration.ofMinutes(50), null), of("tidy", 10, 9))));
        assertThat(habits).containsExactly(new Habit("knot", "Knot", 2, 2, 1.25), new Habit("tidy", "tidy", 3, 1, 1.0));
        assertThat(habits).extracting(Habit::againAndAgain).containsExactly(true, false);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, false", "2, 2, true", "3, 2, true", "4, 2, true", "5, 2, false", "6, 3, true", "7, 3, false"})
    void blamesWhatRanOverTwiceAndInHalfOfTheClasses(int classes, int over, boolean blamed) {
        assertThat(new Habit("knot", "Knot", classes, over, 1.3).againAndAgain()).isEqualTo(blamed);
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
        return new StepReview(step, 0, step, Duration.ofMinutes(planned), Duration.ofMinutes(actual));
    }

    private static Actual ended(String step, int minute) {
        return new Actual(step, null, START.plusMinutes(minute));
    }

    private static PlannedStep step(String id, int from, int to, boolean handsOn) {
        return new PlannedStep(id, 0, id, handsOn, START.plusMinutes(from), START.plusMinutes(to), Duration.ofMinutes(to - from));
    }
}
