package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TooFewTest {
    @ParameterizedTest
    @CsvSource({"4, 9, 9, 5", "4, 9, 12, 6", "4, 9, 18, 9", "4, 9, 4, 2", "4, 9, 2, 1", "0, 9, 9, 1", "1, 1, 200, 201"})
    void asksForTheFewestThatAreMoreForEach(int there, int students, int next, int more) {
        assertThat(new TooFew(there, students).more(next)).isEqualTo(more);
        assertThat((long) more * students).isGreaterThan((long) there * next);
        assertThat((long) (more - 1) * students).isLessThanOrEqualTo((long) there * next);
    }

    @Test
    void goesByTheClassThatHadTheMostForEach() {
        assertThat(TooFew.atBest(List.of(new TooFew(2, 9), new TooFew(3, 12), new TooFew(1, 5)))).contains(new TooFew(3, 12));
        assertThat(TooFew.atBest(List.of(new TooFew(1, 3), new TooFew(2, 6)))).contains(new TooFew(2, 6));
        assertThat(TooFew.atBest(List.of())).isEmpty();
    }

    @Test
    void refusesNobody() {
        assertThatThrownBy(() -> new TooFew(2, 0)).isInstanceOf(IllegalArgumentException.class).hasMessage("Some tools or none are too few for some students, not 2 for 0");
        assertThatThrownBy(() -> new TooFew(-1, 3)).isInstanceOf(IllegalArgumentException.class);
    }
}
