package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of the work outside the meetings when students are slow. */
class OutsideWorkTest {

    /** The tutor has 100 min - end of the work - 30 min of drying for her 20 min before the second meeting; else it is the third. */
    private static LessonRequest threeMeetings(int students, int usual) {
        return LessonRequest.builder().headcount(students).replications(10_000).seed(usual)
                .meeting(TEN, TEN.plusMinutes(60)).meeting(TEN.plusMinutes(100), TEN.plusMinutes(160)).meeting(TEN.plusMinutes(220), TEN.plusMinutes(280))
                .step(new Step.Make("glue", "Glue", StudentTime.ofMinutes(usual / 2, usual, usual * 2)))
                .step(new Step.Wait("dry", "Dry", Duration.ofMinutes(30)))
                .step(new Step.Outside("coat", "Coat", StepKind.BETWEEN, Duration.ofMinutes(20)))
                .step(new Step.Make("rub", "Rub", StudentTime.ofMinutes(10, 15, 30)))
                .step(new Step.Together("end", "End", Duration.ofMinutes(5)))
                .link("glue", "dry").link("dry", "coat").link("coat", "rub").link("rub", "end").build();
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"1, 30", "1, 40", "4, 24", "6, 20", "8, 26"})
    void missesTheNextMeetingAsOftenAsAnotherSimulationSays(int students, int usual) {
        LessonRequest request = threeMeetings(students, usual);
        LessonPlan order = Lessons.plan(new ListPlanner().plan(request));
        double[] own = PromisedTest.finishes(request, order);
        PlainSimulator other = new PlainSimulator(request, order, usual);
        double[] theirs = IntStream.range(0, 10_000).mapToDouble(i -> other.finish()).toArray();
        assertThat(share(own, 219)).as("end in the second meeting").isCloseTo(share(theirs, 219), within(0.02));
        for (int minutes : new int[] {125, 135, 145, 240, 250}) {
            assertThat(share(own, minutes)).as("end by %d min", minutes).isCloseTo(share(theirs, minutes), within(0.02));
        }
    }

    private static double share(double[] finishes, int minutes) {
        return Arrays.stream(finishes).filter(finish -> finish <= minutes * 60.0).count() / (double) finishes.length;
    }

    /** A mix of both endings, or the comparison would say little. */
    @Test
    void missesItInSomeClassesOnly() {
        LessonRequest request = threeMeetings(1, 40);
        double second = share(PromisedTest.finishes(request, Lessons.plan(new ListPlanner().plan(request))), 219);
        assertThat(second).isBetween(0.2, 0.95);
    }
}
