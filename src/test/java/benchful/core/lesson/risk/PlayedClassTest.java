package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.time.HelpQueue;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Classes of two in which nothing is left to chance: Ann makes one piece and Bob two, and each takes just as long as is written.
 * Times are written in minutes from the beginning, Ann's first.
 */
class PlayedClassTest {
    private static final StudentTime TEN_AND_TWENTY = own(10, 1, 2);

    @Test
    void movesOnTogetherOrEachAlone() {
        LessonRequest request = two(make("a", TEN_AND_TWENTY), make("b", same(5))).link("a", "b").build();
        Played together = new Played(request);
        assertThat(together.done("a")).containsExactly(10, 20);
        assertThat(together.done("b")).containsExactly(25, 25);
        assertThat(together.lost("b")).containsExactly(10, 0);
        assertThat(together.ends()).containsExactly(20L, 25L);
        assertThat(together.risk.extensions()).extracting(Risk.SpareTime::before).containsExactly("B");
        Played alone = new Played(request.toBuilder().pacing(Pacing.OWN_PACE).build());
        assertThat(alone.done("b")).containsExactly(15, 25);
        assertThat(alone.lost("b")).containsExactly(0, 0);
        assertThat(alone.starts()).containsExactly(0L, 10L);
        assertThat(alone.ends()).containsExactly(20L, 25L);
    }

    /** Bob comes second, so the pliers are Ann's until she is done. */
    @Test
    void waitsForToolsInTurn() {
        Played played = new Played(two(new Step.Make("a", "A", same(10), List.of(new ToolUse("pliers", 1)), Help.NONE, 1, true)).tool("pliers", 1).build());
        assertThat(played.done("a")).containsExactly(10, 20);
        assertThat(minutes(played.replication.lost[played.script.toolCause(0)])).containsExactly(0, 10);
        assertThat(played.risk.waiting()).extracting(Risk.Waiting::sentence)
                .containsExactly("A student waits 5.0 min for pliers on average; in nine classes of ten nobody waits longer than 10.0 min.");
        Played enough = new Played(two(new Step.Make("a", "A", same(10), List.of(new ToolUse("pliers", 1)), Help.NONE, 1, true)).tool("pliers", 2).build());
        assertThat(enough.done("a")).containsExactly(10, 10);
        assertThat(enough.risk.waiting()).isEmpty();
    }

    /** Both come for the pliers at ten. */
    @Test
    void countsOnlyTheTimeInLine() {
        Played played = new Played(two(make("a", same(10)), new Step.Make("b", "B", same(5), List.of(new ToolUse("pliers", 1)), Help.NONE, 1, true)).tool("pliers", 1).link("a", "b").build());
        assertThat(played.done("b")).containsExactly(15, 20);
        assertThat(minutes(played.replication.lost[played.script.toolCause(0)])).containsExactly(0, 5);
    }

    /** Eight who call four times an hour for 2.5 minutes: who waits for the tutor, and how long, as in a queue with so small a source, see {@link HelpQueue}. */
    @Test
    void waitsForHelpAsInAQueue() {
        Step.Make make = new Step.Make("a", "A", same(1200), List.of(), new Help(4, 2.5), 1.0 / 8, true);
        Played played = new Played(LessonRequest.builder().headcount(8).replications(5).meeting(TEN, TEN.plusHours(20)).step(make).build());
        double waited = 0;
        double taught = 0;
        for (int number = 0; number < 80; number++) {
            played.replication.play(7, number);
            taught += played.replication.end[0] * 8;
            waited += Arrays.stream(played.replication.lost[played.script.helpCause()]).sum();
        }
        double queue = HelpQueue.of(8, 4, 24, 1).queue() / 8;
        assertThat(waited / taught).isCloseTo(queue, within(queue * 0.05));
    }

    /** One alone is helped at once, and the piece grows meanwhile: hardly more than ten minutes where help is short. */
    @Test
    void losesNothingByHelpThatIsAtHand() {
        Step.Make make = new Step.Make("a", "A", same(10), List.of(), new Help(600, 0.05), 1, true);
        Played played = new Played(LessonRequest.builder().replications(5).meeting(TEN, TEN.plusHours(1)).step(make).build());
        assertThat(played.replication.end[0]).isBetween(599.9, 630.0);
        assertThat(played.replication.lost[played.script.helpCause()]).containsExactly(0);
    }

    /** Two pliers of three each: the other waits though one is free. */
    @Test
    void takesAllToolsOfAStepAtOnce() {
        Played played = new Played(two(new Step.Make("a", "A", same(10), List.of(new ToolUse("pliers", 2), new ToolUse("lamp", 1)), Help.NONE, 1, true)).tool("pliers", 3).tool("lamp", 1).build());
        assertThat(played.done("a")).containsExactly(10, 20);
        assertThat(played.risk.waiting()).extracting(Risk.Waiting::what).containsExactly("lamp");
    }

    @Test
    void movesOnWithoutThoseWhoNeedNotFinish() {
        Played played = new Played(two(new Step.Make("a", "A", TEN_AND_TWENTY, List.of(), Help.NONE, 0.5, true), new Step.Show("b", "B", Duration.ofMinutes(5))).link("a", "b").build());
        assertThat(played.done("a")).containsExactly(10, 10);
        assertThat(played.replication.unfinished[0]).isEqualTo(0.5);
        assertThat(played.risk.blocks().get(0).unfinished()).isEqualTo(0.5);
        assertThat(played.ends()).containsExactly(10L, 15L);
    }

    /** Ann's piece is dry at 25, Bob's at 35. */
    @Test
    void letsEachPieceDryByItself() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), new Step.Wait("dry", "Dry", Duration.ofMinutes(15)), make("b", same(5))).link("a", "dry").link("dry", "b").build());
        assertThat(played.done("b")).containsExactly(30, 40);
        assertThat(played.lost("dry")).containsExactly(5, 15);
        assertThat(played.starts()).containsExactly(0L, 10L, 25L);
        assertThat(played.ends()).containsExactly(20L, 35L, 40L);
        assertThat(played.risk.waiting()).extracting(Risk.Waiting::sentence).containsExactly(
                "A student waits 10.0 min for \"Dry\" to be over on average; in nine classes of ten nobody waits longer than 15.0 min.",
                "A student waits 5.0 min for the others before \"B\" on average; in nine classes of ten nobody waits longer than 10.0 min.");
    }

    @Test
    void putsAllPiecesOnTheRackAtOnce() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), rack(0), make("b", same(5))).tool("rack", 1).link("a", "dry").link("dry", "b").build());
        assertThat(played.starts()).containsExactly(0L, 20L, 35L);
        assertThat(played.done("dry")).containsExactly(35, 35);
        assertThat(played.done("b")).containsExactly(40, 40);
        assertThat(played.lost("dry")).containsExactly(25, 15);
    }

    /** One place: Ann's piece from 10 to 25, Bob's from then to 40. On two racks of one place his goes in as soon as it is ready. */
    @Test
    void loadsTheRackAsPiecesAreReady() {
        LessonRequest.Builder request = two(make("a", TEN_AND_TWENTY), rack(1), make("b", same(5))).tool("rack", 1).link("a", "dry").link("dry", "b");
        Played one = new Played(request.build());
        assertThat(one.done("dry")).containsExactly(25, 40);
        assertThat(one.done("b")).containsExactly(30, 45);
        assertThat(one.ends()).containsExactly(20L, 40L, 45L);
        Played both = new Played(request.tool("rack", 1).build());
        assertThat(both.done("dry")).containsExactly(25, 35);
        assertThat(both.starts()).startsWith(0L, 10L);
    }

    /** The quickest quarter of two is one. */
    @Test
    void gathersWhenAllAreDone() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), new Step.Show("show", "Show it", Duration.ofMinutes(5))).link("a", "show").build());
        assertThat(played.lost("show")).containsExactly(10, 0);
        assertThat(played.starts()).containsExactly(0L, 20L);
        assertThat(played.risk.extensions()).extracting(Risk.SpareTime::sentence)
                .containsExactly("The quickest quarter has 10.0 min to spare before \"Show it\": have more work ready for them.");
        assertThat(played.risk.finishes()).hasSize(21).containsOnly(TEN.plusMinutes(25));
        assertThat(played.risk.onTime()).isEqualTo(1);
        assertThat(new Played(two(make("a", own(9, 1, 2)), new Step.Show("show", "Show it", Duration.ofMinutes(5))).link("a", "show").build()).risk.extensions()).isEmpty();
    }

    @Test
    void isLateByAMinuteAfterTheHours() {
        LessonRequest.Builder request = LessonRequest.builder().headcount(2).replications(5).step(make("a", TEN_AND_TWENTY));
        assertThat(new Played(request.meeting(TEN, TEN.plusMinutes(20)).build()).risk.onTime()).isEqualTo(1);
        assertThat(new Played(request.meetings(List.of()).meeting(TEN, TEN.plusMinutes(19)).build()).risk.onTime()).isZero();
    }

    /** From 15 to 25 is a break: what may pause goes on behind it, what may not is begun there. */
    @Test
    void restsInBreaks() {
        LessonRequest.Builder request = two(make("a", TEN_AND_TWENTY)).pause("Tea", TEN.plusMinutes(15), TEN.plusMinutes(25));
        assertThat(new Played(request.build()).done("a")).containsExactly(10, 30);
        Step.Make whole = new Step.Make("b", "B", same(8), List.of(), Help.NONE, 1, false);
        Played played = new Played(request.steps(List.of(make("a", same(10)), whole)).link("a", "b").build());
        assertThat(played.starts()).containsExactly(0L, 25L);
        assertThat(played.done("b")).containsExactly(33, 33);
    }

    /** What Ann has glued is 15 minutes old when all go on, Bob's 5: as old as it may be. */
    @Test
    void countsPiecesThatGrowTooOld() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), new Step.Show("show", "Show it", Duration.ofMinutes(5)), make("b", same(5)))
                .link("a", "show").link("show", "b").link(new Link("a", "b", Duration.ZERO, Optional.of(Duration.ofMinutes(5)))).build());
        assertThat(played.risk.ageing()).singleElement().satisfies(ageing -> {
            assertThat(ageing.from()).isEqualTo("A");
            assertThat(ageing.to()).isEqualTo("B");
            assertThat(ageing.greatest()).hasMinutes(5);
            assertThat(ageing.classes()).isEqualTo(1);
            assertThat(ageing.students()).isEqualTo(0.5);
            assertThat(ageing.oldest()).hasMinutes(15);
            assertThat(ageing.sentence()).isEqualTo("In 100 of 100 classes at least one piece is older than 5 min after \"A\" when \"B\" begins; in one of ten it is 15 min or more.");
        });
    }

    /** Without anything between, each goes on with the own piece before it is too old. */
    @Test
    void keepsNobodyWaitingWhosePieceAges() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), make("b", same(5))).link(new Link("a", "b", Duration.ZERO, Optional.of(Duration.ofMinutes(5)))).build());
        assertThat(played.done("b")).containsExactly(15, 25);
        assertThat(played.risk.ageing()).isEmpty();
    }

    /** A night between: the tutor fires from noon to three, and the second morning goes on with what is fired. */
    @Test
    void firesBetweenMeetings() {
        Played played = new Played(LessonRequest.builder().headcount(2).replications(5).meeting(TEN, TEN.plusHours(2)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2))
                .step(make("a", TEN_AND_TWENTY)).step(new Step.Outside("fire", "Fire", StepKind.BETWEEN, Duration.ofHours(3))).step(make("b", same(5)))
                .link("a", "fire").link("fire", "b").build());
        assertThat(played.starts()).containsExactly(0L, 120L, 1440L);
        assertThat(played.ends()).containsExactly(20L, 300L, 1445L);
        assertThat(played.done("b")).containsExactly(1445, 1445);
    }

    /** The tutor does one after the other, and what is fetched is fetched when the last meeting is over. */
    @Test
    void doesOneThingAfterTheOtherOutside() {
        Played played = new Played(LessonRequest.builder().headcount(2).replications(5).meeting(TEN, TEN.plusHours(2)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2))
                .step(make("a", TEN_AND_TWENTY)).step(outside("fire", StepKind.BETWEEN, 3)).step(outside("wash", StepKind.BETWEEN, 3)).step(make("b", same(5)))
                        .step(outside("fetch", StepKind.COLLECT, 0))
                .link("a", "fire").link("a", "wash").link("fire", "b").link("wash", "b").build());
        assertThat(played.starts()).containsExactlyInAnyOrder(0L, 120L, 300L, 1440L, 1560L);
    }

    /**
     * Each knots at her own pace and calls at once and all the time, for moments; then the tutor stays beside her for twenty minutes.
     * Ann is through at 10; Bob, half through, calls for nothing until 30, and has ten minutes left.
     */
    @Test
    void answersNobodyWhileBesideAStudent() {
        Step.Make knot = new Step.Make("knot", "Knot", TEN_AND_TWENTY, List.of(), new Help(3600, 0.001), 1, true);
        Step.Make solder = new Step.Make("solder", "Solder", same(20), List.of(), Help.NONE, 1, true, true);
        LessonRequest alone = two(knot, solder).link("knot", "solder").pacing(Pacing.OWN_PACE).build();
        Played played = new Played(alone);
        assertThat(played.done("knot")).containsExactly(10, 40);
        assertThat(played.done("solder")).containsExactly(30, 60);
        assertThat(new Played(alone.toBuilder().helpers(1).build()).done("solder")).as("with one for each").containsExactly(30, 40);
    }

    /** Bob's calls last for hours: Ann, who needs the tutor beside her, waits until the last of them is over. */
    @Test
    void staysBesideNobodyWhileAnsweringACall() {
        Step.Make knot = new Step.Make("knot", "Knot", own(1, 1, 600), List.of(), new Help(60, 120), 1, true);
        Step.Make solder = new Step.Make("solder", "Solder", same(20), List.of(), Help.NONE, 1, true, true);
        LessonRequest alone = LessonRequest.builder().headcount(2).replications(5).meeting(TEN, TEN.plusHours(20)).step(knot).step(solder).link("knot", "solder").pacing(Pacing.OWN_PACE).build();
        int waited = 0;
        for (int number = 0; number < 20; number++) {
            Played played = new Played(alone, number);
            assertThat(played.done("solder")[0] - played.done("knot")[0]).isGreaterThanOrEqualTo(20);
            waited += played.done("solder")[0] - played.done("knot")[0] > 25 ? 1 : 0;
        }
        assertThat(waited).isPositive();
    }

    private static Step outside(String id, StepKind kind, int hours) {
        return new Step.Outside(id, id, kind, Duration.ofHours(hours));
    }

    /** From 20 to 25 all show, and then at once again: only before the first does Ann wait for Bob. */
    @Test
    void waitsOnceForTheOthers() {
        Played played = new Played(two(make("a", TEN_AND_TWENTY), show("first"), show("second")).link("a", "first").link("first", "second").build());
        assertThat(played.lost("first")).containsExactly(10, 0);
        assertThat(played.lost("second")).containsExactly(0, 0);
        Played dried = new Played(two(make("a", TEN_AND_TWENTY), new Step.Wait("dry", "Dry", Duration.ofMinutes(15)), show("first")).link("a", "dry").link("dry", "first").build());
        assertThat(dried.starts()).containsExactly(0L, 10L, 35L);
        assertThat(dried.lost("first")).containsExactly(10, 0);
        assertThat(dried.lost("dry")).containsExactly(15, 15);
    }

    private static Step show(String id) {
        return new Step.Show(id, id, Duration.ofMinutes(5));
    }

    /** Twenty minutes and up to twelve more. */
    @Test
    void talksLongerOrNot() {
        Played played = new Played(two(new Step.Show("talk", "Talk", Duration.ofMinutes(20), Duration.ZERO, Duration.ofMinutes(12), List.of())).build());
        double[] ends = IntStream.range(0, 50).mapToDouble(number -> {
            played.replication.play(7, number);
            return played.replication.end[0] / 60;
        }).sorted().toArray();
        assertThat(ends[0]).isBetween(20.0, 21.0);
        assertThat(ends[49]).isBetween(27.0, 32.0);
    }

    @Test
    void countsFromWhenAPieceIsShownOrLaidOnTheRack() {
        Link soon = new Link("a", "next", Duration.ZERO, Optional.of(Duration.ofMinutes(5)));
        assertThat(new Played(two(make("a", TEN_AND_TWENTY), show("next")).link(soon).build()).risk.ageing()).extracting(Risk.Ageing::oldest).containsExactly(Duration.ofMinutes(10));
        Step rack = new Step.Wait("next", "Next", Duration.ofMinutes(15), Optional.empty(), List.of(new ToolUse("rack", 1)), false);
        assertThat(new Played(two(make("a", TEN_AND_TWENTY), rack).tool("rack", 1).link(soon).build()).risk.ageing()).extracting(Risk.Ageing::oldest).containsExactly(Duration.ofMinutes(10));
    }

    @Test
    void laysWhoIsReadyFirstOnTheRack() {
        Played played = new Played(two(make("a", own(10, 2, 1)), rack(1)).tool("rack", 1).link("a", "dry").build());
        assertThat(played.done("dry")).containsExactly(40, 25);
    }

    /** What is laid on the rack at 25 waits there for what lies on it until 35. */
    @Test
    void waitsForTheRackItself() {
        Step second = new Step.Wait("more", "More", Duration.ofMinutes(15), Optional.empty(), List.of(new ToolUse("rack", 1)), false);
        Played played = new Played(two(make("a", TEN_AND_TWENTY), rack(0), make("b", same(5)), second).tool("rack", 1).link("a", "dry").link("a", "b").link("b", "more").build());
        assertThat(played.starts()).containsExactlyInAnyOrder(0L, 20L, 20L, 35L);
        Step lamp = new Step.Wait("more", "More", Duration.ofMinutes(15), Optional.empty(), List.of(new ToolUse("lamp", 1)), false);
        Played beside = new Played(two(make("a", TEN_AND_TWENTY), rack(0), make("b", same(5)), lamp).tool("rack", 1).tool("lamp", 1).link("a", "dry").link("a", "b").link("b", "more").build());
        assertThat(beside.starts()).containsExactlyInAnyOrder(0L, 20L, 20L, 25L);
    }

    /** Ten minutes from a to b, none from b to c; and five more after what has dried for fifteen. */
    @Test
    void keepsTheGapsBetweenSteps() {
        Link ten = new Link("a", "b", Duration.ofMinutes(10), Optional.empty());
        Played played = new Played(two(make("a", TEN_AND_TWENTY), make("b", same(5)), make("c", same(5))).link(ten).link("b", "c").build());
        assertThat(played.done("b")).containsExactly(25, 35);
        assertThat(played.done("c")).containsExactly(40, 40);
        Link five = new Link("dry", "b", Duration.ofMinutes(5), Optional.empty());
        Played dried = new Played(two(make("a", TEN_AND_TWENTY), new Step.Wait("dry", "Dry", Duration.ofMinutes(15)), make("b", same(5))).link("a", "dry").link(five).build());
        assertThat(dried.done("b")).containsExactly(35, 45);
    }

    /** A class leaves nothing behind for the next on the same arrays. */
    @Test
    void beginsEachClassAnew() {
        LessonRequest request = two(new Step.Make("a", "A", StudentTime.ofMinutes(5, 10, 30), List.of(), Help.NONE, 0.5, true), rack(1), make("b", TEN_AND_TWENTY), show("show"))
                .tool("rack", 1).link("a", "dry").link("dry", "b").link("b", "show").build();
        Replication sixth = new Played(request, 5).replication;
        Replication after = new Played(request).replication;
        for (int number = 1; number < 6; number++) {
            after.play(7, number);
        }
        assertThat(after.end).isEqualTo(sixth.end);
        assertThat(after.lost).isDeepEqualTo(sixth.lost);
        assertThat(after.unfinished).isEqualTo(sixth.unfinished);
    }

    @Test
    void notesHowLongEachStepTakes() {
        LessonRequest request = two(make("a", TEN_AND_TWENTY), new Step.Wait("dry", "Dry", Duration.ofMinutes(15)), make("b", same(5)), new Step.Show("c", "C", Duration.ofMinutes(7)))
                .link("a", "dry").link("dry", "b").link("b", "c").build();
        StepLengths lengths = new StepLengths(request, Lessons.plan(new ListPlanner().plan(request)));
        assertThat(lengths.ofClass(3)).extracting(PlayedClassTest::written).containsExactly(
                "a: 0 then 20, [10, 20] of 2 and 2", "b: 5 then 15, [5, 15] of 2 and 2", "c: 0 then 7, [] of 2 and 0");
        assertThat(lengths.usual()).extracting(length -> length.step() + ": " + Math.round(length.idle() / 60) + " then " + Math.round(length.work() / 60))
                .containsExactly("a: 0 then 20", "b: 5 then 15", "c: 0 then 7");
        assertThat(lengths.usual().get(0).finished()).hasSize(300).startsWith(600.0).endsWith(1200.0);
    }

    private static String written(StepLengths.Length length) {
        return "%s: %d then %d, %s of %d and %d".formatted(length.step(), Math.round(length.idle() / 60), Math.round(length.work() / 60),
                length.finished().stream().map(t -> Math.round(t / 60)).toList(), length.students(), length.needed());
    }

    private static LessonRequest.Builder two(Step... steps) {
        return LessonRequest.builder().headcount(2).replications(5).meeting(TEN, TEN.plusHours(2)).steps(List.of(steps));
    }

    private static Step.Make make(String id, StudentTime time) {
        return new Step.Make(id, id.toUpperCase(Locale.ROOT), time);
    }

    private static Step.Wait rack(int places) {
        return new Step.Wait("dry", "Dry", Duration.ofMinutes(15), Optional.empty(), List.of(new ToolUse("rack", 1)), places, false);
    }

    private static StudentTime same(int minutes) {
        return own(minutes, 1, 1);
    }

    /** @param repeats of Ann, and of Bob */
    private static StudentTime own(int minutes, Integer... repeats) {
        Duration each = Duration.ofMinutes(minutes);
        return new StudentTime(each, each, each, Stream.of(repeats).map(n -> new StudentTime.Work(n, 1)).toList());
    }

    private static int[] minutes(double[] seconds) {
        return Arrays.stream(seconds).mapToInt(s -> (int) Math.round(s / 60)).toArray();
    }

    private static final class Played {
        private final Script script;
        private final Replication replication;
        private final Risk risk;

        Played(LessonRequest request) {
            this(request, 0);
        }

        /** @param number of the class that is played */
        Played(LessonRequest request, int number) {
            LessonPlan plan = Lessons.plan(new ListPlanner().plan(request));
            script = new ScriptWriter(request, plan).script();
            replication = new Replication(script);
            replication.play(7, number);
            risk = ClassSimulation.of(request, plan);
        }

        int[] done(String step) {
            return minutes(replication.done[index(step)]);
        }

        int[] lost(String step) {
            return minutes(replication.lost[index(step)]);
        }

        List<Long> starts() {
            return Arrays.stream(replication.start).mapToObj(s -> Math.round(s / 60)).toList();
        }

        List<Long> ends() {
            return Arrays.stream(replication.end).mapToObj(s -> Math.round(s / 60)).toList();
        }

        private int index(String step) {
            return IntStream.range(0, script.parts().size()).filter(i -> script.parts().get(i).step().equals(step)).findFirst().orElseThrow();
        }
    }
}
