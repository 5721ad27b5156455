package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeadTimeTest {
    /** 2026-11-27 is a Friday, 28 a Saturday. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-25, 0, true, 2026-11-25", "2026-11-28, 0, true, 2026-11-28", "2026-11-25, 2, true, 2026-11-27", "2026-11-25, 3, true, 2026-11-30",
        "2026-11-27, 1, true, 2026-11-30", "2026-11-28, 1, true, 2026-11-30", "2026-11-25, 10, true, 2026-12-09", "2026-11-25, 3, false, 2026-11-28"
    })
    void arrives(LocalDate ordered, int days, boolean weekdays, LocalDate arrives) {
        assertThat(new LeadTime(days, weekdays).arrives(ordered)).isEqualTo(arrives);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-30, 1, true, 2026-11-29", "2026-11-29, 1, true, 2026-11-26", "2026-12-09, 10, true, 2026-11-25", "2026-11-28, 3, false, 2026-11-25"})
    void isOrderedAtTheLatest(LocalDate needed, int days, boolean weekdays, LocalDate by) {
        assertThat(new LeadTime(days, weekdays).orderBy(needed)).isEqualTo(by);
    }

    @Test
    void arrivesInTimeWhenOrderedOnTheLastDayAndNotADayLater() {
        LongStream.range(0, 60).mapToObj(LocalDate.of(2026, 11, 1)::plusDays).forEach(needed -> {
            for (int days = 0; days < 15; days++) {
                for (boolean weekdays : new boolean[] {true, false}) {
                    LeadTime lead = new LeadTime(days, weekdays);
                    LocalDate by = lead.orderBy(needed);
                    assertThat(lead.arrives(by)).isBeforeOrEqualTo(needed);
                    assertThat(lead.arrives(by.plusDays(1))).isAfter(needed);
                }
            }
        });
    }
}
