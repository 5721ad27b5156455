package benchful.core.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class StepTest {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration LESS = Duration.ofMinutes(-1);
    private static final ToolUse PLIERS = new ToolUse("pliers", 1);

    @Test
    void isNamed() {
        refuses(() -> new Step.Show("", "Show", MINUTE), "A step needs an id and a title, but has \"\" and \"Show\"");
        refuses(() -> new Step.Show("s", " ", MINUTE), "A step needs an id and a title, but has \"s\" and \" \"");
        refuses(() -> new Step.Make("m", "", StudentTime.ofMinutes(1, 1, 1)), "A step needs an id and a title, but has \"m\" and \"\"");
        refuses(() -> new Step.Wait("w", "", MINUTE), "A step needs an id and a title, but has \"w\" and \"\"");
        refuses(() -> new Step.Together("t", "", MINUTE), "A step needs an id and a title, but has \"t\" and \"\"");
        refuses(() -> new Step.Ahead("a", "", MINUTE), "A step needs an id and a title, but has \"a\" and \"\"");
        refuses(() -> new Step.Outside("o", "", StepKind.HOMEWORK, MINUTE), "A step needs an id and a title, but has \"o\" and \"\"");
    }

    @Test
    void lastsNoLessThanNothing() {
        String refusal = "The length of \"Step\" must be zero or more, not PT-1M";
        refuses(() -> new Step.Show("s", "Step", LESS), refusal);
        refuses(() -> new Step.Show("s", "Step", MINUTE, LESS, List.of()), refusal);
        refuses(() -> new Step.Show("s", "Step", MINUTE, MINUTE, LESS, List.of()), refusal);
        refuses(() -> new Step.Together("s", "Step", LESS), refusal);
        refuses(() -> new Step.Together("s", "Step", MINUTE, LESS, List.of()), refusal);
        refuses(() -> new Step.Together("s", "Step", MINUTE, MINUTE, LESS, List.of()), refusal);
        refuses(() -> new Step.Wait("s", "Step", LESS), refusal);
        refuses(() -> new Step.Wait("s", "Step", MINUTE, Optional.of(LESS), List.of(), false), refusal);
        refuses(() -> new Step.Ahead("s", "Step", LESS), refusal);
        refuses(() -> new Step.Ahead("s", "Step", MINUTE, LESS), refusal);
        refuses(() -> new Step.Outside("s", "Step", StepKind.BETWEEN, LESS), refusal);
        refuses(() -> new Step.Outside("s", "Step", StepKind.BETWEEN, MINUTE, LESS), refusal);
        assertThat(new Step.Show("s", "Step", Duration.ZERO).length()).isZero();
    }

    @Test
    void holdsNoFewerPlacesThanNone() {
        assertThat(new Step.Wait("s", "Step", MINUTE, Optional.empty(), List.of(), 0, false).places()).isZero();
        refuses(() -> new Step.Wait("s", "Step", MINUTE, Optional.empty(), List.of(), -1, false), "The places of a load must be at least 0, not -1");
    }

    @Test
    void isDoneOutsideOnlyWhereItsKindSaysSo() {
        assertThat(new Step.Outside("s", "Step", StepKind.COLLECT, Duration.ZERO).uses()).isEmpty();
        refuses(() -> new Step.Outside("s", "Step", StepKind.WAIT, MINUTE), "\"Step\" is done in the class, not outside the meetings");
    }

    @Test
    void tellsItsKindItsTimesAndItsTools() {
        Step show = new Step.Show("s", "Step", MINUTE, Duration.ofMinutes(2), Duration.ofMinutes(3), List.of(PLIERS));
        assertThat(show.kind()).isEqualTo(StepKind.SHOW);
        assertThat(show.perStudent()).hasMinutes(2);
        assertThat(show.over()).hasMinutes(3);
        assertThat(show.uses()).containsExactly(PLIERS);
        Step together = new Step.Together("s", "Step", MINUTE, List.of(PLIERS));
        assertThat(together.kind()).isEqualTo(StepKind.TOGETHER);
        assertThat(together.uses()).containsExactly(PLIERS);
        Step make = new Step.Make("s", "Step", StudentTime.ofMinutes(1, 2, 3));
        assertThat(make.kind()).isEqualTo(StepKind.MAKE);
        assertThat(make.length()).hasMinutes(2);
        assertThat(make.perStudent()).isZero();
        assertThat(make.over()).isZero();
        Step ahead = new Step.Ahead("s", "Step", MINUTE, Duration.ofMinutes(2));
        assertThat(ahead.kind()).isEqualTo(StepKind.AHEAD);
        assertThat(ahead.perStudent()).hasMinutes(2);
        assertThat(ahead.uses()).isEmpty();
        Step wait = new Step.Wait("s", "Step", MINUTE, Optional.empty(), List.of(PLIERS), true);
        assertThat(wait.kind()).isEqualTo(StepKind.WAIT);
        assertThat(wait.length()).hasMinutes(1);
        assertThat(wait.uses()).containsExactly(PLIERS);
    }

    /** Nine in ten of twelve are ten and eight tenths, so eleven; of ten just nine; and always somebody. */
    @Test
    void goesOnWhenItsShareOfTheStudentsIsDone() {
        assertThat(finishing(0.9).mustFinish(12)).isEqualTo(11);
        assertThat(finishing(0.9).mustFinish(10)).isEqualTo(9);
        assertThat(finishing(1).mustFinish(7)).isEqualTo(7);
        assertThat(finishing(0.01).mustFinish(1)).isEqualTo(1);
        assertThat(finishing(0.5).mustFinish(0)).isEqualTo(1);
        refuses(() -> finishing(0), "The share that finishes \"Step\" must be above 0 and at most 1");
        refuses(() -> finishing(1.01), "The share that finishes \"Step\" must be above 0 and at most 1");
    }

    @Test
    void isTheSameStepForThoseWhoStay() {
        Step.Make make = new Step.Make("s", "Step", new StudentTime(MINUTE, MINUTE, MINUTE, List.of(new StudentTime.Work(1, 1), new StudentTime.Work(2, 1))),
                List.of(PLIERS), new Help(1, 2), 0.9, false);
        assertThat(make.of(List.of(1))).isEqualTo(new Step.Make("s", "Step", new StudentTime(MINUTE, MINUTE, MINUTE, 2, 1), List.of(PLIERS), new Help(1, 2), 0.9, false));
    }

    @Test
    void asksForHelpWithinReason() {
        assertThat(new Help(0, 3).isNone()).isTrue();
        assertThat(new Help(3, 0).isNone()).isTrue();
        assertThat(new Help(3600, 86_400).isNone()).isFalse();
        assertThat(Help.NONE.isNone()).isTrue();
        String refusal = "Help must be 0 to 3600 calls an hour of 0 to 86400 minutes, not ";
        refuses(() -> new Help(3601, 1), refusal + "3601.0 calls of 1.0 minutes");
        refuses(() -> new Help(-1, 1), refusal + "-1.0 calls of 1.0 minutes");
        refuses(() -> new Help(1, 86_401), refusal + "1.0 calls of 86401.0 minutes");
        refuses(() -> new Help(1, -1), refusal + "1.0 calls of -1.0 minutes");
    }

    @Test
    void usesToolsThatHaveANameAndANumber() {
        refuses(() -> new ToolUse(" ", 1), "A tool that is used needs a name");
        refuses(() -> new ToolUse("pliers", 0), "The number of \"pliers\" used must be at least 1, not 0");
        refuses(() -> new RoomTool("", 1), "A tool in the room needs a name");
        refuses(() -> new RoomTool("pliers", -1), "The number of \"pliers\" in the room must be at least 0, not -1");
        assertThat(new RoomTool("pliers", 0).count()).isZero();
    }

    @Test
    void knowsWhatEachKindAsks() {
        assertThat(StepKind.values()).filteredOn(StepKind::needsClass).containsExactly(StepKind.SHOW, StepKind.MAKE, StepKind.TOGETHER);
        assertThat(StepKind.values()).filteredOn(StepKind::isOwnWork).containsExactly(StepKind.MAKE);
        assertThat(StepKind.values()).filteredOn(StepKind::isGathering).containsExactly(StepKind.SHOW, StepKind.TOGETHER);
        assertThat(StepKind.values()).filteredOn(StepKind::isUnattended).containsExactly(StepKind.WAIT);
        assertThat(StepKind.values()).filteredOn(StepKind::isBeforeClass).containsExactly(StepKind.AHEAD);
        assertThat(StepKind.values()).filteredOn(StepKind::mayBePrepared).containsExactly(StepKind.MAKE, StepKind.WAIT);
        assertThat(StepKind.values()).filteredOn(StepKind::isOutside).containsExactly(StepKind.BETWEEN, StepKind.HOMEWORK, StepKind.COLLECT);
        assertThat(StepKind.values()).filteredOn(StepKind::growsWithStudents).containsExactly(StepKind.SHOW, StepKind.TOGETHER, StepKind.AHEAD, StepKind.BETWEEN);
    }

    private static Step.Make finishing(double share) {
        return new Step.Make("s", "Step", StudentTime.ofMinutes(1, 1, 1), List.of(), Help.NONE, share, true);
    }

    private static void refuses(ThrowingCallable made, String why) {
        assertThatThrownBy(made).isInstanceOf(IllegalArgumentException.class).hasMessage(why);
    }
}
