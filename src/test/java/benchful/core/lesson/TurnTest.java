package benchful.core.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest.Turn;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnTest {
    @Test
    void isWrittenAndRead() {
        List<Turn> order = List.of(new Turn("cut", 1), new Turn("cut", 12), new Turn("clear_up", 0));
        assertThat(Turn.written(order)).isEqualTo("cut/1 cut/12 clear_up");
        assertThat(Turn.read(Turn.written(order))).isEqualTo(order);
        assertThat(Turn.written(List.of())).isEmpty();
    }

    @Test
    void passesOverWhatIsNoTurn() {
        assertThat(Turn.read("  cut/2 \n / ? cut/x cut/1234 -glue glue/ a.b ")).containsExactly(new Turn("cut", 2));
        assertThat(Turn.read("")).isEmpty();
    }
}
