package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which changes are worth trying, by what they are called. */
class ChangesTest {
    private static final Period WEEK = Period.ofWeeks(1);

    /** The longest stays in the class, with what follows it; of the others each can be prepared with what comes before. */
    @Test
    void preparesShortStepsWithWhatComesBefore() {
        LessonRequest.Builder request = class8().step(make("a", 10)).step(new Step.Wait("dry", "Dry", Duration.ofMinutes(5))).step(make("c", 5)).step(make("b", 20)).step(make("d", 2))
                .link("a", "dry").link("dry", "c").link("b", "d");
        assertThat(prepared(request)).containsExactly("Prepare \"A\" before the class", "Prepare \"A\" and \"C\" before the class");
        assertThat(new Changes(request.build(), TEN).all()).contains(new Change.PrepareAhead(List.of("c", "dry", "a"), "\"A\" and \"C\""));
        assertThat(prepared(request.preparedAhead(Set.of("a")))).containsExactly("Prepare \"C\" before the class");
        assertThat(new Changes(request.build(), TEN).all()).contains(new Change.PrepareAhead(List.of("c"), "\"C\""));
    }

    @Test
    void countsRepeatsToFindTheLongest() {
        Step twice = new Step.Make("b", "B", new StudentTime(Duration.ofMinutes(6), Duration.ofMinutes(6), Duration.ofMinutes(6), 2, 1));
        assertThat(prepared(class8().step(make("a", 10)).step(twice))).containsExactly("Prepare \"A\" before the class");
    }

    /** Two demonstrations are tried each alone and together; what nobody practises, what not all could watch anyway and what is shown to groups already, not. */
    @Test
    void showsToAGroupAtATimeWhatAllWatchTogether() {
        LessonRequest.Builder request = class8().step(show("a", 0, false)).step(make("b", 10)).step(show("c", 8, false)).step(make("d", 10)).step(show("e", 4, false)).step(make("f", 10))
                .step(show("g", 0, true)).step(make("h", 10)).step(show("i", 0, false)).link("a", "b").link("c", "d").link("e", "f").link("g", "h");
        assertThat(named("Show", request.groups(2))).containsExactly("Show \"A\" to a group at a time", "Show \"C\" to a group at a time", "Show \"A\" and \"C\" to a group at a time");
        assertThat(named("Work", request.groups(1))).containsExactly("Work in groups that take the steps in turn", "Work in groups that take the steps in turn, and show \"A\" to a group at a time",
                "Work in groups that take the steps in turn, and show \"C\" to a group at a time", "Work in groups that take the steps in turn, and show \"A\" and \"C\" to a group at a time");
        assertThat(named("Show", request.groups(8))).isEmpty();
    }

    private static Step show(String id, int watchers, boolean toGroups) {
        return new Step.Show(id, id.toUpperCase(Locale.ROOT), Duration.ofMinutes(10), Duration.ofMinutes(1), Duration.ZERO, List.of(), watchers, toGroups);
    }

    /** Who finds three things made, or what the tutor fires between the meetings, finds a class without its beginning. */
    @Test
    void preparesNoMoreThanTwoThings() {
        assertThat(prepared(class8().step(make("z", 60)).step(make("a", 10)).step(make("b", 10)).step(make("c", 10)).link("a", "b").link("b", "c")))
                .containsExactly("Prepare \"A\" before the class", "Prepare \"A\" and \"B\" before the class");
        assertThat(prepared(class8().step(make("z", 60)).step(make("a", 10)).step(new Step.Outside("fire", "Fire", StepKind.BETWEEN, Duration.ofHours(1)))
                .step(make("b", 10)).link("a", "fire").link("fire", "b")))
                .containsExactly("Prepare \"A\" before the class");
    }

    /** Two of eight at once are four turns: one more, half of the turns, or all at once. */
    @Test
    void bringsWhatSavesTurns() {
        assertThat(named("Bring", class8().tool("pliers", 2).step(using("a", new ToolUse("pliers", 1))))).containsExactly("Bring one more pliers", "Bring 2 × pliers more", "Bring 6 × pliers more");
        assertThat(named("Bring", class8().tool("pliers", 8).step(using("a", new ToolUse("pliers", 1))))).isEmpty();
        assertThat(named("Bring", class8().step(using("a", new ToolUse("pliers", 1))))).isEmpty();
        assertThat(named("Bring", class8().tool("pliers", 4).tool("lamp", 12).step(using("a", new ToolUse("pliers", 1), new ToolUse("lamp", 2)))))
                .containsExactly("Bring one more pliers", "Bring 4 × pliers and 4 × lamp more");
        assertThat(named("Bring", class8().tool("pliers", 2).step(using("a", new ToolUse("pliers", 1))).preparedAhead(Set.of("a")))).isEmpty();
    }

    /** Eight pieces in loads of four are two loads; what the class watches gains from twice as much. */
    @Test
    void bringsWhatLetsLoadsRunSideBySide() {
        assertThat(named("Bring", class8().tool("rack", 1)
                .step(new Step.Wait("dry", "Dry", Duration.ofMinutes(5), Optional.empty(), List.of(new ToolUse("rack", 1)), 4, false)))).containsExactly("Bring one more rack");
        assertThat(named("Bring", class8().tool("rack", 1).step(new Step.Wait("dry", "Dry", Duration.ofMinutes(5), Optional.empty(), List.of(new ToolUse("rack", 1)), 8, false)))).isEmpty();
        assertThat(named("Bring", class8().tool("rack", 1).step(new Step.Show("show", "Show", Duration.ofMinutes(5), List.of(new ToolUse("rack", 1)))))).containsExactly("Bring one more rack");
    }

    @Test
    void asksForPeopleWhereTheyHelp() {
        Step.Make helped = new Step.Make("a", "A", StudentTime.ofMinutes(5, 5, 5), List.of(), new Help(2, 2), 1, true);
        assertThat(named("Have", class8().step(helped))).containsExactly("Have one more helper");
        assertThat(named("Have", class8().step(make("a", 5)))).isEmpty();
        assertThat(named("Take", class8().step(make("a", 5)))).containsExactly("Take one student fewer");
        assertThat(named("Work", class8().step(make("a", 5)))).hasSize(1);
        assertThat(named("Take", class8().groups(8).step(make("a", 5)))).isEmpty();
        assertThat(named("Let", class8().step(make("a", 5)))).hasSize(1);
        assertThat(named("Let", class8().pacing(Pacing.OWN_PACE).step(make("a", 5)))).isEmpty();
    }

    /** A quarter, a half, and what is lacking in whole quarters, up to three hours. */
    @Test
    void booksALittleMoreAndWhatIsLacking() {
        assertThat(hours(-10)).containsExactly("Begin 15 min earlier", "Begin 30 min earlier", "Book 15 min more", "Book 30 min more");
        assertThat(hours(0)).hasSize(4);
        assertThat(hours(1)).hasSize(4);
        assertThat(hours(20)).hasSize(4);
        assertThat(hours(45)).containsExactly("Begin 15 min earlier", "Begin 30 min earlier", "Begin 45 min earlier", "Book 15 min more", "Book 30 min more", "Book 45 min more");
        assertThat(hours(46)).contains("Book 1 h more");
        assertThat(hours(180)).contains("Book 3 h more");
        assertThat(hours(181)).hasSize(4);
    }

    /** From 0:20 to 23:40: a quarter of an hour stays on the day, half an hour does not. */
    @Test
    void booksNothingOnAnotherDay() {
        LessonRequest day = LessonRequest.builder().meeting(TEN.withHour(0).withMinute(20), TEN.withHour(23).withMinute(40)).step(make("a", 5)).build();
        assertThat(new Changes(day, day.start()).all()).extracting(change -> change.title().toString()).contains("Begin 15 min earlier", "Book 15 min more").doesNotContain("Begin 30 min earlier", "Book 30 min more");
    }

    @Test
    void splitsAMeetingOfThreeHoursAndNoOther() {
        LessonRequest three = LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).step(make("a", 5)).build();
        assertThat(new Changes(three, TEN).all()).contains(new Change.SplitInTwo(Duration.ofMinutes(90), WEEK), new Change.MoreMeetings(1, WEEK));
        LessonRequest longer = LessonRequest.builder().meeting(TEN, TEN.plusMinutes(190)).step(make("a", 5)).build();
        assertThat(new Changes(longer, TEN).all()).contains(new Change.SplitInTwo(Duration.ofMinutes(105), WEEK));
        assertThat(named("Teach", LessonRequest.builder().meeting(TEN, TEN.plusMinutes(179)).step(make("a", 5)))).isEmpty();
        assertThat(named("Teach", LessonRequest.builder().meeting(TEN, TEN.plusHours(3)).meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(3)).step(make("a", 5)))).isEmpty();
    }

    private static List<String> hours(int lacking) {
        LessonRequest request = class8().step(make("a", 5)).build();
        return new Changes(request, request.bookedEnd().plusMinutes(lacking)).all().stream().map(change -> change.title().toString()).filter(title -> title.startsWith("B")).toList();
    }

    private static List<String> prepared(LessonRequest.Builder request) {
        return named("Prepare", request);
    }

    private static List<String> named(String verb, LessonRequest.Builder request) {
        return new Changes(request.build(), TEN).all().stream().map(change -> change.title().toString()).filter(title -> title.startsWith(verb + " ")).toList();
    }

    private static LessonRequest.Builder class8() {
        return LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(2));
    }

    private static Step make(String id, int minutes) {
        return new Step.Make(id, id.toUpperCase(Locale.ROOT), StudentTime.ofMinutes(minutes, minutes, minutes));
    }

    private static Step using(String id, ToolUse... tools) {
        return new Step.Make(id, id.toUpperCase(Locale.ROOT), StudentTime.ofMinutes(5, 5, 5), List.of(tools), Help.NONE, 1, true);
    }
}
