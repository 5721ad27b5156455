package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.RestPlacer.Rested;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ten minutes after at most fifty-five of bench work, in lessons of one student with exact times. */
class RestPlacerTest {
    private static final Rest RULE = new Rest(Duration.ofMinutes(55), Duration.ofMinutes(10));

    private static LessonRequest.Builder hours(int hours) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(hours));
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step show(String id, int minutes) {
        return new Step.Show(id, id, Duration.ofMinutes(minutes));
    }

    /** Steps one after the other. */
    private static LessonRequest row(LessonRequest.Builder lesson, Step... steps) {
        for (int i = 0; i < steps.length; i++) {
            lesson.step(steps[i]);
            if (i > 0) {
                lesson.link(steps[i - 1].id(), steps[i].id());
            }
        }
        return lesson.build();
    }

    private static Optional<LessonPlan> plan(LessonRequest request) {
        return new ListPlanner().plan(request) instanceof Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    /** In minutes from ten. */
    private static List<Integer> rests(LessonRequest request, Rest rule) {
        return RestPlacer.placed(new Rested(request), rule, RestPlacerTest::plan, 60).rests().stream().map(rest -> (int) Duration.between(TEN, rest.start()).toMinutes()).toList();
    }

    @Test
    void restsBetweenStepsWhereThatIsSoonEnough() {
        assertThat(rests(row(hours(4), make("fold", 50), make("sew", 50), make("press", 50)), RULE)).containsExactly(50, 110);
    }

    @Test
    void partsLongWorkEvenly() {
        assertThat(rests(row(hours(4), make("sew", 150)), RULE)).containsExactly(50, 110);
        assertThat(rests(row(hours(4), make("sew", 55)), RULE)).isEmpty();
        assertThat(rests(row(hours(4), make("sew", 56)), RULE)).containsExactly(30);
        assertThat(rests(row(hours(4), make("sew", 110)), RULE)).containsExactly(55);
        assertThat(rests(row(hours(4), make("sew", 111)), RULE)).as("three parts").containsExactly(35, 85);
    }

    /** Nine minutes are no rest; ten are. */
    @Test
    void restsWithWhatIsShownIfItLastsAsLong() {
        assertThat(rests(row(hours(4), make("fold", 50), show("show", 10), make("sew", 50)), RULE)).isEmpty();
        assertThat(rests(row(hours(4), make("fold", 50), show("show", 9), make("sew", 50)), RULE)).containsExactly(50);
    }

    @Test
    void countsTheBreaksThatAreThere() {
        LessonRequest tea = row(hours(4).pause("Tea", TEN.plusMinutes(45), TEN.plusMinutes(60)), make("sew", 100));
        assertThat(rests(tea, RULE)).isEmpty();
        LessonRequest late = row(hours(4).pause("Tea", TEN.plusMinutes(60), TEN.plusMinutes(75)), make("sew", 100));
        assertThat(rests(late, RULE)).as("not just before tea").containsExactly(30);
        LessonRequest sip = row(hours(4).pause("Sip", TEN.plusMinutes(30), TEN.plusMinutes(35)), make("sew", 100));
        assertThat(rests(sip, RULE)).as("five minutes are no rest, and no work").containsExactly(55);
    }

    @Test
    void restsInEachMeeting() {
        LessonRequest two = row(LessonRequest.builder().meeting(TEN, TEN.plusMinutes(90)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusMinutes(90)), make("sew", 150));
        assertThat(rests(two, RULE)).containsExactly(45, 24 * 60 + 35);
    }

    /** Behind the end nobody is there. */
    @Test
    void endsWithTheMeeting() {
        assertThat(rests(row(LessonRequest.builder().meeting(TEN, TEN.plusHours(1)), make("sew", 180)), RULE)).containsExactly(30);
        assertThat(rests(row(LessonRequest.builder().meeting(TEN, TEN.plusMinutes(30)), make("sew", 180)), RULE)).isEmpty();
    }

    /** Two groups side by side: each has its own hour. */
    @Test
    void looksAtEachGroup() {
        LessonRequest groups = row(hours(4).headcount(2).groups(2), make("fold", 40), make("sew", 40));
        assertThat(rests(groups, RULE)).containsExactly(40);
    }

    /** What was begun with is kept where it will do, and what comes too late is moved. */
    @Test
    void goesOnFromRestsThatArePlaced() {
        LessonRequest sew = row(hours(4), make("sew", 150));
        assertThat(placed(sew, 45, 110)).containsExactly(45, 110);
        assertThat(placed(sew, 60, 125)).containsExactly(50, 110);
        assertThat(placed(sew, 55, 125)).containsExactly(55, 110);
    }

    private static List<Integer> placed(LessonRequest request, int... minutes) {
        List<Break> begun = Arrays.stream(minutes).mapToObj(minute -> new Break("Break", TEN.plusMinutes(minute), TEN.plusMinutes(minute + 10L))).toList();
        return RestPlacer.placed(new Rested(request, begun), RULE, RestPlacerTest::plan, 60).rests().stream().map(rest -> (int) Duration.between(TEN, rest.start()).toMinutes()).toList();
    }

    @Test
    void changesNothingWhereNoPlanIs() {
        LessonRequest circle = row(hours(4), make("sew", 150), make("press", 20)).toBuilder().link("press", "sew").build();
        assertThat(rests(circle, RULE)).isEmpty();
    }

    @Test
    void keepsWhatItBeganWithWhereItMayNotPlanOftenEnough() {
        LessonRequest sew = row(hours(5), make("sew", 220));
        assertThat(RestPlacer.placed(new Rested(sew), RULE, RestPlacerTest::plan, 1).rests()).as("one of three").hasSize(1);
        Rested begun = new Rested(sew, List.of(new Break("Break", TEN.plusMinutes(100), TEN.plusMinutes(110))));
        assertThat(RestPlacer.placed(begun, RULE, RestPlacerTest::plan, 2)).isEqualTo(begun);
    }

    @Test
    void isForWhatBeginsInItsMeeting() {
        Rest second = new Rest(Duration.ofMinutes(55), Duration.ofMinutes(10), Optional.of(new Meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2))));
        assertThat(second.isFor(TEN.plusDays(1))).isTrue();
        assertThat(second.isFor(TEN.plusDays(1).plusMinutes(119))).isTrue();
        assertThat(second.isFor(TEN.plusDays(1).plusMinutes(120))).isFalse();
        assertThat(second.isFor(TEN.plusDays(1).minusMinutes(1))).isFalse();
        assertThat(RULE.isFor(TEN)).isTrue();
    }

    @Test
    void hasNoRuleWithoutTimes() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Rest(Duration.ZERO, Duration.ofMinutes(5)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Rest(Duration.ofMinutes(5), Duration.ofMinutes(-1)));
    }

    @Test
    void isMissedByTheCheckerWhereItIsNot() {
        LessonRequest sew = row(hours(4), make("sew", 56));
        assertThat(LessonChecker.faults(sew, plan(sew).orElseThrow(), RULE)).singleElement().asString().contains("10:55");
        assertThat(LessonChecker.faults(sew, plan(sew).orElseThrow(), new Rest(Duration.ofMinutes(56), Duration.ofMinutes(10)))).isEmpty();
    }

    /** The checker, which counts minutes and knows nothing of how rests are placed, finds nothing to say. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void letsNobodyWorkForLongerThanTheRuleSays(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        Rest rule = new Rest(Duration.ofMinutes(25), Duration.ofMinutes(5));
        LessonRequest rested = RestPlacer.placed(new Rested(drawn), rule, RestPlacerTest::plan, 60).request();
        assertThat(LessonChecker.faults(rested, plan(rested).orElseThrow(), rule)).isEmpty();
        assertThat(LessonChecker.faults(rested, plan(rested).orElseThrow())).isEmpty();
    }
}
