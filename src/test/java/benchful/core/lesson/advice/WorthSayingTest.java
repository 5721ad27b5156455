package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Proof;
import benchful.core.lesson.TutorLoad;
import java.time.Duration;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What is said of suggestions, and in which order. The class is booked for two hours and lacks forty minutes. */
class WorthSayingTest {
    private static final LessonRequest REQUEST = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).build();
    private static final Change HELPER = new Change.Helper();
    private static final Change ALONE = new Change.OwnPace();
    private static final Change AGAIN = new Change.MoreMeetings(1, Period.ofWeeks(1));

    @Test
    void saysTheRightAmountOnly() {
        assertThat(said(good(fewer(2)), good(fewer(3)), poor(fewer(1), 0.5))).containsExactly("Take 2 students fewer");
        assertThat(said(poor(book(15), 0.5), good(book(30)))).containsExactly("Book 30 min more");
        assertThat(said(poor(book(15), 0.5), good(new Change.EarlierStart(Duration.ofMinutes(30))))).containsExactly("Book 15 min more", "Begin 30 min earlier");
    }

    /** To fold and to pierce is more of the same where to fold is enough; to pierce is another thing. */
    @Test
    void preparesNoMoreThanIsEnough() {
        assertThat(said(good(prepare("Fold")), good(prepare("Fold", "Pierce")), good(prepare("Pierce")))).containsExactly("Prepare Fold before the class", "Prepare Pierce before the class");
        assertThat(said(poor(prepare("Fold"), 0.5), good(prepare("Fold", "Pierce")))).hasSize(2);
    }

    private static Change prepare(String... steps) {
        return new Change.PrepareAhead(List.of(steps), String.join(" and ", steps));
    }

    /** Where a helper is enough nobody is turned away, nor booked by more than an hour; where an hour is, nobody comes again. */
    @Test
    void asksForNothingGreatWhereSomethingLittleDoes() {
        assertThat(said(good(HELPER), good(book(60)), good(fewer(2)))).containsExactly("Have one more helper", "Book 1 h more");
        assertThat(said(good(HELPER), good(book(75)))).containsExactly("Have one more helper");
        assertThat(said(good(HELPER), good(AGAIN))).containsExactly("Have one more helper");
        assertThat(said(good(book(60)), good(fewer(2)), good(AGAIN))).containsExactly("Book 1 h more", "Take 2 students fewer");
        assertThat(said(good(fewer(2)), good(AGAIN))).containsExactly("Take 2 students fewer", "Meet once more");
    }

    @Test
    void asksForNoTwoThingsWhereOneDoes() {
        assertThat(said(good(HELPER), good(List.of(ALONE, book(15))))).containsExactly("Have one more helper");
        assertThat(said(good(book(15)), good(List.of(ALONE, HELPER)))).hasSize(2);
        assertThat(said(good(List.of(ALONE, HELPER)), good(List.of(ALONE, book(15))))).hasSize(2);
    }

    /** A quarter of forty minutes is ten. */
    @Test
    void saysWhatGainsSomeChanceOrClosesAQuarterOfTheGap() {
        assertThat(said(gaining(HELPER, 10, 0), gaining(ALONE, 9, 0))).containsExactly("Have one more helper");
        assertThat(said(gaining(HELPER, 0, 0.01), gaining(ALONE, 0, 0.009))).containsExactly("Have one more helper");
        assertThat(said(gaining(HELPER, 30, 0), good(ALONE))).containsExactly(ALONE.title().toString());
    }

    @Test
    void gainsAMinuteOrAChanceInAHundred() {
        assertThat(Ranking.gains(gaining(HELPER, 0, 0.01))).isTrue();
        assertThat(Ranking.gains(gaining(HELPER, 0, 0.009))).isFalse();
        assertThat(Ranking.gains(gaining(HELPER, 1, -0.009))).isTrue();
        assertThat(Ranking.gains(gaining(HELPER, 1, -0.01))).isFalse();
    }

    /** What lets the end be promised stands first, by what it asks; then the rest by what it gains. */
    @Test
    void putsWhatAsksLeastFirst() {
        assertThat(ordered(gaining(HELPER, 30, 0.5), good(fewer(1)), good(book(15)), good(ALONE), gaining(AGAIN, 5, 0.6)))
                .containsExactly(ALONE.title().toString(), "Book 15 min more", "Take one student fewer", "Meet once more", "Have one more helper");
        assertThat(ordered(good(List.of(ALONE, HELPER)), good(HELPER))).containsExactly("Have one more helper", ALONE.title().toString() + "; Have one more helper");
        assertThat(ordered(good(book(30)), good(book(15)))).containsExactly("Book 15 min more", "Book 30 min more");
    }

    @Test
    void putsLessPreparationAndMoneyFirst() {
        Change lamp = new Change.MoreTools("lamp", 1);
        Change press = new Change.MoreTools("press", 1);
        assertThat(ordered(costing(lamp, 5, "GBP 1"), costing(press, 0, "GBP 9"))).containsExactly(press.title().toString(), lamp.title().toString());
        assertThat(ordered(costing(press, 0, "GBP 9"), costing(lamp, 0, "GBP 1"))).containsExactly(lamp.title().toString(), press.title().toString());
        assertThat(ordered(costing(press, 0, null), costing(lamp, 0, "GBP 1"))).containsExactly(lamp.title().toString(), press.title().toString());
    }

    @Test
    void putsWhatGainsMostFirstAmongTheRest() {
        assertThat(ordered(gaining(ALONE, 20, 0.1), gaining(HELPER, 10, 0.2))).containsExactly("Have one more helper", ALONE.title().toString());
        assertThat(ordered(gaining(ALONE, 10, 0.101), gaining(HELPER, 20, 0.099))).containsExactly("Have one more helper", ALONE.title().toString());
        assertThat(ordered(gaining(ALONE, 10, 0), gaining(HELPER, 10, 0))).containsExactly("Have one more helper", ALONE.title().toString());
    }

    private static List<String> said(Suggestion... all) {
        return new WorthSaying(List.of(all), Duration.ofMinutes(40)).suggestions().stream().map(said -> said.title().toString()).toList();
    }

    private static List<String> ordered(Suggestion... all) {
        return Stream.of(all).sorted(Ranking.BEST_FIRST).map(said -> said.title().toString()).toList();
    }

    private static Change fewer(int students) {
        return new Change.FewerStudents(students);
    }

    private static Change book(int minutes) {
        return new Change.LongerBooking(Duration.ofMinutes(minutes));
    }

    private static Suggestion good(Change change) {
        return good(List.of(change));
    }

    private static Suggestion good(List<Change> changes) {
        return suggestion(changes, 120, Duration.ofMinutes(40), 0.5, Duration.ZERO, null);
    }

    private static Suggestion poor(Change change, double chance) {
        return poor(List.of(change), chance);
    }

    private static Suggestion poor(List<Change> changes, double chance) {
        return suggestion(changes, 121, Duration.ZERO, chance, Duration.ZERO, null);
    }

    private static Suggestion gaining(Change change, int minutes, double chance) {
        return suggestion(List.of(change), 121, Duration.ofMinutes(minutes), chance, Duration.ZERO, null);
    }

    private static Suggestion costing(Change change, int preparation, String money) {
        return suggestion(List.of(change), 120, Duration.ZERO, 0.5, Duration.ofMinutes(preparation), money);
    }

    private static Suggestion suggestion(List<Change> changes, int finish, Duration gained, double chance, Duration preparation, String cost) {
        LessonPlan plan = new LessonPlan(List.of(), TEN, TEN.plusMinutes(finish), TEN.plusHours(2), List.of(), new TutorLoad(List.of(), 0, 0), Duration.ZERO,
                new Proof(Proof.Method.LIST, Pacing.TOGETHER, TEN, TEN), new Preparation(List.of()));
        return new Suggestion(changes, REQUEST, plan, gained, chance, chance, preparation, Optional.ofNullable(cost).map(Money::parse));
    }
}
