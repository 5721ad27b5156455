package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.time.LocalTime;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What each change makes of a request, what it is called, and how much it asks. */
class ChangeTest {
    private static final Duration QUARTER = Duration.ofMinutes(15);
    private static final Period WEEK = Period.ofWeeks(1);
    private static final LessonRequest REQUEST = Lessons.pendant().helpers(1).groups(2).tool("lamp", 1)
            .meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2)).pause("Tea", TEN.plusHours(1), TEN.plusMinutes(70))
            .pause("Cake", TEN.plusDays(1).plusHours(1), TEN.plusDays(1).plusMinutes(70)).build();

    @Test
    void changesJustWhatItSays() {
        assertThat(new Change.Helper().apply(REQUEST)).isEqualTo(REQUEST.toBuilder().helpers(2).build());
        assertThat(new Change.FewerStudents(3).apply(REQUEST)).isEqualTo(REQUEST.toBuilder().headcount(5).build());
        assertThat(new Change.OneMoreGroup().apply(REQUEST)).isEqualTo(REQUEST.toBuilder().groups(3).build());
        assertThat(new Change.OwnPace().apply(REQUEST)).isEqualTo(REQUEST.toBuilder().pacing(Pacing.OWN_PACE).build());
        assertThat(new Change.MoreTools("lamp", 2).apply(REQUEST).room()).containsExactly(new RoomTool("lamp", 1), new RoomTool("lamp", 2));
        assertThat(new Change.Other("Make it small", "", request -> request.toBuilder().seed(9).build()).apply(REQUEST)).isEqualTo(REQUEST.toBuilder().seed(9).build());
        LessonRequest prepared = new Change.PrepareAhead(List.of("pour"), "\"Pour\"").apply(REQUEST);
        assertThat(new Change.PrepareAhead(List.of("cord"), "\"Cord\"").apply(prepared).preparedAhead()).as("with its demonstration and its cure").containsExactlyInAnyOrder("show", "pour", "cure", "cord");
    }

    @Test
    void movesTheFirstBeginAndTheLastEnd() {
        Meeting first = REQUEST.meetings().get(0);
        Meeting last = REQUEST.meetings().get(1);
        assertThat(new Change.EarlierStart(QUARTER).apply(REQUEST).meetings()).containsExactly(new Meeting(first.start().minusMinutes(15), first.end()), last);
        assertThat(new Change.LongerBooking(QUARTER).apply(REQUEST).meetings()).containsExactly(first, new Meeting(last.start(), last.end().plusMinutes(15)));
    }

    @Test
    void meetsOnceMoreWithTheBreaksOfTheLastMeeting() {
        LessonRequest more = new Change.MoreMeetings(1, WEEK).apply(REQUEST);
        assertThat(more.meetings()).hasSize(3).endsWith(new Meeting(TEN.plusDays(8), TEN.plusDays(8).plusHours(2)));
        assertThat(more.breaks()).containsExactly(REQUEST.breaks().get(0), REQUEST.breaks().get(1),
                new Break("Cake", TEN.plusDays(8).plusHours(1), TEN.plusDays(8).plusMinutes(70)));
    }

    /** Breaks that just fit are kept, of both halves; those that reach beyond are not. */
    @Test
    void keepsBreaksThatLieWithinAHalf() {
        LessonRequest day = Lessons.pendant().meetings(List.of(new Meeting(TEN, TEN.plusHours(4)))).breaks(List.of(new Break("first", TEN, TEN.plusMinutes(10)),
                new Break("last", TEN.plusMinutes(110), TEN.plusMinutes(120)), new Break("across", TEN.plusMinutes(111), TEN.plusMinutes(121)))).build();
        LessonRequest split = new Change.SplitInTwo(Duration.ofHours(2), WEEK).apply(day);
        assertThat(split.meetings()).containsExactly(new Meeting(TEN, TEN.plusHours(2)), new Meeting(TEN.plusWeeks(1), TEN.plusWeeks(1).plusHours(2)));
        assertThat(split.breaks()).extracting(Break::title, Break::start).containsExactly(
                tuple("first", TEN), tuple("last", TEN.plusMinutes(110)),
                tuple("first", TEN.plusWeeks(1)), tuple("last", TEN.plusWeeks(1).plusMinutes(110)));
    }

    @Test
    void isCalledByWhatToDo() {
        assertThat(List.of(new Change.PrepareAhead(List.of("pour"), "\"Pour\""), new Change.MoreTools("lamp", 1), new Change.MoreTools("lamp", 2), new Change.Helper(),
                new Change.FewerStudents(1), new Change.FewerStudents(2), new Change.EarlierStart(QUARTER), new Change.LongerBooking(QUARTER),
                new Change.MoreMeetings(1, WEEK), new Change.SplitInTwo(QUARTER, WEEK), new Change.OwnPace(), new Change.OneMoreGroup(),
                new Change.Other("Make it small", "", request -> request))).extracting(change -> change.title().toString()).containsExactly(
                        "Prepare \"Pour\" before the class", "Bring one more lamp", "Bring 2 × lamp more", "Have one more helper", "Take one student fewer",
                        "Take 2 students fewer", "Begin 15 min earlier", "Book 15 min more", "Meet once more", "Teach it in two meetings of half the length",
                        "Let students go on at their own pace between demonstrations", "Work in groups that take the steps in turn", "Make it small");
    }

    @Test
    void asksMoreThePeopleItConcerns() {
        assertThat(List.of(new Change.OwnPace(), new Change.OneMoreGroup(), new Change.PrepareAhead(List.of(), ""), new Change.MoreTools("lamp", 1), new Change.Helper(),
                new Change.EarlierStart(QUARTER), new Change.LongerBooking(QUARTER), new Change.Other("", "", request -> request), new Change.FewerStudents(2),
                new Change.MoreMeetings(1, WEEK), new Change.SplitInTwo(QUARTER, WEEK))).extracting(Change::trouble, Change::extent).containsExactly(
                        asks(Change.Trouble.TEACH, 0), asks(Change.Trouble.TEACH, 0), asks(Change.Trouble.PREPARE, 0), asks(Change.Trouble.PREPARE, 1),
                        asks(Change.Trouble.ASK, 0), asks(Change.Trouble.AGREE, 15), asks(Change.Trouble.AGREE, 15), asks(Change.Trouble.AGREE, 0),
                        asks(Change.Trouble.CHANGE_THE_CLASS, 2), asks(Change.Trouble.CHANGE_THE_CLASS, Change.EVERYBODY),
                        asks(Change.Trouble.CHANGE_THE_CLASS, Change.EVERYBODY));
    }

    /** Ten minutes and one for each: 18 to eight together, twice 14 to groups of four; thrice, 13 to three each twice and 12 to two. */
    @Test
    void showsToEachGroupAndSaysHowLongThatTakesTheTutor() {
        Step.Show show = new Step.Show("show", "Show it", Duration.ofMinutes(10), Duration.ofMinutes(1), Duration.ZERO, List.of(), 0);
        LessonRequest together = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(2)).step(show).build();
        Change.ShownToGroups change = Change.ShownToGroups.of(together, List.of(show));
        assertThat(change.asks()).isEqualTo("You show it twice, 28 min in all instead of 18 min");
        assertThat(change.extent()).isEqualTo(10);
        assertThat(change.trouble()).isEqualTo(Change.Trouble.TEACH);
        assertThat(change.apply(together).groups()).isEqualTo(2);
        assertThat(change.apply(together).steps()).containsExactly(show.eachGroup());
        assertThat(change.apply(together.toBuilder().groups(4).build()).groups()).isEqualTo(4);
        Change.ShownToGroups thrice = Change.ShownToGroups.of(together.toBuilder().groups(3).build(), List.of(show, show));
        assertThat(thrice.asks()).isEqualTo("You show them 3 times, 1 h 16 min in all instead of 36 min");
        assertThat(new Suggestion(List.of(new Change.Helper(), change), together, Lessons.plan(new ListPlanner().plan(together)), Duration.ZERO, 1, 0, Duration.ZERO, Optional.empty()).asks()).isEqualTo(change.asks());
    }

    @Test
    void saysAllThatASuggestionGainsAndCosts() {
        LessonPlan plan = Lessons.plan(new ListPlanner().plan(REQUEST));
        Suggestion both = new Suggestion(List.of(new Change.Helper(), new Change.LongerBooking(QUARTER)), REQUEST, plan, Duration.ofMinutes(12), 0.914, 0.226,
                Duration.ofMinutes(40), Optional.of(Money.parse("EUR 18")));
        assertThat(both.sentence()).isEqualTo("Have one more helper; Book 15 min more: gains 12 min, on time in 91 of 100 classes (+23), 40 min more to prepare, costs EUR 18.00.");
        assertThat(both.trouble()).isEqualTo(2 * Change.Trouble.AGREE.ordinal() + 2);
        assertThat(both.extent()).isEqualTo(15);
        assertThat(new Suggestion(List.of(new Change.OwnPace()), REQUEST, plan, Duration.ofMinutes(-5), 0.5, -0.004, Duration.ZERO, Optional.empty()).sentence())
                .isEqualTo("Let students go on at their own pace between demonstrations: loses 5 min, on time in 50 of 100 classes (+0).");
    }

    @Test
    void takesABreakOtherwiseInEachMeetingThatHasIt() {
        LessonRequest both = REQUEST.toBuilder().pause("Tea", TEN.plusHours(25), TEN.plusHours(25).plusMinutes(10)).build();
        LessonRequest moved = new BreakChange.Moved(LocalTime.of(11, 0), LocalTime.of(10, 40)).apply(both.toBuilder().breaks(List.of(both.breaks().get(0), both.breaks().get(2))).build());
        assertThat(moved.breaks()).containsExactly(new Break("Tea", TEN.plusMinutes(40), TEN.plusMinutes(50)),
                new Break("Tea", TEN.plusDays(1).plusMinutes(40), TEN.plusDays(1).plusMinutes(50)));
        assertThat(new BreakChange.Moved(LocalTime.of(9, 0), LocalTime.of(9, 5)).apply(both)).isEqualTo(both);
        assertThat(new BreakChange.Shortened(LocalTime.of(11, 0), Duration.ofMinutes(10), Duration.ofMinutes(5)).apply(REQUEST).breaks()).containsExactly(
                new Break("Tea", TEN.plusHours(1), TEN.plusMinutes(65)), new Break("Cake", TEN.plusDays(1).plusHours(1), TEN.plusDays(1).plusMinutes(65)));
    }

    @Test
    void splitsABreakInEachMeetingThatHasIt() {
        LessonRequest both = REQUEST.toBuilder().breaks(List.of(new Break("Tea", TEN.plusHours(1), TEN.plusMinutes(90)), new Break("Tea", TEN.plusHours(25), TEN.plusHours(25).plusMinutes(30)))).build();
        BreakChange split = new BreakChange.Split(LocalTime.of(11, 0), LocalTime.of(10, 40), QUARTER, LocalTime.of(11, 20), QUARTER);
        assertThat(split.apply(both).breaks()).containsExactly(new Break("Tea", TEN.plusMinutes(40), TEN.plusMinutes(55)), new Break("Tea", TEN.plusMinutes(80), TEN.plusMinutes(95)),
                new Break("Tea", TEN.plusHours(24).plusMinutes(40), TEN.plusHours(24).plusMinutes(55)), new Break("Tea", TEN.plusHours(24).plusMinutes(80), TEN.plusHours(24).plusMinutes(95)));
        assertThat(split.title()).hasToString("Split the break at 11:00: 15 min at 10:40 and 15 min at 11:20");
        assertThat(split.loses()).isEqualTo("They have no rest longer than 15 min");
        assertThat(split.trouble()).isEqualTo(Change.Trouble.TEACH);
        assertThat(split.extent()).as("moving asks less").isGreaterThan(new BreakChange.Moved(LocalTime.of(11, 0), LocalTime.of(11, 20)).extent());
    }

    @Test
    void meetsAgainAsOftenAsItSays() {
        LessonRequest more = new Change.MoreMeetings(2, WEEK).apply(REQUEST);
        assertThat(more.meetings()).extracting(Meeting::start).containsExactly(TEN, TEN.plusDays(1), TEN.plusDays(8), TEN.plusDays(15));
        assertThat(more.breaks()).extracting(Break::start).containsExactly(TEN.plusHours(1), TEN.plusDays(1).plusHours(1), TEN.plusDays(8).plusHours(1), TEN.plusDays(15).plusHours(1));
        assertThat(new Change.MoreMeetings(2, WEEK).title()).hasToString("Meet 2 times more");
    }

    @Test
    void saysWhatTheStudentsLose() {
        assertThat(List.of(new Change.PrepareAhead(List.of("pour"), "\"Pour\""), new Change.FewerStudents(1), new Change.FewerStudents(2), new Change.EarlierStart(QUARTER),
                new Change.LongerBooking(QUARTER), new Change.MoreMeetings(1, WEEK), new Change.MoreMeetings(3, WEEK), new Change.SplitInTwo(QUARTER, WEEK),
                new Change.Other("", "A line", request -> request), new BreakChange.Moved(LocalTime.of(15, 0), LocalTime.of(15, 20)),
                new BreakChange.Shortened(LocalTime.of(15, 0), QUARTER, Duration.ofMinutes(10)))).extracting(Change::loses).containsExactly(
                        "They find \"Pour\" done, and read how it is made", "One student has no place", "2 students have no place", "They come 15 min earlier",
                        "They stay up to 15 min longer", "They come on one more day", "They come on 3 more days", "They come on two days", "A line",
                        "They rest 20 min later", "They rest 5 min less");
        assertThat(List.of(new Change.Helper(), new Change.MoreTools("lamp", 1), new Change.OwnPace(), new Change.OneMoreGroup(),
                new BreakChange.Moved(LocalTime.of(15, 0), LocalTime.of(14, 40)))).extracting(Change::loses).containsOnly("");
        Suggestion both = new Suggestion(List.of(new Change.FewerStudents(1), new Change.Helper(), new Change.LongerBooking(QUARTER)), REQUEST,
                Lessons.plan(new ListPlanner().plan(REQUEST)), Duration.ZERO, 1, 0, Duration.ZERO, Optional.empty());
        assertThat(both.loses()).isEqualTo("One student has no place; They stay up to 15 min longer");
    }

    private static Tuple asks(Change.Trouble trouble, int extent) {
        return tuple(trouble, extent);
    }
}
