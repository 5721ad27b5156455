package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Show for 11 minutes, then look for 9, at least 5 and at most 15 after; tea from 60 to 70. */
class WindowsTest {

    private static final int SHOW = 0;
    private static final int LOOK = 1;

    private final Model model = new ModelBuilder(LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).pause("Tea", TEN.plusMinutes(60), TEN.plusMinutes(70))
            .step(new Step.Show("show", "show", Duration.ofMinutes(11))).step(new Step.Show("look", "look", Duration.ofMinutes(9)))
            .link(new Link("show", "look", Duration.ofMinutes(5), Optional.of(Duration.ofMinutes(15)))).build()).build();
    private final Windows windows = new Windows(model, new long[2]);

    private void isWindow(int activity, long earliest, long latest, int cause) {
        assertThat(windows.earliest(activity)).isEqualTo(earliest);
        assertThat(windows.latest(activity)).isEqualTo(latest);
        assertThat(windows.cause(activity)).isEqualTo(cause);
    }

    @Test
    void leavesTheTimeTheGapLeavesBehindWhatIsFixed() {
        windows.fix(SHOW, 2);
        assertThat(windows.tighten()).isEqualTo(-1);
        isWindow(SHOW, 2, 2, SHOW);
        isWindow(LOOK, 18, 28, SHOW);
    }

    @Test
    void leavesTheTimeTheGapLeavesBeforeWhatIsFixed() {
        windows.fix(LOOK, 40);
        assertThat(windows.tighten()).isEqualTo(-1);
        isWindow(SHOW, 14, 24, LOOK);
    }

    /** 49 + 11 + 5 is 65, in the break. */
    @Test
    void beginsBehindTheBreak() {
        windows.fix(SHOW, 49);
        assertThat(windows.tighten()).isEqualTo(-1);
        isWindow(LOOK, 70, 75, SHOW);
    }

    /** 37 + 11 + 15 is 63; what lasts for 9 would have to begin by 51, or at 70. */
    @Test
    void isEmptyWhereTheGreatestGapEndsInTheBreak() {
        windows.fix(SHOW, 37);
        windows.endBy(79);
        assertThat(windows.tighten()).isEqualTo(LOOK);
        isWindow(LOOK, 70, 63, SHOW);
    }

    @Test
    void comesFromNothingBeforeAnythingIsFixed() {
        assertThat(windows.tighten()).isEqualTo(-1);
        assertThat(windows.cause(SHOW)).isEqualTo(-1);
        assertThat(windows.cause(LOOK)).isEqualTo(-1);
        assertThat(windows.earliest(LOOK)).isEqualTo(16);
    }

    @Test
    void endsInTime() {
        windows.endBy(60);
        assertThat(windows.tighten()).isEqualTo(-1);
        isWindow(LOOK, 16, 51, -1);
        isWindow(SHOW, 0, 35, -1);
    }

    @Test
    void beginsNoSoonerThanItIsReleased() {
        assertThat(new Windows(model, new long[] {3, 0}).tightened()).containsExactly(3, 19);
        assertThat(new Windows(model, new long[] {55, 0}).tightened()).containsExactly(70, 86);
        assertThat(new Windows(model, new long[] {0, 40}).tightened()).containsExactly(14, 40);
    }
}
