package benchful.core.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a timed plan tells of itself, written by hand. */
class LessonPlanTest {
    private static final LocalDateTime TEN = LocalDateTime.of(2025, 3, 8, 10, 0);
    private static final Duration MINUTE = Duration.ofMinutes(1);

    @Test
    void fitsWhereItEndsNoLaterThanBooked() {
        LessonPlan early = plan(110);
        assertThat(early.fits()).isTrue();
        assertThat(early.over()).isZero();
        assertThat(early.spare()).hasMinutes(10);
        assertThat(early.length()).hasMinutes(110);
        assertThat(plan(120).fits()).isTrue();
        assertThat(plan(120).spare()).isZero();
        LessonPlan late = plan(135);
        assertThat(late.fits()).isFalse();
        assertThat(late.over()).hasMinutes(15);
        assertThat(late.spare()).isZero();
    }

    @Test
    void findsItsBlocks() {
        Block first = block("a", 0, true, 0, 10);
        Block second = block("b", 1, false, 10, 20);
        Block third = block("b", 2, true, 20, 30);
        LessonPlan plan = plan(30, first, second, third);
        assertThat(plan.criticalChain()).containsExactly(first, third);
        assertThat(plan.blocksOf("b")).containsExactly(second, third);
        assertThatThrownBy(() -> new LessonPlan(List.of(), TEN, TEN, TEN, List.of(), new TutorLoad(List.of(), 0, 0), MINUTE.negated(), proof(Pacing.TOGETHER, 0, 0), new Preparation(List.of())))
                .hasMessage("The length of \"idle time\" must be zero or more, not PT-1M");
    }

    @Test
    void sharesStudentsWithItsOwnGroupAndWithTheWholeClass() {
        Block all = block("a", 0, false, 0, 1);
        Block one = block("a", 1, false, 0, 1);
        Block two = block("a", 2, false, 0, 1);
        assertThat(one.sharesStudents(one)).isTrue();
        assertThat(one.sharesStudents(all)).isTrue();
        assertThat(all.sharesStudents(one)).isTrue();
        assertThat(one.sharesStudents(two)).isFalse();
    }

    @Test
    void countsTheTimeWorkedAndMovesWithIt() {
        Block moved = block("a", 0, true, 0, 10).at(List.of(segment(20, 30), segment(40, 55)), Lane.WAIT);
        assertThat(moved.start()).isEqualTo(TEN.plusMinutes(20));
        assertThat(moved.end()).isEqualTo(TEN.plusMinutes(55));
        assertThat(moved.length()).hasMinutes(25);
        assertThat(moved.lane()).isEqualTo(Lane.WAIT);
        assertThat(moved.step()).isEqualTo("a");
    }

    @Test
    void refusesABlockThatCannotBe() {
        assertThat(block("a", 0, true, 5, 5).length()).isZero();
        assertThatThrownBy(() -> block("a", 0, true, 10, 5)).hasMessage("\"Title\" ends at 2025-03-08T10:05 before it starts at 2025-03-08T10:10");
        assertThatThrownBy(() -> block("", 0, true, 0, 5)).hasMessage("A step needs an id and a title, but has \"\" and \"Title\"");
        assertThatThrownBy(() -> block("a", -1, true, 0, 5)).hasMessage("The group must be at least 0, not -1");
        assertThatThrownBy(() -> new Block("a", "Title", StepKind.MAKE, Lane.CLASS, 0, TEN, TEN, List.of(), List.of(), MINUTE.negated(), false, 0, List.of()))
                .hasMessage("The length of \"slack of Title\" must be zero or more, not PT-1M");
        assertThatThrownBy(() -> new Contradiction(List.of(), true)).hasMessage("The number of conflicts must be at least 1, not 0");
    }

    /** The first meeting from ten to noon runs over by five minutes; the work between belongs to neither. */
    @Test
    void givesEachMeetingWhatFallsIntoIt() {
        LocalDateTime next = TEN.plusDays(1);
        Block paused = new Block("paused", "Title", StepKind.MAKE, Lane.CLASS, 0, TEN, next.plusMinutes(15),
                List.of(segment(0, 60), new Segment(next, next.plusMinutes(15))), List.of(), Duration.ZERO, false, 0, List.of());
        Block over = block("over", 0, false, 60, 125);
        Block drying = block("drying", 0, false, 70, 300).at(List.of(segment(70, 300)), Lane.WAIT);
        Block fired = block("fired", 0, false, 200, 260).at(List.of(segment(200, 260)), Lane.OUTSIDE);
        List<MeetingPlan> all = MeetingPlan.all(List.of(new Meeting(TEN, TEN.plusHours(2)), new Meeting(next, next.plusHours(2)), new Meeting(next.plusDays(1), next.plusDays(1).plusHours(1))),
                List.of(paused, over, over, drying, fired));
        assertThat(all).containsExactly(
                new MeetingPlan(1, TEN, TEN.plusHours(2), TEN.plusMinutes(125), List.of("paused", "over", "drying")),
                new MeetingPlan(2, next, next.plusHours(2), next.plusMinutes(15), List.of("paused")),
                new MeetingPlan(3, next.plusDays(1), next.plusDays(1).plusHours(1), next.plusDays(1), List.of()));
        assertThat(all).extracting(MeetingPlan::margin).containsExactly(Duration.ofMinutes(-5), Duration.ofMinutes(105), Duration.ofHours(1));
    }

    @Test
    void holdsABreakThatLiesWhollyInAMeeting() {
        Meeting meeting = new Meeting(TEN, TEN.plusHours(2));
        assertThat(meeting.holds(new Break("tea", TEN, TEN.plusHours(2)))).isTrue();
        assertThat(meeting.holds(new Break("tea", TEN.minusMinutes(1), TEN.plusHours(1)))).isFalse();
        assertThat(meeting.holds(new Break("tea", TEN, TEN.plusMinutes(121)))).isFalse();
    }

    /** Tea touches the end of the first meeting, an empty break counts for nothing, and a break within another is part of it. */
    @Test
    void closesTheRoomInBreaksAndBetweenMeetings() {
        LocalDateTime next = TEN.plusHours(4);
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).meeting(next, next.plusHours(2))
                .pause("late tea", next.plusMinutes(60), next.plusMinutes(80)).pause("tea", TEN.plusMinutes(110), TEN.plusHours(2))
                .pause("none", TEN.plusMinutes(30), TEN.plusMinutes(30)).pause("bell", next.plusMinutes(65), next.plusMinutes(70)).build();
        assertThat(ClosedTime.of(request)).containsExactly(new ClosedTime(110 * 60, 240 * 60, true), new ClosedTime(300 * 60, 320 * 60, false));
    }

    @Test
    void drawsAStepWhereItBelongs() {
        LocalDateTime end = TEN.plusHours(1);
        assertThat(Lane.of(new Step.Show("s", "Show", MINUTE), end, TEN)).isEqualTo(Lane.CLASS);
        assertThat(Lane.of(new Step.Outside("o", "Fire", StepKind.BETWEEN, MINUTE), end, TEN)).isEqualTo(Lane.OUTSIDE);
        assertThat(Lane.of(new Step.Wait("w", "Dry", MINUTE), end, TEN)).isEqualTo(Lane.WAIT);
        Step.Wait rack = new Step.Wait("w", "Dry", MINUTE, Optional.empty(), List.of(new ToolUse("rack", 1)), true);
        assertThat(Lane.of(rack, end, TEN)).isEqualTo(Lane.HOME);
        assertThat(Lane.of(rack, end, end)).isEqualTo(Lane.EQUIPMENT);
    }

    @Test
    void saysHowLongInTheTutorsWords() {
        assertThat(Stream.of(Duration.ZERO, Duration.ofSeconds(1), Duration.ofSeconds(60), Duration.ofMinutes(59), Duration.ofMinutes(60), Duration.ofSeconds(7261), Duration.ofMinutes(145))
                .map(MinuteWords::minutes)).containsExactly("0 min", "1 min", "1 min", "59 min", "1 h", "2 h 02 min", "2 h 25 min");
    }

    @Test
    void saysWhetherAShorterOrderMayExist() {
        assertThat(proof(Pacing.TOGETHER, 60, 60).sentence()).isEqualTo("No order of these steps ends sooner.");
        assertThat(proof(Pacing.OWN_PACE, 60, 60).sentence()).isEqualTo("No order of these steps ends sooner, were all to move on together.");
        assertThat(proof(Pacing.TOGETHER, 50, 60).sentence()).isEqualTo("The best order found; another might end up to 10 min sooner.");
        assertThat(proof(Pacing.OWN_PACE, 50, 60).sentence()).isEqualTo("The best order found; another might end up to 10 min sooner, were all to move on together.");
        assertThat(proof(Pacing.TOGETHER, 50, 60).gap()).hasMinutes(10);
        assertThatThrownBy(() -> proof(Pacing.TOGETHER, 61, 60)).hasMessage("The bound 2025-03-08T11:01 lies after the finish 2025-03-08T11:00");
    }

    @Test
    void saysWhatIsWrongAndWhatToChange() {
        assertThat(new Conflict(Conflict.Kind.CYCLE, List.of("a"), "It is so.", "Change it.").sentence()).isEqualTo("It is so. Change it.");
    }

    @Test
    void totalsWhatIsDoneBeforeTheClass() {
        Reason reason = new Reason(Reason.Subject.PREPARATION, "Why.");
        assertThat(new Preparation(List.of(new Preparation.Item("a", "A", Duration.ofMinutes(5), reason), new Preparation.Item("b", "B", Duration.ofMinutes(7), reason))).total()).hasMinutes(12);
        assertThat(new Preparation(List.of()).total()).isZero();
    }

    /** The glue has dried before the class, and nobody need be shown; paint that must be used in time waits for the class. */
    @Test
    void preparesWithAStepWhatGoesAlong() {
        assertThat(prepared("glue")).containsExactlyInAnyOrder("glue", "dry", "show glue");
        assertThat(prepared("paint")).containsExactlyInAnyOrder("paint");
        assertThat(prepared("glue", "sand")).containsExactlyInAnyOrder("glue", "dry", "show glue", "sand", "settle");
        assertThat(prepared()).isEmpty();
    }

    /** What settles follows both what is dry and what is sanded; the demonstration of painting shows sanding too. */
    private static Set<String> prepared(String... ids) {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(2))
                .step(new Step.Ahead("kits", "Kits", MINUTE)).step(new Step.Wait("rest", "Rest", MINUTE))
                .step(new Step.Show("show glue", "Show", MINUTE)).step(make("glue")).step(new Step.Wait("dry", "Dry", MINUTE))
                .step(new Step.Show("show paint", "Show", MINUTE)).step(make("paint"))
                .step(new Step.Wait("open", "Open", MINUTE, Optional.of(MINUTE), List.of(), false))
                .step(make("sand")).step(new Step.Wait("settle", "Settle", MINUTE))
                .link("kits", "rest").link("kits", "dry").link("show glue", "glue").link("glue", "dry").link("show paint", "paint").link("show paint", "sand").link("paint", "open")
                .link("dry", "settle").link("sand", "settle").preparedAhead(Set.of(ids)).build();
        return request.preparedAhead();
    }

    private static Step make(String id) {
        return new Step.Make(id, id, StudentTime.ofMinutes(1, 1, 1));
    }

    private static LessonPlan plan(int finish, Block... blocks) {
        return new LessonPlan(List.of(blocks), TEN, TEN.plusMinutes(finish), TEN.plusHours(2), List.of(), new TutorLoad(List.of(), 0, 0), Duration.ZERO,
                proof(Pacing.TOGETHER, finish, finish), new Preparation(List.of()));
    }

    private static Proof proof(Pacing pacing, int bound, int finish) {
        return new Proof(Proof.Method.LIST, pacing, TEN.plusMinutes(bound), TEN.plusMinutes(finish));
    }

    private static Block block(String step, int group, boolean critical, int from, int to) {
        return new Block(step, "Title", StepKind.MAKE, Lane.CLASS, group, TEN.plusMinutes(from), TEN.plusMinutes(to), List.of(segment(from, to)), List.of(), Duration.ZERO, critical, 0, List.of());
    }

    private static Segment segment(int from, int to) {
        return new Segment(TEN.plusMinutes(from), TEN.plusMinutes(to));
    }
}
