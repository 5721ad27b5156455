package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.BreakPlacer.Movable;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BreakPlacerTest {

    private static final LessonRequest TWO_TALKS = LessonRequest.builder().meeting(TEN, TEN.plusHours(3))
            .step(new Step.Show("first", "First talk", Duration.ofMinutes(40)))
            .step(new Step.Show("second", "Second talk", Duration.ofMinutes(30))).link("first", "second").build();

    @Test
    void waitsForTheEndOfATalkThatCannotBeInterrupted() {
        LessonRequest placed = BreakPlacer.placed(TWO_TALKS, List.of(tea(30, 60)));
        assertThat(placed.breaks()).containsExactly(pause(40));
        assertThat(plan(new ListPlanner().plan(placed)).finish()).isEqualTo(TEN.plusMinutes(80));
    }

    @Test
    void staysWithinItsWindow() {
        LessonRequest placed = BreakPlacer.placed(TWO_TALKS, List.of(tea(20, 35)));
        assertThat(placed.breaks()).singleElement().satisfies(pause -> assertThat(pause.start()).isBetween(TEN.plusMinutes(20), TEN.plusMinutes(35)));
        assertThat(plan(new ListPlanner().plan(placed)).finish()).as("the talks begin behind it").isEqualTo(TEN.plusMinutes(100));
    }

    @Test
    void fallsBetweenStepsRatherThanIntoOne() {
        LessonRequest bench = LessonRequest.builder().meeting(TEN, TEN.plusHours(3))
                .step(new Step.Make("fold", "Fold", StudentTime.ofMinutes(50, 50, 50)))
                .step(new Step.Make("sew", "Sew", StudentTime.ofMinutes(50, 50, 50))).link("fold", "sew").build();
        assertThat(BreakPlacer.placed(bench, List.of(tea(40, 70))).breaks()).containsExactly(pause(50));
    }

    @Test
    void leavesRoomForTheOtherBreaksAndEndsWithTheMeeting() {
        LessonRequest withLunch = TWO_TALKS.toBuilder().pause("Lunch", TEN.plusMinutes(38), TEN.plusMinutes(60)).build();
        List<Break> breaks = BreakPlacer.placed(withLunch, List.of(tea(0, 600))).breaks();
        assertThat(breaks).hasSize(2).isSortedAccordingTo((a, b) -> a.start().compareTo(b.start()));
        assertThat(breaks.get(0).end()).isBeforeOrEqualTo(breaks.get(1).start());
        assertThat(breaks).allSatisfy(pause -> assertThat(pause.end()).isBeforeOrEqualTo(TEN.plusHours(3)));
    }

    @Test
    void isLeftAtItsTimeWhereNothingIsGained() {
        assertThat(BreakPlacer.placed(TWO_TALKS, List.of(tea(100, 160))).breaks()).containsExactly(pause(100));
        assertThat(BreakPlacer.placed(TWO_TALKS, List.of())).isEqualTo(TWO_TALKS);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void neverMakesAClassLongerThanABreakThatStays(long seed) {
        LessonRequest drawn = Lessons.drawn(seed);
        Meeting first = drawn.meetings().get(0);
        LocalDateTime wished = first.start().plusMinutes(20);
        Movable tea = new Movable(new Break("Tea", wished, wished.plusMinutes(10)), wished.plusMinutes(90));
        LessonRequest fixed = drawn.toBuilder().breaks(List.of(tea.pause())).build();
        LessonRequest placed = BreakPlacer.placed(drawn.toBuilder().breaks(List.of()).build(), List.of(tea));
        assertThat(plan(new ListPlanner().plan(placed)).finish()).isBeforeOrEqualTo(plan(new ListPlanner().plan(fixed)).finish());
        assertThat(LessonChecker.faults(placed, plan(new ListPlanner().plan(placed)))).isEmpty();
    }

    private static Movable tea(int from, int latest) {
        return new Movable(pause(from), TEN.plusMinutes(latest));
    }

    private static Break pause(int minute) {
        return new Break("Tea", TEN.plusMinutes(minute), TEN.plusMinutes(minute + 10L));
    }
}
