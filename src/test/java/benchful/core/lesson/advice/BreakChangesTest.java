package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Forty minutes are modelled, it sets for thirty, and is finished in twenty; tea is at 10:20 for ten minutes, and all ends at 11:40. */
class BreakChangesTest {
    private static final LocalTime TEA = LocalTime.of(10, 20);

    private static LessonRequest.Builder tile() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(30))
                .step(new Step.Make("model", "Model", StudentTime.ofMinutes(40, 40, 40)))
                .step(new Step.Wait("set", "Let it set", Duration.ofMinutes(30)))
                .step(new Step.Make("finish", "Finish", StudentTime.ofMinutes(20, 20, 20))).link("model", "set").link("set", "finish");
    }

    /** While it sets, from 10:40 to 11:10, tea costs nothing; five minutes of it beyond cost five. */
    @Test
    void movesABreakToWhereItHoldsUpLess() {
        assertThat(BreakChanges.of(tile().build(), TEA)).containsExactly(moved(40), moved(45), moved(50), moved(55), moved(60), moved(65),
                new BreakChange.Shortened(TEA, Duration.ofMinutes(10), Duration.ofMinutes(5)));
    }

    @Test
    void movesNoBreakIntoAnother() {
        LessonRequest lunch = tile().pause("Lunch", TEN.plusMinutes(50), TEN.plusMinutes(60)).build();
        assertThat(BreakChanges.of(lunch, TEA)).filteredOn(BreakChange.Moved.class::isInstance).containsExactly(moved(40), moved(60), moved(65));
    }

    /** Behind the last step tea would cost nothing, but it would be none. */
    @Test
    void leavesABreakWithinTheWork() {
        LessonRequest bench = LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(30))
                .step(new Step.Make("model", "Model", StudentTime.ofMinutes(40, 40, 40))).build();
        assertThat(BreakChanges.of(bench, TEA)).containsExactly(new BreakChange.Shortened(TEA, Duration.ofMinutes(10), Duration.ofMinutes(5)));
    }

    /**
     * Half an hour at 10:20 amid forty minutes of modelling; it sets for a quarter from 10:40 and again from 11:15: each half costs
     * nothing there, the whole break costs fifteen minutes wherever it stands.
     */
    @Test
    void splitsALongBreakWhereEachHalfHoldsUpLess() {
        List<Change> splits = splits(twice(30));
        assertThat(splits).contains(new BreakChange.Split(TEA, LocalTime.of(10, 40), minutes(15), LocalTime.of(11, 15), minutes(15))).hasSizeLessThanOrEqualTo(4);
        assertThat(splits.get(0).apply(twice(30)).breaks()).extracting(pause -> Duration.between(pause.start(), pause.end())).containsExactly(minutes(15), minutes(15));
        assertThat(splits(twice(25))).allMatch(split -> ((BreakChange.Split) split).first().equals(minutes(15)) && ((BreakChange.Split) split).second().equals(minutes(10)));
    }

    /** Ten minutes are the least of a rest that is one of two, and a tea that can be moved as well stays whole. */
    @Test
    void splitsNoShortBreakNorOneThatCanBeMovedAsWell() {
        assertThat(splits(twice(15))).isEmpty();
        assertThat(splits(tile().breaks(List.of()).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(50)).build())).isEmpty();
    }

    private static List<Change> splits(LessonRequest request) {
        return BreakChanges.of(request, TEA).stream().filter(BreakChange.Split.class::isInstance).toList();
    }

    private static LessonRequest twice(int tea) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(20L + tea))
                .step(new Step.Make("model", "Model", StudentTime.ofMinutes(40, 40, 40))).step(new Step.Wait("set", "Let it set", minutes(15)))
                .step(new Step.Make("turn", "Turn it", StudentTime.ofMinutes(20, 20, 20))).step(new Step.Wait("harden", "Let it harden", minutes(15)))
                .step(new Step.Make("finish", "Finish", StudentTime.ofMinutes(20, 20, 20)))
                .link("model", "set").link("set", "turn").link("turn", "harden").link("harden", "finish").build();
    }

    private static Duration minutes(int minutes) {
        return Duration.ofMinutes(minutes);
    }

    @Test
    void leavesHalfOfABreakAndFiveMinutes() {
        assertThat(shortened(60)).containsExactly(55, 50, 45, 30);
        assertThat(shortened(25)).containsExactly(20, 15);
        assertThat(shortened(9)).isEmpty();
    }

    @Test
    void knowsNothingOfABreakThatIsNotThere() {
        assertThat(BreakChanges.of(tile().build(), LocalTime.of(10, 21))).isEmpty();
    }

    private static List<Integer> shortened(int minutes) {
        LessonRequest request = tile().breaks(List.of()).pause("Tea", TEN.plusMinutes(20), TEN.plusMinutes(20L + minutes)).build();
        Stream<Change> shorter = BreakChanges.of(request, TEA).stream().filter(BreakChange.Shortened.class::isInstance);
        return shorter.map(change -> (int) ((BreakChange.Shortened) change).to().toMinutes()).toList();
    }

    private static Change moved(int minute) {
        return new BreakChange.Moved(TEA, LocalTime.of(10, 0).plusMinutes(minute));
    }
}
