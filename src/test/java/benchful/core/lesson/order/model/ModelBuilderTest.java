package benchful.core.lesson.order.model;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What becomes of a request on the time line, in grains of a minute. */
class ModelBuilderTest {
    private static final Duration FIVE = Duration.ofMinutes(5);

    /** Three lie in the room, so six students take all three; a rack is taken as it is. */
    @Test
    void takesToolsAndTheClass() {
        Model model = model(room().headcount(6).tool("pliers", 3).tool("rack", 4)
                .step(new Step.Make("a", "A", StudentTime.ofMinutes(5, 5, 5), List.of(new ToolUse("pliers", 1)), Help.NONE, 1, false))
                .step(new Step.Wait("dry", "Dry", FIVE, Optional.empty(), List.of(new ToolUse("rack", 2)), true))
                .step(new Step.Show("b", "B", FIVE, List.of(new ToolUse("pliers", 2)))));
        assertThat(model.names()).containsExactly("pliers", "rack", "class");
        assertThat(model.capacity()).containsExactly(3, 4, 1);
        assertThat(model.tools()).isEqualTo(2);
        assertThat(model.firstSeat()).isEqualTo(2);
        assertThat(model.activity(0).uses()).containsExactly(3, 0, 1);
        assertThat(model.activity(1).uses()).containsExactly(0, 2, 0);
        assertThat(model.activity(2).uses()).containsExactly(2, 0, 1);
        assertThat(model.activities()).extracting(Activity::presence).containsExactly(Presence.CLASS, Presence.BEGUN_IN_MEETING, Presence.CLASS);
        assertThat(model.activities()).extracting(Activity::atHome).containsExactly(false, true, false);
        assertThat(model.activities()).extracting(Activity::tutorShare).containsExactly(0.0, 0.0, 1.0);
        assertThat(model.with(1, 9).capacity()).containsExactly(3, 9, 1);
        assertThat(model.capacity()).containsExactly(3, 4, 1);
    }

    /** Two groups of three make by turns, and what dries is theirs; each group's pieces take half of the three places, rounded up. */
    @Test
    void givesEachGroupItsOwn() {
        Model model = model(room().headcount(6).groups(2).tool("rack", 3).step(make("a")).step(rack(0, 3)).step(new Step.Show("show", "Show", FIVE)).link("a", "dry").link("dry", "show"));
        assertThat(model.names()).containsExactly("rack", "group 1", "group 2");
        assertThat(model.activities()).extracting(Activity::title).containsExactly("A (group 1)", "A (group 2)", "Dry (group 1)", "Dry (group 2)", "Show");
        assertThat(model.activity(0).uses()).containsExactly(0, 1, 0);
        assertThat(model.activity(1).uses()).containsExactly(0, 0, 1);
        assertThat(model.activity(2).uses()).containsExactly(2, 0, 0);
        assertThat(model.activity(4).uses()).containsExactly(0, 1, 1);
        assertThat(model.gaps()).containsExactly(gap(0, 2, 0), gap(1, 3, 0), gap(2, 4, 0), gap(3, 4, 0));
        assertThat(model.firstSeat()).isEqualTo(1);
    }

    /** Loads of two, one at a time on a rack of one: six pieces take three times five minutes, in all groups together. */
    @Test
    void runsLoadsOneAfterTheOther() {
        Model model = model(room().headcount(6).tool("rack", 1).step(make("a")).step(rack(2, 1)).link("a", "dry"));
        assertThat(model.activity(1).work() / model.activity(0).work()).isEqualTo(3);
        assertThat(model.activity(1).uses()).containsExactly(1, 0);
    }

    /** Each grain is five minutes: the break at 10:55 is the eleventh, and the class is open until noon, the 24th. */
    @Test
    void countsInTheLargestGrain() {
        Model model = model(room().step(make("a")).step(new Step.Show("b", "B", Duration.ofMinutes(20))).link(new Link("a", "b", Duration.ofMinutes(10), Optional.of(Duration.ofMinutes(30))))
                .pause("Tea", TEN.plusMinutes(55), TEN.plusMinutes(65)));
        assertThat(model.activities()).extracting(Activity::work).containsExactly(1L, 4L);
        assertThat(model.gaps()).containsExactly(new Gap(0, false, 1, 2, 6));
        Hours hours = model.hours();
        assertThat(hours.closed()).extracting(part -> part.from() + " to " + part.to()).containsExactly("11 to 13");
        assertThat(hours.bookedEnd()).isEqualTo(24);
        assertThat(hours.lastMeeting()).isZero();
        assertThat(hours.toTime(3)).isEqualTo(TEN.plusMinutes(15));
        assertThat(hours.toLength(3)).hasMinutes(15);
        assertThat(hours.open(10, 14)).isEqualTo(2);
        assertThat(hours.open(14, 10)).isZero();
        assertThat(hours.segments(model.activity(0), 3)).hasSize(1);
        // the end of the break at 65 min, 25 min of work, a gap of 10 min and a second, in whole grains, and one
        assertThat(model.horizon()).isEqualTo((65 + 25 + 10) * 60 / 300 + 1);
        assertThat(model.end(1, 3)).isEqualTo(7);
        assertThat(model.finish(new long[] {0, 3})).isEqualTo(7);
    }

    /** The 20 minutes from 10:50 on go on at 11:05; what may not pause begins there; what nobody works at begins in the break. */
    @Test
    void goesAroundBreaks() {
        Model model = model(room().step(new Step.Make("a", "A", StudentTime.ofMinutes(20, 20, 20))).step(new Step.Show("b", "B", Duration.ofMinutes(20)))
                .step(new Step.Wait("w", "W", Duration.ofMinutes(20))).pause("Tea", TEN.plusMinutes(55), TEN.plusMinutes(65)));
        Hours hours = model.hours();
        assertThat(hours.earliestStart(model.activity(0), 10)).isEqualTo(10);
        assertThat(hours.end(model.activity(0), 10)).isEqualTo(16);
        assertThat(hours.segments(model.activity(0), 10)).extracting(s -> s[0] + " to " + s[1]).containsExactly("10 to 11", "13 to 16");
        assertThat(hours.earliestStart(model.activity(0), 11)).isEqualTo(13);
        assertThat(hours.earliestStart(model.activity(1), 7)).isEqualTo(7);
        assertThat(hours.earliestStart(model.activity(1), 8)).isEqualTo(13);
        assertThat(hours.earliestStart(model.activity(2), 12)).isEqualTo(12);
        assertThat(hours.end(model.activity(2), 10)).isEqualTo(14);
        assertThat(hours.segments(model.activity(2), 10)).hasSize(1);
    }

    /** Behind what is prepared comes what followed it; what follows twice is one link. */
    @Test
    void closesTheGapOfWhatIsPrepared() {
        Model model = model(room().step(new Step.Ahead("kits", "Kits", FIVE)).step(make("a")).step(make("b")).step(make("c"))
                .link("kits", "a").link("a", "b").link("b", "c").link("a", "c").preparedAhead(Set.of("b")));
        assertThat(model.activities()).extracting(activity -> activity.step().id()).containsExactly("a", "c");
        assertThat(model.gaps()).containsExactly(gap(0, 1, 0));
        assertThat(model.size()).isEqualTo(2);
    }

    /** From the end of what is glued, and from the beginning of the wait, what follows begins in time. */
    @Test
    void limitsHowLongAPieceWaits() {
        Model model = model(room().step(make("a")).step(new Step.Wait("w", "W", FIVE, Optional.of(Duration.ofMinutes(15)), List.of(), false)).step(make("b"))
                .link(new Link("a", "w", FIVE, Optional.empty())).link("w", "b"));
        assertThat(model.gaps()).containsExactly(gap(0, 1, 1), gap(1, 2, 0), new Gap(0, false, 2, Gap.NO_LEAST, 4), new Gap(1, true, 2, Gap.NO_LEAST, 3));
        assertThat(model.gaps().get(2).hasLeast()).isFalse();
        assertThat(model.gaps().get(0).hasGreatest()).isFalse();
    }

    @Test
    void knowsWhichDemonstrationComesBeforeWhat() {
        Model model = model(room().step(new Step.Show("s", "S", FIVE)).step(make("a")).step(new Step.Wait("w", "W", FIVE)).link("s", "a").link("s", "w").link("a", "w"));
        assertThat(model.showings()).containsExactly(gap(0, 1, 0));
        Model early = model(room().step(new Step.Show("s", "S", FIVE)).step(make("a")).link(new Link("s", "a", FIVE.negated(), Optional.empty())));
        assertThat(early.showings()).isEmpty();
    }

    /** What is fired for the second meeting is done before it, by the tutor; homework by each; what is collected comes last. */
    @Test
    void workOutsideHasItsOwnHoursAndHands() {
        Model model = model(room().headcount(3).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2)).step(make("a"))
                .step(new Step.Outside("fire", "Fire", StepKind.BETWEEN, FIVE, FIVE)).step(make("b")).step(new Step.Outside("sew", "Sew", StepKind.HOMEWORK, FIVE))
                .step(new Step.Outside("fetch", "Fetch", StepKind.COLLECT, Duration.ZERO)).step(new Step.Wait("cool", "Cool", FIVE)).step(new Step.Wait("set", "Set", FIVE))
                .link("a", "fire").link("fire", "cool").link("cool", "b").link("b", "sew").link("a", "set"));
        assertThat(model.names()).containsExactly("tutor between the meetings", "student at home", "class");
        assertThat(model.activities()).extracting(Activity::presence).containsExactly(Presence.CLASS_WITH_BREAKS, Presence.BEFORE_LAST_MEETING, Presence.CLASS_WITH_BREAKS,
                Presence.OUTSIDE, Presence.AFTER_LAST_MEETING, Presence.NOBODY, Presence.BEGUN_IN_MEETING);
        assertThat(model.activity(1).work()).isEqualTo(4 * model.activity(0).work());
        assertThat(model.activity(1).uses()).containsExactly(1, 0, 0);
        assertThat(model.activity(3).uses()).containsExactly(0, 1, 0);
        assertThat(model.activity(4).uses()).containsExactly(0, 0, 0);
        assertThat(model.activity(1).atHome()).isTrue();
        assertThat(model.outsideAtAnyTime().activity(1).presence()).isEqualTo(Presence.OUTSIDE);
        assertThat(model.outsideAtAnyTime().activity(0).presence()).isEqualTo(Presence.CLASS_WITH_BREAKS);
        Hours hours = model.hours();
        long noon = hours.closed().get(0).from();
        assertThat(hours.earliestStart(model.activity(1), 0)).isEqualTo(noon);
        assertThat(hours.earliestStart(model.activity(3), hours.lastMeeting())).isEqualTo(hours.bookedEnd());
        assertThat(hours.earliestStart(model.activity(4), 0)).isEqualTo(hours.bookedEnd());
        assertThat(hours.earliestStart(model.activity(6), noon + 1)).isEqualTo(hours.lastMeeting());
        assertThat(hours.earliestStart(model.activity(5), noon + 1)).isEqualTo(noon + 1);
        assertThat(hours.earliestStart(model.activity(1), hours.lastMeeting())).isGreaterThan(1_000_000_000L);
    }

    @Test
    void saysWhatIsDoneBeforeTheClass() {
        Preparation preparation = new PreparationTime(room().headcount(4).step(new Step.Ahead("kits", "Kits", Duration.ofMinutes(10), Duration.ofMinutes(2)))
                .step(new Step.Ahead("wash", "Wash", Duration.ofMinutes(10), Duration.ofSeconds(45))).step(new Step.Ahead("room", "Room", FIVE))
                .step(new Step.Show("show", "Show", FIVE))
                        .step(new Step.Make("a", "A", new StudentTime(FIVE, Duration.ofMinutes(9), FIVE, 2, 1))).step(new Step.Wait("dry", "Dry", Duration.ofMinutes(90))).step(make("b"))
                .link("show", "a").link("a", "dry").preparedAhead(Set.of("a")).build()).preparation();
        assertThat(preparation.items()).extracting(item -> item.step() + " " + item.length().toMinutes() + ": " + item.reason().sentence()).containsExactly(
                "kits 18: Done by the tutor before the class: 10 min, and 2 min for each of 4.", "wash 13: Done by the tutor before the class: 10 min, and 45 s for each of 4.",
                "room 5: Done by the tutor before the class.", "show 0: Not needed in the class: what it shows is done.",
                "a 24: 4 pieces at 6 min each: a third of a student's usual time.", "dry 0: Over before the class begins: start it 1 h 30 min ahead.");
    }

    private static LessonRequest.Builder room() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2));
    }

    private static Model model(LessonRequest.Builder request) {
        return new ModelBuilder(request.build()).build();
    }

    private static Step make(String id) {
        return new Step.Make(id, id.toUpperCase(Locale.ROOT), StudentTime.ofMinutes(5, 5, 5));
    }

    /** @param units of the rack that a load takes */
    private static Step.Wait rack(int places, int units) {
        return new Step.Wait("dry", "Dry", FIVE, Optional.empty(), List.of(new ToolUse("rack", units)), places, false);
    }

    private static Gap gap(int from, int to, long least) {
        return new Gap(from, false, to, least, Gap.NO_GREATEST);
    }
}
