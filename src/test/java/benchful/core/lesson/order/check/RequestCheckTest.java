package benchful.core.lesson.order.check;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RequestCheckTest {

    private static LessonRequest.Builder threeSteps() {
        return LessonRequest.builder().headcount(4).meeting(TEN, TEN.plusHours(2))
                .step(new Step.Show("a", "Show", Duration.ofMinutes(10)))
                .step(new Step.Make("b", "Cut", StudentTime.ofMinutes(10, 10, 10)))
                .step(new Step.Make("c", "Join", StudentTime.ofMinutes(30, 30, 30)));
    }

    private static String refusal(LessonRequest.Builder lesson, Conflict.Kind kind, String... steps) {
        Contradiction refused = (Contradiction) new ListPlanner().plan(lesson.build());
        assertThat(refused.proven()).isTrue();
        Conflict conflict = refused.conflicts().get(0);
        assertThat(conflict.kind()).isEqualTo(kind);
        assertThat(conflict.steps()).containsExactlyInAnyOrder(steps);
        return conflict.sentence();
    }

    private static void isSound(LessonRequest.Builder lesson) {
        assertThat(RequestCheck.conflicts(lesson.build())).isEmpty();
    }

    /** @param greatest [min], null for none */
    private static Link gap(String from, String to, int least, @Nullable Integer greatest) {
        return new Link(from, to, Duration.ofMinutes(least), Optional.ofNullable(greatest).map(Duration::ofMinutes));
    }

    @Test
    void namesTheStepsThatFollowEachOtherInACircle() {
        assertThat(refusal(threeSteps().link("a", "b").link("b", "c").link("c", "b"), Conflict.Kind.CYCLE, "b", "c"))
                .contains("\"Cut\"").contains("\"Join\"").endsWith("follow each other in a circle. Take out one of the links between them.");
        assertThat(refusal(threeSteps().link("a", "b").link("b", "c").link("c", "a"), Conflict.Kind.CYCLE, "a", "b", "c"))
                .startsWith("\"Cut\", \"Join\", \"Show\" follow each other");
        assertThat(refusal(threeSteps().link("b", "b"), Conflict.Kind.CYCLE, "b")).startsWith("\"Cut\" follows itself.");
        refusal(threeSteps().step(new Step.Wait("d", "Dry", Duration.ofMinutes(5))).link("b", "c").link("c", "b").link("c", "d"), Conflict.Kind.CYCLE, "b", "c");
    }

    @Test
    void takesStepsThatMayOverlapForNoCircle() {
        isSound(threeSteps().link(gap("b", "c", -10, null)).link(gap("c", "b", -10, null)));
    }

    @Test
    void namesALinkWhoseGreatestGapIsSmallerThanTheLeast() {
        assertThat(refusal(threeSteps().link(new Link("a", "b", Duration.ofMinutes(20), Optional.of(Duration.ofMinutes(10)))),
                Conflict.Kind.GAP_REVERSED, "a", "b"))
                .isEqualTo("Between \"Show\" and \"Cut\" the gap is at least 20 min but at most 10 min. "
                        + "Make the greatest gap as long as the least, or leave it out.");
    }

    @Test
    void namesTheStepsWhoseGapsCannotAllBeKept() {
        refusal(threeSteps().link("a", "b").link("b", "c")
                .link(new Link("a", "c", Duration.ZERO, Optional.of(Duration.ofMinutes(5)))), Conflict.Kind.GAPS_IMPOSSIBLE, "a", "b", "c");
    }

    /** Cutting takes 10 min, so that long at least lies between showing and joining. */
    @Test
    void keepsAGreatestGapThatIsJustLongEnough() {
        LessonRequest.Builder inTurn = threeSteps().link("a", "b").link("b", "c");
        assertThat(new ListPlanner().plan(inTurn.link(gap("a", "c", 0, 10)).build())).isInstanceOf(Planned.class);
        assertThat(refusal(threeSteps().link("a", "b").link("b", "c").link(gap("a", "c", 0, 9)), Conflict.Kind.GAPS_IMPOSSIBLE, "a", "b", "c"))
                .endsWith("have gaps that cannot all be kept, whatever the order. Lengthen a greatest gap, shorten a least gap, or shorten a step between them.");
    }

    /** From the end of showing to the start of joining cutting alone, of 10 min, would have to last 30; with 20 min of tea in it, it does. */
    @Test
    void stretchesAStepOnlyByABreak() {
        LessonRequest.Builder seamless = threeSteps().link(gap("a", "b", 0, 0)).link(gap("b", "c", 0, 0)).link(gap("a", "c", 30, null));
        refusal(seamless, Conflict.Kind.GAPS_IMPOSSIBLE, "a", "b", "c");
        assertThat(new ListPlanner().plan(seamless.pause("tea", TEN.plusMinutes(15), TEN.plusMinutes(35)).build())).isInstanceOf(Planned.class);
    }

    @Test
    void namesAToolThatIsNotInTheRoomOrTooFew() {
        Step.Make saw = new Step.Make("d", "Saw", StudentTime.ofMinutes(5, 5, 5), List.of(new ToolUse("saw", 2)),
                benchful.core.lesson.Help.NONE, 1, true);
        assertThat(refusal(threeSteps().step(saw), Conflict.Kind.TOOL_MISSING, "d"))
                .isEqualTo("\"Saw\" uses 2 × saw for each student, which is not in the room. Add saw to the room, or take it out of the step.");
        assertThat(refusal(threeSteps().step(saw).tool("saw", 1), Conflict.Kind.TOOL_SHORT, "d")).contains("but the room has 1");
    }

    @Test
    void refusesABreakLongerThanTheClassAndOneOutsideIt() {
        assertThat(refusal(threeSteps().pause("lunch", TEN, TEN.plusHours(3)), Conflict.Kind.BREAK_WRONG))
                .isEqualTo("The break at 10:00 takes 3 h but the class has only 2 h. Shorten the break, or book more hours.");
        assertThat(refusal(threeSteps().pause("lunch", TEN.plusHours(3), TEN.plusHours(4)), Conflict.Kind.BREAK_WRONG))
                .contains("lies outside the class's hours");
        assertThat(refusal(threeSteps().pause("lunch", TEN.plusHours(1), TEN), Conflict.Kind.BREAK_WRONG)).contains("not after its start");
        assertThat(refusal(threeSteps().pause("lunch", TEN, TEN.plusHours(2)), Conflict.Kind.BREAK_WRONG)).contains("takes 2 h but the class has only 2 h");
        assertThat(refusal(threeSteps().pause("tea", TEN.minusMinutes(10), TEN.plusMinutes(10)), Conflict.Kind.BREAK_WRONG))
                .isEqualTo("The break from 2025-03-08 09:50 to 2025-03-08 10:10 lies outside the class's hours. Move it inside a meeting.");
        refusal(threeSteps().pause("tea", TEN.plusMinutes(110), TEN.plusMinutes(130)), Conflict.Kind.BREAK_WRONG);
    }

    @Test
    void letsABreakBeginAndEndWithTheMeeting() {
        isSound(threeSteps().pause("coats", TEN, TEN.plusMinutes(5)).pause("brooms", TEN.plusMinutes(110), TEN.plusHours(2)));
    }

    @Test
    void refusesHoursThatRunBackwardsOrOverlap() {
        assertThat(refusal(LessonRequest.builder().meeting(TEN, TEN.minusHours(1)), Conflict.Kind.HOURS_WRONG))
                .isEqualTo("Meeting 1 ends at 2025-03-08 09:00, not after its start at 2025-03-08 10:00. Enter an end after the start.");
        assertThat(refusal(threeSteps().meeting(TEN.plusHours(1), TEN.plusHours(3)), Conflict.Kind.HOURS_WRONG))
                .isEqualTo("Meeting 2 starts at 2025-03-08 11:00, before the meeting before it ends. Enter the meetings in order, without overlap.");
        isSound(threeSteps().meeting(TEN.plusHours(2), TEN.plusHours(3)));
    }

    @Test
    void namesUnknownAndDoubledSteps() {
        refusal(threeSteps().link("a", "z"), Conflict.Kind.UNKNOWN_STEP, "z");
        refusal(threeSteps().preparedAhead(Set.of("y")), Conflict.Kind.UNKNOWN_STEP, "y");
        refusal(threeSteps().step(new Step.Ahead("a", "Cut leather", Duration.ZERO)), Conflict.Kind.DUPLICATE_STEP, "a");
    }

    @Test
    void refusesTimesAndWaitsInTheWrongOrder() {
        refusal(threeSteps().step(new Step.Make("d", "Sand", StudentTime.ofMinutes(9, 5, 12))), Conflict.Kind.TIMES_REVERSED, "d");
        refusal(threeSteps().step(new Step.Wait("d", "Dry", Duration.ofMinutes(30), Optional.of(Duration.ofMinutes(10)), List.of(), false)),
                Conflict.Kind.WAIT_REVERSED, "d");
        isSound(threeSteps().step(new Step.Wait("d", "Dry", Duration.ofMinutes(30), Optional.of(Duration.ofMinutes(30)), List.of(), false)));
    }

    @Test
    void refusesToPrepareWhatNeedsTheClassOrFollowsItsWork() {
        refusal(threeSteps().preparedAhead(Set.of("a")), Conflict.Kind.AHEAD_AFTER_CLASS, "a");
        refusal(threeSteps().link("b", "c").preparedAhead(Set.of("c")), Conflict.Kind.AHEAD_AFTER_CLASS, "b", "c");
        refusal(threeSteps().step(new Step.Ahead("d", "Cut blanks", Duration.ofMinutes(5))).link("b", "d"), Conflict.Kind.AHEAD_AFTER_CLASS,
                "b", "d");
    }

    @Test
    void preparesAShowOnlyWithAllThatItShows() {
        isSound(threeSteps().link("a", "b").preparedAhead(Set.of("a", "b")));
        assertThat(refusal(threeSteps().link("a", "b").link("a", "c").preparedAhead(Set.of("a", "b")), Conflict.Kind.AHEAD_AFTER_CLASS, "a"))
                .isEqualTo("\"Show\" needs the class and cannot be done ahead. Prepare only steps that students make, or waits.");
    }

    /** The tutor who prepares a step needs not be shown it; what is fired between meetings is fired for the tutor too. */
    @Test
    void preparesBehindAShowButNotBehindWorkOutsideTheMeetings() {
        isSound(threeSteps().link("a", "b").preparedAhead(Set.of("b")));
        LessonRequest.Builder fired = threeSteps().step(new Step.Outside("f", "Fire", StepKind.BETWEEN, Duration.ofMinutes(30))).link("f", "b");
        refusal(fired.preparedAhead(Set.of("b")), Conflict.Kind.AHEAD_AFTER_CLASS, "f", "b");
        assertThat(refusal(fired.preparedAhead(Set.of("f")), Conflict.Kind.AHEAD_AFTER_CLASS, "f"))
                .startsWith("\"Fire\" has its time outside the meetings and cannot be done ahead.");
    }

    @Test
    void refusesMoreGroupsThanStudents() {
        refusal(threeSteps().groups(5), Conflict.Kind.TOO_MANY_GROUPS);
    }

    @Test
    void saysSoWhereNoOrderKeepsAGreatestGap() {
        List<ToolUse> kiln = List.of(new ToolUse("kiln", 1));
        Optional<Duration> atOnce = Optional.of(Duration.ZERO);
        LessonRequest.Builder lesson = threeSteps().tool("kiln", 1)
                .step(new Step.Wait("d", "Fire the bowls", Duration.ofMinutes(20), Optional.empty(), kiln, false))
                .step(new Step.Wait("e", "Fire the tiles", Duration.ofMinutes(20), Optional.empty(), kiln, false))
                .link(new Link("b", "d", Duration.ZERO, atOnce)).link(new Link("b", "e", Duration.ZERO, atOnce));
        Contradiction refused = (Contradiction) new ListPlanner().plan(lesson.build());
        assertThat(refused.conflicts()).extracting(Conflict::kind).containsExactly(Conflict.Kind.NO_ORDER);
        assertThat(refused.conflicts().get(0).steps()).containsExactly("b", "d", "e");
        assertThat(refused.proven()).isFalse();
    }
}
