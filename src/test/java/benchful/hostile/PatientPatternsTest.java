package benchful.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Quantity;
import benchful.web.Times;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Long texts that nearly fit a pattern are refused at once. */
@Timeout(5)
class PatientPatternsTest {
    private static final String BLANKS = " ".repeat(100_000);

    @Test
    void refusesTimesOfBlanksAtOnce() {
        assertThatThrownBy(() -> Times.parse("1" + BLANKS + "x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Times.parse(BLANKS + "x1")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Times.parse("1".repeat(100_000) + "\n")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesAmountsOfBlanksAtOnce() {
        assertThatThrownBy(() -> Quantity.parse("1" + BLANKS + "!")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void readsTimesAsBefore() {
        assertThat(Times.parse(" - 1 day 2 hours 3 mins 4 seconds ")).isEqualTo(Duration.parse("-P1DT2H3M4S"));
        assertThat(Times.parse("90 s")).isEqualTo(Duration.ofSeconds(90));
        assertThat(Times.parse("20")).isEqualTo(Duration.ofMinutes(20));
        assertThat(Times.parse("1h30min")).isEqualTo(Duration.ofMinutes(90));
    }
}
