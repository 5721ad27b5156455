package benchful.core.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class StudentTimeTest {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final StudentTime.Work ONCE = new StudentTime.Work(1, 1);
    private static final StudentTime.Work THRICE = new StudentTime.Work(3, 0.5);

    @Test
    void isInOrderWhereNoneIsShorterThanTheOneBefore() {
        assertThat(StudentTime.ofMinutes(1, 1, 1).isInOrder()).isTrue();
        assertThat(StudentTime.ofMinutes(1, 2, 3).isInOrder()).isTrue();
        assertThat(StudentTime.ofMinutes(2, 1, 3).isInOrder()).isFalse();
        assertThat(StudentTime.ofMinutes(1, 3, 2).isInOrder()).isFalse();
    }

    @Test
    void refusesTimesBelowNothingAndWorkOfNobody() {
        assertThat(StudentTime.ofMinutes(0, 0, 0).usual()).isZero();
        assertThatThrownBy(() -> StudentTime.ofMinutes(-1, 1, 1)).hasMessage("The length of \"quick time\" must be zero or more, not PT-1M");
        assertThatThrownBy(() -> StudentTime.ofMinutes(1, -1, 1)).hasMessageContaining("usual time");
        assertThatThrownBy(() -> StudentTime.ofMinutes(1, 1, -1)).hasMessageContaining("slow time");
        assertThatThrownBy(() -> new StudentTime(MINUTE, MINUTE, MINUTE, List.of())).hasMessage("The number of students who do it must be at least 1, not 0");
    }

    @Test
    void refusesWorkThatNobodyCanDo() {
        assertThat(new StudentTime.Work(1, 999.9).scale()).isEqualTo(999.9);
        assertThatThrownBy(() -> new StudentTime.Work(0, 1)).hasMessage("The number of repeats must be at least 1, not 0");
        assertThatThrownBy(() -> new StudentTime.Work(1, 0)).hasMessage("The skill factor must be above 0 and below 1000, not 0.0");
        assertThatThrownBy(() -> new StudentTime.Work(1, 1000)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StudentTime.Work(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Three repeats at half the time are one and a half. Whoever comes beyond the last is as the last. */
    @Test
    void givesEachSeatItsWork() {
        StudentTime time = new StudentTime(MINUTE, MINUTE, MINUTE, List.of(ONCE, THRICE));
        assertThat(time.scale(0)).isEqualTo(1);
        assertThat(time.scale(1)).isEqualTo(1.5);
        assertThat(time.repeats(0)).isEqualTo(1);
        assertThat(time.repeats(2)).isEqualTo(3);
        assertThat(time.scales(3)).containsExactly(1, 1.5, 1.5);
        assertThat(time.of(List.of(1, 0, 4)).work()).containsExactly(THRICE, ONCE, THRICE);
    }

    @Test
    void isOneWorkWhereAllDoTheSame() {
        assertThat(new StudentTime(MINUTE, MINUTE, MINUTE, List.of(THRICE, THRICE)).work()).containsExactly(THRICE);
        assertThat(new StudentTime(MINUTE, MINUTE, MINUTE, 3, 0.5).work()).containsExactly(THRICE);
    }
}
