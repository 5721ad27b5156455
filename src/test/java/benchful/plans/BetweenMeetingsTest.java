package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.classes.ClassFile;
import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.plans.BetweenMeetings.Item;
import benchful.projects.Step;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class BetweenMeetingsTest {
    private static final LocalDate SATURDAY = LocalDate.of(2027, 3, 6);

    private static Step waits(String id, Duration time) {
        return Step.of(id, "The " + id, StepKind.WAIT).withLasts(time);
    }

    private static Step outside(String id, StepKind kind, int minutes) {
        return Step.of(id, "The " + id, kind).withLasts(kind == StepKind.COLLECT ? null : Duration.ofMinutes(minutes));
    }

    /** Everything takes a time that is known beforehand: nobody makes at her own pace. */
    private static ClassFile course() {
        return SmallClass.of(6).meets(SATURDAY, LocalTime.of(10, 0), LocalTime.of(12, 0)).meets(SATURDAY.plusWeeks(1), LocalTime.of(10, 0), LocalTime.of(12, 0))
                .shows("pour", 40)
                .step(waits("set", Duration.ofHours(24)))
                .step(outside("demould", StepKind.BETWEEN, 15).withPerStudent(Duration.ofMinutes(2)))
                .step(waits("cure", Duration.ofHours(24)))
                .shows("sand", 50)
                .step(outside("cord", StepKind.HOMEWORK, 60).withAfter(List.of(new Step.After("pour", null, null))))
                .step(Step.of("hang", "The hang", StepKind.TOGETHER).withLasts(Duration.ofMinutes(10))
                        .withAfter(List.of(new Step.After("cord", null, null), new Step.After("sand", null, null))))
                .step(outside("varnish", StepKind.BETWEEN, 30))
                .step(waits("harden", Duration.ofDays(42)))
                .step(outside("post", StepKind.COLLECT, 0)).file();
    }

    @Test
    void saysWhoDoesWhatFromWhenAndByWhen() {
        ClassPlan plan = ComputedPlans.of(course());
        assertThat(plan.conflicts()).isEmpty();
        assertThat(BetweenMeetings.of(course().project(), plan.lesson())).containsExactly(
                item(3, "cord", StepKind.HOMEWORK, "2027-03-06T12:00", "2027-03-06T13:00", "2027-03-13T10:00", 1),
                item(4, "demould", StepKind.BETWEEN, "2027-03-07T10:40", "2027-03-07T11:07", "2027-03-12T10:00", 1),
                item(5, "cure", StepKind.WAIT, "2027-03-07T11:07", "2027-03-08T11:07", null, 1),
                item(8, "varnish", StepKind.BETWEEN, "2027-03-13T12:00", "2027-03-13T12:30", null, 2),
                item(9, "harden", StepKind.WAIT, "2027-03-13T12:30", "2027-04-24T12:30", null, 2),
                item(10, "post", StepKind.COLLECT, "2027-04-24T12:30", "2027-04-24T12:30", null, 2));
        assertThat(plan.lesson().finish()).isEqualTo(LocalDateTime.of(2027, 3, 13, 11, 0));
        assertThat(plan.verdict().answer()).isEqualTo(HoursVerdict.Answer.FITS);
    }

    /** Tidying goes on without the label, and so does what is shown first thing the second time: it is due for what is made behind that. */
    @Test
    void asksForWhatIsTakenHomeWhereItIsNeeded() {
        SmallClass once = SmallClass.of(6).level(SkillLevel.IMPROVER).makesIn("dip", 60).makesIn("label", 10).step(Step.of("tidy", "Tidy", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)));
        ClassFile home = once.file().with(once.file().setup().withHomework(List.of("label")));
        assertThat(BetweenMeetings.of(home.project(), ComputedPlans.of(home).lesson())).extracting(Item::step, Item::latest, Item::takes).containsExactly(tuple("label", "", "10 min"));
        assertThat(ComputedPlans.of(home).lesson().finish()).isEqualTo(LocalDateTime.of(2027, 3, 6, 19, 5));
        ClassFile again = once.meets(SATURDAY, LocalTime.of(10, 0), LocalTime.of(12, 0)).meets(SATURDAY.plusWeeks(1), LocalTime.of(10, 0), LocalTime.of(12, 0)).shows("look", 5).makesIn("box", 10).file();
        ClassFile twice = again.with(again.setup().withHomework(List.of("label")));
        assertThat(BetweenMeetings.of(twice.project(), ComputedPlans.of(twice).lesson())).extracting(Item::step, Item::latest).containsExactly(tuple("label", "by Sat 13 Mar 2027, 10:00"));
    }

    @Test
    void saysInWordsWhoHowLongAndByWhen() {
        List<Item> items = BetweenMeetings.of(course().project(), ComputedPlans.of(course()).lesson());
        assertThat(items).extracting(Item::who).containsExactly("each student", "you", "nobody", "you", "nobody", "students, or the post");
        assertThat(items).extracting(Item::takes).startsWith("1 h", "27 min").endsWith("");
        assertThat(items).extracting(Item::latest).startsWith("by Sat 13 Mar 2027, 10:00", "by Fri 12 Mar 2027, 10:00", "");
    }

    private static Item item(int number, String id, StepKind kind, String from, String end, String by, int after) {
        LocalDateTime start = LocalDateTime.parse(from);
        LocalDateTime over = LocalDateTime.parse(end);
        return new Item(number, id, "The " + id, kind, start, over, by == null ? null : LocalDateTime.parse(by), Duration.between(start, over), after);
    }

    @Test
    void knowsNothingWithoutAPlan() {
        assertThat(BetweenMeetings.of(course().project(), null)).isEmpty();
    }

    /** The days between are named where they are too short. */
    @Test
    void tellsOfTooLittleTimeBetweenTheMeetings() {
        ClassFile tight = SmallClass.of(6).meets(SATURDAY, LocalTime.of(10, 0), LocalTime.of(12, 0)).meets(SATURDAY.plusDays(1), LocalTime.of(10, 0), LocalTime.of(12, 0))
                .shows("pour", 40).step(waits("set", Duration.ofHours(24))).step(outside("demould", StepKind.BETWEEN, 20)).shows("sand", 50).file();
        assertThat(ComputedPlans.of(tight).conflicts()).extracting(fault -> fault.sentence()).containsExactly("\"The sand\" waits for \"The demould\", which is done outside the meetings, "
                + "and can begin on 2027-03-07 12:20 at the earliest, 2 h 20 min after the last meeting begins. Book that meeting 2 h 20 min later or one more after it, or shorten what comes before.");
    }
}
