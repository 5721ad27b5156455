package benchful.core.lesson.time;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClassTimeTest {

    private static Step.Make make(Help help, double share) {
        return new Step.Make("cut", "Cut the cord", StudentTime.ofMinutes(10, 15, 30), List.of(new ToolUse("pliers", 1)), help, share, true);
    }

    private static StepTime time(int pliers, int helpers, int students, Step.Make make) {
        return new ClassTime(List.of(new RoomTool("pliers", pliers)), helpers, 1).of(make, students);
    }

    @Test
    void saysWhereEachMinuteComesFrom() {
        StepTime time = time(4, 0, 12, make(new Help(3, 2), 1));
        assertThat(time.turns()).isEqualTo(3);
        assertThat(time.atOnce()).isEqualTo(4);
        assertThat(time.reasons()).extracting(reason -> reason.sentence().toString()).containsExactly(
                "One student needs 10 to 30 min, usually 15; the last of 12 is expected after 22.5 min.",
                "4 × pliers for 12 students: 3 turns of up to 4 add 33.4 min.",
                "4 students ask 3 times an hour each for 2 min; with 1 person to help a call waits 0.6 min while all are at work, which adds 1.4 min.");
        assertThat(time.length()).isEqualTo(Duration.parse("PT57M16S"));
    }

    @Test
    void takesTurnsExactlyWhereAllAreEquallyQuick() {
        Step.Make saw = new Step.Make("saw", "Saw", StudentTime.ofMinutes(7, 7, 7), List.of(new ToolUse("pliers", 2)), Help.NONE, 1, true);
        assertThat(time(6, 0, 10, saw).length()).isEqualTo(Duration.ofMinutes(28));
        assertThat(time(1000, 0, 10, saw).length()).isEqualTo(Duration.ofMinutes(7));
    }

    @Test
    void movesOnSoonerWhenNotAllMustFinish() {
        assertThat(time(12, 0, 12, make(Help.NONE, 0.75)).length()).isLessThan(time(12, 0, 12, make(Help.NONE, 1)).length());
        assertThat(time(12, 0, 12, make(Help.NONE, 0.75)).reasons().get(0).sentence()).asString().contains("number 9 of 12");
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"0, 0, 1", "4, 3, 1", "2, 2, 0.8", "12, 5, 1", "12, 2, 0.8"})
    void neverTakesLongerWithMoreToolsOrHelpersNorShorterWithMoreStudents(double calls, double minutes, double share) {
        Step.Make cut = make(new Help(calls, minutes), share);
        for (int n = 1; n <= 12; n++) {
            for (int pliers = 1; pliers <= 12; pliers++) {
                Duration length = time(pliers, 0, n, cut).length();
                assertThat(time(pliers + 1, 0, n, cut).length()).as("%d pliers, %d students", pliers + 1, n).isLessThanOrEqualTo(length);
                assertThat(time(pliers, 1, n, cut).length()).as("a helper, %d pliers, %d students", pliers, n).isLessThanOrEqualTo(length);
                assertThat(share < 1 || time(pliers, 0, n + 1, cut).length().compareTo(length) >= 0).as("%d pliers, %d students", pliers, n + 1).isTrue();
            }
        }
    }

    /**
     * Two students who ask 6 times an hour for 5 min: with rho = 1/2 one person has 0 to 2 of them with chances 0.4, 0.4 and 0.2, so a call
     * waits 0.2 / (1.2 / 600 s) = 100 s, and 20 min become 20 x (600 + 300 + 100) / (600 + 300) = 22.2.
     */
    @Test
    void aHelperSparesTheWaitForHelp() {
        Step.Make same = new Step.Make("cut", "Cut", StudentTime.ofMinutes(20, 20, 20), List.of(), new Help(6, 5), 1, true);
        assertThat(time(1, 0, 2, same).length()).isEqualTo(Duration.ofSeconds((long) Math.ceil(20 * 60 * 10 / 9.0)));
        assertThat(time(1, 0, 2, same).reasons().get(1).sentence()).hasToString(
                "2 students ask 6 times an hour each for 5 min; with 1 person to help a call waits 1.7 min while all are at work, which adds 2.2 min.");
        assertThat(time(1, 1, 2, same).length()).isEqualTo(Duration.ofMinutes(20));
        assertThat(time(1, 1, 2, same).reasons().get(1).sentence()).hasToString(
                "2 students ask 6 times an hour each for 5 min; with 2 people to help a call waits 0 min while all are at work, which adds 0 min.");
    }

    /** Six of twelve at once take two turns of about 25 min; eleven at once would keep the last one waiting for the slow first turn. */
    @Test
    void letsAsManyWorkAtOnceAsIsQuickest() {
        Step.Make same = new Step.Make("cut", "Cut", StudentTime.ofMinutes(20, 20, 20), List.of(new ToolUse("pliers", 1)), new Help(12, 1), 1, true);
        assertThat(time(11, 0, 12, same).atOnce()).isEqualTo(6);
        assertThat(time(11, 0, 12, same).length()).isEqualTo(Duration.parse("PT49M30S")).isEqualTo(time(6, 0, 12, same).length());
        assertThat(time(12, 0, 12, same).length()).isEqualTo(Duration.parse("PT40M9S"));
    }

    /** What stands in {@link Helping} as its error, on average over tools, help and spread. */
    @Test
    void agreesWithTheSimulatedClass() {
        double sum = 0;
        double squares = 0;
        int cases = 0;
        for (int[] of : new int[][] {{12, 1, 2}, {12, 2, 2}, {8, 2, 3}, {6, 4, 2}, {11, 4, 2}, {6, 6, 3}}) {
            for (StudentTime one : List.of(StudentTime.ofMinutes(10, 15, 25), StudentTime.ofMinutes(5, 10, 40))) {
                Step.Make make = new Step.Make("cut", "Cut", one, List.of(new ToolUse("pliers", 1)), new Help(of[1], of[2]), 1, true);
                double error = Math.log(time(of[0], 0, 12, make).length().toSeconds() / simulated(make, of[0]));
                sum += error;
                squares += error * error;
                cases++;
            }
        }
        assertThat(sum / cases).isBetween(-0.05, 0.0);
        assertThat(Math.sqrt(squares / cases)).isLessThan(0.06);
    }

    /** Mean finish of two thousand simulated classes [s], which are told rounded up to the minute: half a minute more on average. */
    private static double simulated(Step.Make make, int pliers) {
        LessonRequest request = LessonRequest.builder().headcount(12).meeting(TEN, TEN.plusHours(9)).tool("pliers", pliers)
                .replications(2000).step(make).build();
        List<LocalDateTime> finishes = ClassSimulation.of(request, Lessons.plan(new ListPlanner().plan(request))).finishes();
        double ends = Duration.between(TEN, finishes.get(0)).plus(Duration.between(TEN, finishes.get(20))).toSeconds() / 2.0;
        return (finishes.stream().mapToLong(finish -> Duration.between(TEN, finish).toSeconds()).sum() - ends) / 20 - 30;
    }
}
