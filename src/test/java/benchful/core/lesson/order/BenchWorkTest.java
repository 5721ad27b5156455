package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.BenchWork.Stretch;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stretches are written as the minutes from ten that are worked, one stretch a string. */
class BenchWorkTest {

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id, StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static LessonPlan row(LessonRequest.Builder lesson, Step... steps) {
        lesson.meeting(TEN, TEN.plusHours(6));
        for (int i = 0; i < steps.length; i++) {
            lesson.step(steps[i]);
            if (i > 0) {
                lesson.link(steps[i - 1].id(), steps[i].id());
            }
        }
        return plan(new ListPlanner().plan(lesson.build()));
    }

    /** 0 to 20 and 20 to 50, ten minutes shown, 60 to 100. */
    private static LessonPlan shown() {
        return row(LessonRequest.builder(), make("fold", 20), make("cut", 30), new Step.Show("show", "show", Duration.ofMinutes(10)), make("sew", 40));
    }

    private static List<String> written(List<Stretch> stretches) {
        return stretches.stream().map(stretch -> String.join(" ", stretch.parts().stream().map(part -> minute(part.start()) + "-" + minute(part.end())).toList())).toList();
    }

    private static long minute(LocalDateTime time) {
        return Duration.between(TEN, time).toMinutes();
    }

    private static List<String> stretches(LessonPlan plan, int rest) {
        return written(BenchWork.of(plan, Duration.ofMinutes(rest)));
    }

    private static List<String> tooLong(LessonPlan plan, int after, int lasts) {
        return written(BenchWork.tooLong(plan, new Rest(Duration.ofMinutes(after), Duration.ofMinutes(lasts))));
    }

    @Test
    void partsWorkWhereARestIsLongEnough() {
        assertThat(stretches(shown(), 10)).containsExactly("0-50", "60-100");
        assertThat(stretches(shown(), 11)).containsExactly("0-50 60-100");
        assertThat(stretches(row(LessonRequest.builder(), new Step.Show("show", "show", Duration.ofMinutes(10))), 10)).isEmpty();
    }

    @Test
    void isTooLongBeyondWhatTheRuleAllows() {
        assertThat(tooLong(shown(), 50, 10)).isEmpty();
        assertThat(tooLong(shown(), 49, 10)).containsExactly("0-50");
        assertThat(tooLong(shown(), 30, 10)).containsExactly("0-50", "60-100");
        assertThat(tooLong(shown(), 89, 11)).containsExactly("0-50 60-100");
        assertThat(tooLong(shown(), 90, 11)).isEmpty();
    }

    @Test
    void countsOnlyWhatIsWorked() {
        Stretch both = BenchWork.of(shown(), Duration.ofMinutes(11)).get(0);
        assertThat(both.start()).isEqualTo(TEN);
        assertThat(both.end()).isEqualTo(TEN.plusMinutes(100));
        assertThat(both.worked()).isEqualTo(Duration.ofMinutes(90));
        assertThat(List.of(0, 50, 51, 90, 95)).extracting(work -> minute(both.done(Duration.ofMinutes(work)))).containsExactly(0L, 50L, 61L, 100L, 100L);
    }

    /** Each of two groups folds for 30 and cuts for 40 minutes after they have drawn together for 20. */
    @Test
    void followsEachGroup() {
        LessonPlan plan = row(LessonRequest.builder().headcount(2).groups(2), new Step.Show("draw", "draw", Duration.ofMinutes(20)), make("fold", 30), make("cut", 40));
        assertThat(stretches(plan, 10)).containsExactly("20-90", "20-90");
    }

    /** One saw for two students: the second saws when the first is done. */
    @Test
    void givesEachGroupItsOwnWork() {
        Step saw = new Step.Make("saw", "saw", StudentTime.ofMinutes(20, 20, 20), List.of(new ToolUse("saw", 1)), Help.NONE, 1, true);
        LessonPlan plan = row(LessonRequest.builder().headcount(2).groups(2).tool("saw", 1), saw);
        assertThat(stretches(plan, 10)).containsExactly("0-20", "20-40");
    }

    @Test
    void isDoneWhenSoMuchOfItIsWorked() {
        Stretch waited = new Stretch(List.of(new Segment(TEN, TEN.plusMinutes(10)), new Segment(TEN.plusMinutes(50), TEN.plusMinutes(90))));
        assertThat(waited.done(Duration.ofMinutes(30))).isEqualTo(TEN.plusMinutes(70));
        assertThat(waited.done(Duration.ofMinutes(10))).isEqualTo(TEN.plusMinutes(10));
        assertThat(waited.worked()).isEqualTo(Duration.ofMinutes(50));
    }
}
