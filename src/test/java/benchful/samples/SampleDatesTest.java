package benchful.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.samples.SampleFiles.SampleClass;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleDatesTest {
    private static final SampleFiles WRITTEN = SampleFiles.in(Path.of("sample-classes"));

    @ParameterizedTest
    @ValueSource(strings = {"2026-11-30", "2027-02-10", "2027-03-06", "2028-02-29", "2031-12-31", "2035-01-01"})
    void standsAFewWeeksAheadOfTheDayTheyAreLoaded(String day) {
        LocalDate today = LocalDate.parse(day);
        List<SampleClass> classes = WRITTEN.comingAfter(today).classes();
        LocalDate first = classes.stream().filter(c -> c.review() == null).map(SampleDatesTest::begins).min(Comparator.naturalOrder()).orElseThrow();
        assertThat(ChronoUnit.DAYS.between(today, first)).isBetween(21L, 27L);
        assertThat(classes).filteredOn(c -> c.review() != null).isNotEmpty().allMatch(c -> begins(c).isBefore(today));
        for (int i = 0; i < classes.size(); i++) {
            assertThat(begins(classes.get(i)).getDayOfWeek()).isEqualTo(begins(WRITTEN.classes().get(i)).getDayOfWeek());
            assertThat(ChronoUnit.DAYS.between(begins(WRITTEN.classes().get(i)), begins(classes.get(i))))
                    .isEqualTo(ChronoUnit.DAYS.between(begins(WRITTEN.classes().get(0)), begins(classes.get(0))));
        }
    }

    private static LocalDate begins(SampleClass sample) {
        return sample.setup().meetings().get(0).date();
    }
}
