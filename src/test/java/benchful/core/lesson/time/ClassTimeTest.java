package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.Reason;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

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
        assertThat(time.reasons()).extracting(Reason::sentence).containsExactly(
                "One student needs 10 to 30 min, usually 15; the last of 12 is expected after 22.5 min.",
                "4 × pliers for 12 students: 3 turns of up to 4 add 33.4 min.",
                "4 students ask 3 times an hour each for 2 min; with 1 person to help a call waits 0.6 min, which adds 1.6 min.");
        assertThat(time.length()).isEqualTo(Duration.ofMinutes(58));
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
        assertThat(time(12, 0, 12, make(Help.NONE, 0.75)).reasons().get(0).sentence()).contains("number 9 of 12");
    }

    @Test
    void neverTakesLongerWithMoreToolsOrHelpersNorShorterWithMoreStudents() {
        Step.Make cut = make(new Help(4, 3), 1);
        for (int n = 1; n <= 24; n++) {
            for (int pliers = 1; pliers <= 24; pliers++) {
                StepTime time = time(pliers, 0, n, make(Help.NONE, 1));
                assertThat(time(pliers + 1, 0, n, make(Help.NONE, 1)).length()).isLessThanOrEqualTo(time.length());
                assertThat(time(pliers, 0, n + 1, make(Help.NONE, 1)).length()).isGreaterThanOrEqualTo(time.length());
            }
            assertThat(time(30, 1, n, cut).length()).isLessThanOrEqualTo(time(30, 0, n, cut).length());
        }
    }
}
