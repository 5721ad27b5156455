package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.classes.ClassSetup;
import benchful.core.lesson.advice.Change;
import benchful.samples.SampleFiles;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetupChangeTest {
    private static final ClassSetup STRAND = SampleFiles.in(Path.of("sample-classes")).classes().stream()
            .map(SampleFiles.SampleClass::setup).filter(s -> s.title().startsWith("Knotted strand, Saturday")).findFirst().orElseThrow();

    @Test
    void makesTheChangeThatWasSuggested() {
        assertThat(applied(new Change.Helper()).helpers()).isEqualTo(STRAND.helpers() + 1);
        assertThat(applied(new Change.FewerStudents(2)).headcount()).isEqualTo(STRAND.headcount() - 2);
        assertThat(applied(new Change.MoreTools("knotting awl", 2)).tools()).containsEntry("knotting awl", 2);
        assertThat(applied(new Change.PrepareAhead(List.of("stretch", "hang"), "both")).preparedAhead()).containsExactly("stretch", "hang");
        assertThat(applied(new Change.EarlierStart(Duration.ofMinutes(15))).meetings().get(0).starts()).isEqualTo(LocalTime.of(12, 15));
        assertThat(applied(new Change.LongerBooking(Duration.ofMinutes(30))).meetings().get(0).ends()).isEqualTo(LocalTime.of(18, 30));
    }

    @Test
    void hasNoWordForWhatTheSetupCannotHold() {
        assertThat(SetupChange.word(new Change.OneMoreGroup())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "sabotage 3", "fewer many", "meeting tomorrow"})
    void refusesWhatNobodySuggested(String word) {
        assertThatThrownBy(() -> SetupChange.applied(STRAND, word)).isInstanceOfAny(IllegalArgumentException.class, java.time.DateTimeException.class);
    }

    private static ClassSetup applied(Change change) {
        return SetupChange.applied(STRAND, SetupChange.word(change).orElseThrow());
    }
}
