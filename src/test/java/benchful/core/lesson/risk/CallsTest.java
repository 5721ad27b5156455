package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.StudentTime.Work;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class CallsTest {
    private static final Duration HOUR = Duration.ofHours(1);

    /** An hour each, save the second student, who does it so often. */
    private static Step.Make make(Help help, int repeats) {
        return new Step.Make("a", "Knot", new StudentTime(HOUR, HOUR, HOUR, List.of(new Work(1, 1), new Work(repeats, 1))), List.of(), help, 1, true);
    }

    @Test
    void leavesAHundredCallsAStudentAsTheyAre() {
        assertThat(Calls.of(make(new Help(2, 3), 50), 2)).isEqualTo(new Calls(2.0 / 3600, 180, 100));
    }

    @Test
    void takesMoreThanThatTogether() {
        Calls calls = Calls.of(make(new Help(60, 0.5), 40), 2);
        assertThat(calls.each()).isCloseTo(100, within(1e-9));
        assertThat(calls.answer()).as("24 of half a minute at once").isCloseTo(24 * 30, within(1e-9));
        assertThat(calls.rate() * calls.answer()).as("as much help in all").isCloseTo(0.5, within(1e-12));
    }

    @Test
    void countsCallsBeyondOneAStep() {
        LessonRequest request = LessonRequest.builder().headcount(2).meeting(TEN, TEN.plusHours(9))
                .step(make(new Help(5, 1), 2)).step(new Step.Make("b", "Cut", StudentTime.ofMinutes(60, 60, 60), List.of(), new Help(0.5, 1), 1, true)).build();
        assertThat(Calls.cost(request, 3)).as("ten calls of the second student, half a call").isEqualTo(2 * (3 + 9));
    }

    /** At 3600 calls an hour for sixty hours one class would take minutes. */
    @Test
    void playsFewerClassesWhereStudentsCallVeryOften() {
        LessonRequest request = LessonRequest.builder().headcount(50).meeting(TEN, TEN.plusHours(9)).step(make(new Help(3600, 0.1), 60)).replications(50_000).build();
        assertThat(ClassSimulation.of(request, Lessons.plan(new ListPlanner().plan(request))).classes()).isEqualTo(1_000);
    }
}
