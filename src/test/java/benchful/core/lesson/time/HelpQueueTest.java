package benchful.core.lesson.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HelpQueueTest {

    /** Anderson, Sweeney, Williams, An Introduction to Management Science, 13th ed., 11.9: six machines; quoted second-hand, recomputed. */
    @Test
    void reproducesTheSixMachinesOfAnderson() {
        HelpQueue one = HelpQueue.of(6, .05, .5, 1);
        assertThat(one.idle()).isCloseTo(.4845, within(5e-5));
        assertThat(one.queue()).isCloseTo(.3297, within(5e-5));
        assertThat(one.asking()).isCloseTo(.8451, within(5e-5));
        assertThat(one.delay()).isCloseTo(1.279, within(5e-4));
        assertThat(one.time(.5)).isCloseTo(3.279, within(5e-4));
        assertThat(HelpQueue.of(6, .05, .5, 2).delay()).isCloseTo(.0834, within(5e-5));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/lesson-finite-source.csv", useHeadersInDisplayName = true)
    void reproducesTheRepairersOfTaha(int machines, double breakdowns, double repairs, int repairers, double out) {
        assertThat(HelpQueue.of(machines, breakdowns, repairs, repairers).asking()).isCloseTo(out, within(1e-3));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/lesson-finite-queuing-table.csv", useHeadersInDisplayName = true)
    void reproducesTheFiniteQueuingTable(double x, int m, double f) {
        HelpQueue queue = HelpQueue.of(5, x, 1 - x, m);
        assertThat(1 - queue.queue() / 5).isCloseTo(f, within(1e-3));
    }

    /** Calls come at 0.05 from each of those who work, and two people together answer them at 0.5 each: Little's law. */
    @Test
    void keepsThePeopleBusyForAsLongAsTheyAnswer() {
        HelpQueue two = HelpQueue.of(6, .05, .5, 2);
        assertThat(two.busy() * 2 * .5).isCloseTo(.05 * (6 - two.asking()), within(1e-9));
    }

    @Test
    void needsStudentsPeopleAndRates() {
        assertThat(HelpQueue.of(1, 1, 1, 1).queue()).isZero();
        assertThatThrownBy(() -> HelpQueue.of(0, 1, 1, 1)).hasMessageStartingWith("A queue for help needs students");
        assertThatThrownBy(() -> HelpQueue.of(1, 0, 1, 1)).hasMessageStartingWith("A queue for help needs students");
        assertThatThrownBy(() -> HelpQueue.of(1, 1, 0, 1)).hasMessageStartingWith("A queue for help needs students");
        assertThatThrownBy(() -> HelpQueue.of(1, 1, 1, 0)).hasMessageStartingWith("A queue for help needs students");
    }

    @Test
    void waitsLessWithAHelperAndLongerInALargerClass() {
        for (int n = 1; n <= 40; n++) {
            HelpQueue alone = HelpQueue.of(n, 3, 20, 1);
            assertThat(HelpQueue.of(n, 3, 20, 2).delay()).isLessThanOrEqualTo(alone.delay());
            assertThat(HelpQueue.of(n + 1, 3, 20, 1).delay()).isGreaterThan(alone.delay());
        }
    }

    @Test
    void staysFiniteInAHugeAndHelplessClass() {
        HelpQueue queue = HelpQueue.of(1000, 3600, 0.1, 1);
        assertThat(queue.asking()).isCloseTo(1000, within(0.01));
        assertThat(queue.busy()).isCloseTo(1, within(1e-9));
    }
}
