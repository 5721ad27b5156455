package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A node of a programme of v variables costs v + v x v / 1500 of 150,000, and its beginning as much as 20 nodes. */
class EffortTest {
    @Test
    void allowsALargeProgrammeFewerNodes() {
        assertThat(new Effort().nodes(10)).as("no more than 4000").isEqualTo(4000);
        assertThat(new Effort().nodes(500)).as("150,000 / 666 - 20").isEqualTo(205);
        assertThat(new Effort().nodes(5000)).as("too large to begin with").isLessThan(1);
    }

    @Test
    void isSpentNodeByNode() {
        Effort effort = new Effort();
        effort.spend(500, 100);
        assertThat(effort.nodes(500)).as("(150,000 - 120 x 666) / 666 - 20").isEqualTo(85);
        effort.spend(500, 1000);
        assertThat(effort.nodes(1)).as("nothing is left").isLessThan(1);
    }
}
