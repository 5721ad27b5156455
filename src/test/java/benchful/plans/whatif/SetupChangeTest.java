package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.lesson.advice.BreakChange;
import benchful.core.lesson.advice.Change;
import benchful.projects.ProjectSpec;
import benchful.samples.SampleFiles;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class SetupChangeTest {
    private static final SampleFiles FILES = SampleFiles.in(Path.of("sample-classes"));
    private static final SampleFiles.SampleClass STRAND = FILES.classes().stream()
            .filter(c -> c.setup().title() != null && c.setup().title().startsWith("Knotted strand, Saturday")).findFirst().orElseThrow();
    private static final ClassSetup SETUP = STRAND.setup();
    private static final ProjectSpec PROJECT = FILES.projects().stream().filter(p -> p.name().equals(STRAND.project())).findFirst().orElseThrow();
    private static final SpecReader<ClassSetup> READER = SetupRules.reader(PROJECT);
    private static final FormTree TREE = new FormTree(READER.schema());

    @Test
    void makesTheChangeThatWasSuggested() {
        assertThat(changed(new Change.Helper()).helpers()).isEqualTo(SETUP.helpers() + 1);
        assertThat(changed(new Change.MoreTools("knotting awl", 2)).tools()).containsEntry("knotting awl", 2);
        assertThat(changed(new Change.PrepareAhead(List.of("stretch", "hang"), "both")).preparedAhead()).containsExactly("stretch", "hang");
        assertThat(changed(new Change.TakenHome(List.of("trim", "check"), "both", Duration.ofMinutes(20))).homework()).containsExactly("trim", "check");
        assertThat(changed(new Change.EarlierStart(Duration.ofMinutes(15))).meetings().get(0).starts()).isEqualTo(LocalTime.of(12, 15));
        assertThat(changed(new Change.LongerBooking(Duration.ofMinutes(30))).meetings().get(0).ends()).isEqualTo(LocalTime.of(18, 30));
        assertThat(changed(new Change.OneMoreGroup()).groups()).isEqualTo(2);
        ClassSetup shown = changed(new Change.ShownToGroups(List.of("show_silk"), "it", 2, false, Duration.ofMinutes(20), Duration.ofMinutes(10)));
        assertThat(shown.groups()).isEqualTo(2);
        assertThat(shown.shownToGroups()).containsExactly("show_silk");
        assertThat(changed(new Change.OwnPace()).ownPace()).isTrue();
    }

    /** Six that the project owns and four more are ten; of what the class counts, or nobody, as many more as are said. */
    @Test
    void bringsMoreThanTheProjectOwns() {
        Change more = new Change.MoreTools("knotting awl", 4);
        assertThat(SetupChange.of(List.of(more), TREE, READER.written(SETUP), Map.of("knotting awl", 6), Map.of()).fields()).isEqualTo(Map.of("/tools/knotting awl", "10"));
        ClassSetup counted = SETUP.withTools(Map.of("knotting awl", 3));
        assertThat(SetupChange.of(List.of(more), TREE, READER.written(counted), Map.of("knotting awl", 6), Map.of()).fields()).isEqualTo(Map.of("/tools/knotting awl", "7"));
        assertThat(SetupChange.of(List.of(more), TREE, READER.written(SETUP), Map.of(), Map.of()).fields()).isEqualTo(Map.of("/tools/knotting awl", "4"));
    }

    @Test
    void meetsOnceMoreAtTheHoursOfTheLastMeeting() {
        List<ClassSetup.Meeting> meetings = changed(new Change.MoreMeetings(1, Period.ofWeeks(1))).meetings();
        ClassSetup.Meeting first = SETUP.meetings().get(0);
        assertThat(meetings).containsExactly(first, new ClassSetup.Meeting(first.date().plusDays(7), first.starts(), first.ends()));
    }

    @Test
    void teachesOneMeetingInTwo() {
        ClassSetup.Meeting whole = SETUP.meetings().get(0);
        List<ClassSetup.Meeting> two = changed(new Change.SplitInTwo(Duration.ofMinutes(165), Period.ofWeeks(1))).meetings();
        assertThat(two).containsExactly(new ClassSetup.Meeting(whole.date(), LocalTime.of(12, 30), LocalTime.of(15, 15)),
                new ClassSetup.Meeting(whole.date().plusDays(7), LocalTime.of(12, 30), LocalTime.of(15, 15)));
    }

    @Test
    void takesTheAbsentFromTheSizeThatMostWant() {
        ClassSetup eight = with(Map.of("/headcount", "8", "/sizes/42 cm", "5", "/sizes/45 cm", "3"));
        ClassSetup fewer = read(whatIf(eight, new Change.FewerStudents(2)), eight);
        assertThat(fewer.headcount()).isEqualTo(6);
        assertThat(fewer.sizes()).isEqualTo(Map.of("42 cm", 3, "45 cm", 3));
    }

    /** Of eight, three are known by name; of the five others one takes 42 cm, and four of whom nothing is said take the first size. */
    @Test
    void leavesThoseKnownByNameInTheClass() {
        Map<String, String> eight = Map.of("/headcount", "8", "/sizes/42 cm", "1", "/students/0/name", "Ada", "/students/1/name", "Ben", "/students/2/name", "Cleo");
        ClassSetup fewer = read(whatIf(with(eight), new Change.FewerStudents(4)), with(eight));
        assertThat(fewer.headcount()).isEqualTo(4);
        assertThat(fewer.students()).hasSize(3);
        assertThat(fewer.sizes()).isEqualTo(Map.of("42 cm", 1));
    }

    @Test
    void takesABreakAtAnotherTimeOrMakesItShorter() {
        ClassSetup tea = with(Map.of("/breaks/0/at", "13:00", "/breaks/0/lasts", "10 min", "/breaks/1/at", "15:15", "/breaks/1/lasts", "20 min"));
        ClassSetup moved = read(whatIf(tea, new BreakChange.Moved(LocalTime.of(15, 15), LocalTime.of(15, 40))), tea);
        assertThat(moved.breaks()).containsExactly(tea.breaks().get(0), new ClassSetup.Break(LocalTime.of(15, 40), Duration.ofMinutes(20)));
        ClassSetup shorter = read(whatIf(tea, new BreakChange.Shortened(LocalTime.of(15, 15), Duration.ofMinutes(20), Duration.ofMinutes(15))), tea);
        assertThat(shorter.breaks()).containsExactly(tea.breaks().get(0), new ClassSetup.Break(LocalTime.of(15, 15), Duration.ofMinutes(15)));
    }

    @Test
    void splitsABreakAndPutsItTogetherAgain() {
        ClassSetup tea = with(Map.of("/breaks/0/at", "13:00", "/breaks/0/lasts", "30 min", "/breaks/1/at", "15:15", "/breaks/1/lasts", "20 min"));
        WhatIf split = whatIf(tea, new BreakChange.Split(LocalTime.of(13, 0), LocalTime.of(13, 10), Duration.ofMinutes(15), LocalTime.of(14, 0), Duration.ofMinutes(15)));
        ClassSetup twice = read(split, tea);
        assertThat(twice.breaks()).containsExactly(new ClassSetup.Break(LocalTime.of(13, 10), Duration.ofMinutes(15)), tea.breaks().get(1),
                new ClassSetup.Break(LocalTime.of(14, 0), Duration.ofMinutes(15)));
        assertThat(read(split.reversed(READER.written(tea)), twice)).isEqualTo(tea);
    }

    /** Two breaks at one time, in two meetings: each is split in its own, and one more meeting has what the last has. */
    @Test
    void keepsABreakOfOneMeetingInIts() {
        Map<String, String> two = Map.of("/meetings/1/date", SETUP.meetings().get(0).date().plusDays(7).toString(), "/meetings/1/starts", "12:30", "/meetings/1/ends", "18:00",
                "/breaks/0/at", "15:00", "/breaks/0/lasts", "30 min", "/breaks/0/meeting", "1", "/breaks/1/at", "15:00", "/breaks/1/lasts", "20 min", "/breaks/1/meeting", "2");
        ClassSetup tea = with(two);
        ClassSetup split = read(whatIf(tea, new BreakChange.Split(LocalTime.of(15, 0), LocalTime.of(14, 0), Duration.ofMinutes(15), LocalTime.of(16, 0), Duration.ofMinutes(15))), tea);
        assertThat(split.breaks()).containsExactly(pause(14, 15, 1), pause(14, 15, 2), pause(16, 15, 1), pause(16, 15, 2));
        ClassSetup thrice = read(whatIf(tea, new Change.MoreMeetings(2, Period.ofWeeks(1))), tea);
        assertThat(thrice.breaks()).containsExactly(pause(15, 30, 1), pause(15, 20, 2), pause(15, 20, 3), pause(15, 20, 4));
        ClassSetup one = with(Map.of("/breaks/0/at", "15:00", "/breaks/0/lasts", "30 min", "/breaks/0/meeting", "1", "/rest/after", "55 min", "/rest/lasts", "10 min", "/rest/meeting", "1"));
        ClassSetup halves = read(whatIf(one, new Change.SplitInTwo(Duration.ofMinutes(165), Period.ofWeeks(1))), one);
        assertThat(halves.breaks()).containsExactly(pause(15, 30, null));
        assertThat(halves.rest()).isEqualTo(new ClassSetup.Rest(Duration.ofMinutes(55), Duration.ofMinutes(10)));
    }

    private static ClassSetup.Break pause(int hour, int minutes, Integer meeting) {
        return new ClassSetup.Break(LocalTime.of(hour, 0), Duration.ofMinutes(minutes), null, meeting);
    }

    @Test
    void takesHomeNothingThatIsNotMadeInTheClass() {
        ClassSetup asked = SETUP.withPreparedAhead(List.of("stretch")).withHomework(List.of("check", "hang", "stretch", "gone"));
        assertThat(SetupRules.check(asked, PROJECT)).containsExactly(
                new Fault("/homework/1", "“The silk hangs straight” is nothing that each student makes, so it can't be done at home. Choose another step."),
                new Fault("/homework/2", "“Stretch your silk and look it over” is done by you before the class. Choose one of the two."),
                new Fault("/homework/3", "“Knotted strand of amazonite and pearls” has no step “gone”."));
    }

    @Test
    void showsToGroupsNothingThatIsNotShown() {
        assertThat(SetupRules.check(SETUP.withShownToGroups(List.of("hang", "gone")), PROJECT)).containsExactly(
                new Fault("/shown_to_groups/0", "“The silk hangs straight” is not shown, so it can't be shown to a group at a time. Choose a demonstration."),
                new Fault("/shown_to_groups/1", "“Knotted strand of amazonite and pearls” has no step “gone”."));
    }

    @Test
    void meetsAgainWeekByWeek() {
        ClassSetup.Meeting first = SETUP.meetings().get(0);
        assertThat(changed(new Change.MoreMeetings(2, Period.ofWeeks(1))).meetings()).extracting(ClassSetup.Meeting::date)
                .containsExactly(first.date(), first.date().plusDays(7), first.date().plusDays(14));
    }

    /** Of eight, those of whom nothing is said stay away first, as long as they are as many as want any one size. */
    @Test
    void takesTheAbsentFromTheSizesInTurn() {
        assertThat(fewer(4, "4", "4")).isEqualTo(Map.of("/headcount", "4", "/sizes/42 cm", "2", "/sizes/45 cm", "2"));
        assertThat(fewer(3, "2", "2")).isEqualTo(Map.of("/headcount", "5"));
        assertThat(fewer(4, "2", "2")).isEqualTo(Map.of("/headcount", "4", "/sizes/42 cm", "1"));
    }

    private static Map<String, String> fewer(int away, String first, String second) {
        ClassSetup eight = with(Map.of("/headcount", "8", "/sizes/42 cm", first, "/sizes/45 cm", second));
        return whatIf(eight, new Change.FewerStudents(away)).fields();
    }

    @Test
    void makesTwoChangesOneUponTheOther() {
        ClassSetup both = changed(new Change.LongerBooking(Duration.ofMinutes(30)), new Change.MoreMeetings(1, Period.ofWeeks(1)));
        assertThat(both.meetings()).extracting(ClassSetup.Meeting::ends).containsExactly(LocalTime.of(18, 30), LocalTime.of(18, 30));
        assertThat(both.meetings().get(1).date()).isEqualTo(LocalDate.from(SETUP.meetings().get(0).date()).plusWeeks(1));
    }

    @Test
    void leavesAllElseAsItIs() {
        ClassSetup helped = changed(new Change.Helper());
        assertThat(helped).usingRecursiveComparison().ignoringFields("helpers").isEqualTo(SETUP);
    }

    @Test
    void saysAWhatIfInOneTextAndReadsItBack() {
        WhatIf whatIf = new WhatIf(Map.of("/tools/awl & pin=2", "3", "/meetings/0/starts", "12:15"));
        assertThat(WhatIf.read(whatIf.sent())).isEqualTo(whatIf);
        assertThat(WhatIf.read("id=3&%zz=1&").fields()).isEmpty();
        assertThat(new WhatIf(Map.of("/helpers", "2")).inAddress()).isEqualTo("%252Fhelpers%3D2");
    }

    @Test
    void takesFromAFormOnlyWhatIsOtherwiseAndKnowsTheWayBack() {
        JsonNode stored = READER.written(with(Map.of("/headcount", "8", "/title", "Strands")));
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        form.putSingle("/headcount", " 8 ");
        form.putSingle("/title", " Long strands ");
        form.putSingle("/helpers", "2");
        form.putSingle("id", "3");
        form.put("/venue", List.of());

        WhatIf typed = WhatIf.typed(form, stored);

        assertThat(typed.fields()).isEqualTo(Map.of("/title", "Long strands", "/helpers", "2"));
        assertThat(typed.reversed(stored).fields()).isEqualTo(Map.of("/title", "Strands", "/helpers", stored.at("/helpers").asText("")));
    }

    @Test
    void offersSmallerSizesToThoseWithTheLargest() {
        ClassSetup mixed = with(Map.of("/headcount", "6", "/sizes/42 cm", "4", "/sizes/40 cm", "2"));
        ClassFile file = new ClassFile(PROJECT, mixed, null, null, null);
        Map<String, WhatIf> smaller = SmallerSizes.of(file);
        assertThat(smaller).isNotEmpty().allSatisfy((title, whatIf) -> {
            ClassSetup changed = read(whatIf, mixed);
            assertThat(changed.sizes().values().stream().mapToInt(n -> n).sum()).isEqualTo(6);
            assertThat(changed.sizes()).doesNotContainKey("42 cm");
        });
    }

    @Test
    void countsWhatHoursAndHandsCost() {
        ClassSetup paid = with(Map.of("/currency", "GBP", "/costs/fee", "45", "/costs/helper", "12.40", "/costs/room", "15", "/meetings/0/starts", "12:30",
                "/meetings/0/ends", "18:00", "/helpers", "1"));
        SetupCosts costs = new SetupCosts(paid);
        assertThat(costs.of(new Change.Helper())).contains(Money.parse("GBP 68.20"));
        assertThat(costs.of(new Change.FewerStudents(2))).contains(Money.parse("GBP 90.00"));
        assertThat(costs.of(new Change.LongerBooking(Duration.ofMinutes(15)))).contains(Money.parse("GBP 6.85"));
        assertThat(costs.of(new Change.EarlierStart(Duration.ofMinutes(30)))).contains(Money.parse("GBP 13.70"));
        assertThat(costs.of(new Change.MoreMeetings(2, Period.ofWeeks(1)))).contains(Money.parse("GBP 301.40"));
        assertThat(costs.of(new Change.OwnPace())).contains(Money.parse("GBP 0.00"));
        assertThat(costs.of(new Change.MoreTools("awl", 1))).isEmpty();
        assertThat(costs.of(new Change.SplitInTwo(Duration.ofHours(2), Period.ofWeeks(1)))).isEmpty();
        assertThat(new SetupCosts(with(Map.of())).of(new Change.Helper())).isEmpty();
    }

    @Test
    void roundsHalfAPennyUp() {
        SetupCosts costs = new SetupCosts(with(Map.of("/currency", "GBP", "/costs/room", "0.10")));
        assertThat(costs.of(new Change.LongerBooking(Duration.ofMinutes(15)))).contains(Money.parse("GBP 0.03"));
    }

    private static ClassSetup changed(Change... changes) {
        return read(SetupChange.of(List.of(changes), TREE, READER.written(SETUP), Map.of(), Map.of()), SETUP);
    }

    private static WhatIf whatIf(ClassSetup setup, Change change) {
        return SetupChange.of(List.of(change), TREE, READER.written(setup), Map.of(), Map.of());
    }

    private static ClassSetup with(Map<String, String> fields) {
        ClassSetup bare = ClassSetup.plain(SETUP.title(), SETUP.meetings(), SETUP.headcount(), SETUP.level(), Map.of(), SETUP.currency());
        return read(new WhatIf(fields), bare);
    }

    private static ClassSetup read(WhatIf whatIf, ClassSetup setup) {
        SpecReader.Reading<ClassSetup> reading = READER.tree(whatIf.over(TREE, READER.written(setup)));
        assertThat(reading).as(reading.toString()).isInstanceOf(SpecReader.Read.class);
        return ((SpecReader.Read<ClassSetup>) reading).sheet();
    }
}
