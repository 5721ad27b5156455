package benchful.classes;

import benchful.catalogue.MaterialSpec;
import benchful.core.SkillLevel;
import benchful.web.forms.fields.Count;
import benchful.web.forms.fields.CurrencyCode;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tutor decides about one class: everything that, with the project, venue and catalogue, the plan is computed from.
 *
 * @param meetings when the class meets, in order; a long cure takes a second meeting
 * @param headcount how many students, 1 to 200
 * @param sizes how many students want which size, where not known one by one; the rest take the first size of the project
 * @param students those known by name, each with their size; at most {@code headcount}
 * @param demonstration the size of the tutor's own piece; null for none
 * @param spares kits packed beyond the students'
 * @param helpers people beside the tutor who can help at the bench
 * @param groups 1 for the whole class together, more for groups that take the make steps in turn where tools are scarce
 * @param ownPace whether students go on alone from one make step to the next, and gather for what is shown
 * @param share the share of students that must be done before the class moves on, in (0, 1]; null for all
 * @param promise how many of such classes are to keep the times of the plan; nine in ten unless said otherwise
 * @param breaks in every meeting that holds them, or in the one that they name
 * @param rest a rule by which more breaks are placed; null for none
 * @param preparedAhead ids of steps the tutor does before the class instead
 * @param homework ids of make steps that students do at home instead
 * @param shownToGroups ids of demonstrations that are shown to one group after the other, where the class works in groups
 * @param ownOrder ids of steps that come in this order where the project leaves it open; the rest stay where they end soonest
 * @param ownTimes when steps are to begin, by the tutor's own wish; one that can't begin so soon begins as soon as it can
 * @param foundOrder the order that a longer search found, from first to last, which planning begins with: ids of steps, each with its group as in "cut/2" where groups take
 *     turns; null for none. It asks for nothing: what is no step any more is passed over
 * @param tools what the tutor brings, added to the venue's
 * @param currency ISO 4217 code the totals are shown in
 * @param costs what more hours, hands and students would cost or bring; null where the tutor did not say
 * @param youngest age of the youngest student in years; null where all are grown up
 * @param choices by the project's material, what the class takes where a student has not chosen
 * @param instead materials that stand in for others, for the whole class
 */
@Spec(name = "setup-1", title = "What the tutor decides about one class")
@RecordBuilder
public record ClassSetup(
        @ShortText String title,
        @Required @Length(least = 1, most = 20) @Mend("Give at least one meeting with its date, start and end.") List<Meeting> meetings,
        @Required @Range(from = 1, to = 200) @Mend("Enter a number of students from 1 to 200.") int headcount,
        @Required SkillLevel level,
        @Length(most = 100) Map<@Filled(40) @Mend("Name a size in at most 40 letters.") String,
                @Range(from = 0, to = 200) @Mend("Enter how many students want this size, from 0 to 200.") Integer> sizes,
        @Length(most = 200) List<Student> students,
        @Length(most = 40) @Mend("Choose a size of the project, or none.") String demonstration,
        @Range(from = 0, to = 100) @Mend("Enter how many spare kits, from 0 to 100.") int spares,
        @Range(from = 0, to = 20) @Mend("Enter how many helpers, from 0 to 20.") int helpers,
        @Range(from = 1, to = 20) @Mend("Enter how many groups take turns, from 1 (all together) to 20.") int groups,
        boolean ownPace,
        @Range(above = 0, to = 1) @Mend("Enter the share of students to wait for, above 0 and up to 1.") BigDecimal share,
        Promise promise,
        @Length(most = 20) List<Break> breaks,
        @JsonInclude(JsonInclude.Include.NON_NULL) Rest rest,
        @Length(most = 100) List<@Length(least = 1, most = 40) @Mend("Name a step of the project.") String> preparedAhead,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 100) List<@Length(least = 1, most = 40) @Mend("Name a step of the project.") String> homework,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 100) List<@Length(least = 1, most = 40) @Mend("Choose a demonstration of the project.") String> shownToGroups,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 100) List<@Length(least = 1, most = 40) @Mend("Choose a step of the project.") String> ownOrder,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 100) List<OwnTime> ownTimes,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 8000) @Mend("Leave the order as it was found, or empty.") String foundOrder,
        @Length(most = 200) Map<@Filled(80) @Mend("Name a tool in at most 80 letters.") String, @Count Integer> tools,
        @CurrencyCode String currency,
        Costs costs,
        @Range(from = 3, to = 120) @Mend("Enter the age of the youngest student in years, or leave it empty.") Integer youngest,
        @LongText String notes,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 100) Map<@MaterialName String, @Chosen String> choices,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 60) List<Instead> instead) implements ClassSetupBuilder.With {
    private static final int GROWN_UP = 18;


    public ClassSetup {
        meetings = meetings == null ? List.of() : List.copyOf(meetings);
        groups = Math.max(1, groups);
        promise = promise == null ? Promise.NINE_IN_TEN : promise;
        sizes = copy(sizes);
        students = students == null ? List.of() : List.copyOf(students);
        breaks = breaks == null ? List.of() : List.copyOf(breaks);
        preparedAhead = preparedAhead == null ? List.of() : List.copyOf(preparedAhead);
        homework = homework == null ? List.of() : List.copyOf(homework);
        shownToGroups = shownToGroups == null ? List.of() : List.copyOf(shownToGroups);
        ownOrder = ownOrder == null ? List.of() : List.copyOf(ownOrder);
        ownTimes = ownTimes == null ? List.of() : List.copyOf(ownTimes);
        tools = copy(tools);
        choices = copy(choices);
        instead = instead == null ? List.of() : List.copyOf(instead);
    }

    /** A class with nothing decided beyond its hours, students and sizes. */
    public static ClassSetup plain(String title, List<Meeting> meetings, int headcount, SkillLevel level, Map<String, Integer> sizes, String currency) {
        return ClassSetupBuilder.builder().title(title).meetings(meetings).headcount(headcount).level(level).sizes(sizes).currency(currency).build();
    }

    /**
     * Amounts in the currency of the class; each null where not given.
     *
     * @param fee what a student pays for the class
     * @param helper pay of a helper for an hour
     * @param room rent of the room for an hour
     */
    public record Costs(@Price BigDecimal fee, @Price BigDecimal helper, @Price BigDecimal room) {}

    /** The same class so many weeks later; earlier where they are less than nothing. */
    public ClassSetup movedBy(long weeks) {
        return withMeetings(meetings.stream().map(m -> m.later(weeks)).toList());
    }

    /** One coming together of the class. */
    public record Meeting(@Required LocalDate date, @Required LocalTime starts, @Required LocalTime ends) {
        private Meeting later(long weeks) {
            return new Meeting(date.plusWeeks(weeks), starts, ends);
        }

        /** Whether it is going on at a time of its day. */
        public boolean isOn(LocalTime time) {
            return !time.isBefore(starts) && time.isBefore(ends);
        }

        /** Whether a break lies wholly within its hours. */
        public boolean holds(Break b) {
            return !b.at().isBefore(starts) && !date.atTime(b.at()).plus(b.lasts()).isAfter(date.atTime(ends));
        }
    }

    /**
     * A break at a time of day.
     *
     * @param latest when it begins at the latest, where it may begin later than {@code at}; null for a fixed time
     * @param meeting in which meeting only, from 1; null for every one
     */
    public record Break(@Required LocalTime at, @Required Duration lasts, @JsonInclude(JsonInclude.Include.NON_NULL) LocalTime latest,
            @JsonInclude(JsonInclude.Include.NON_NULL) @OneMeeting Integer meeting) {
        public Break(LocalTime at, Duration lasts) {
            this(at, lasts, null, null);
        }

        /** The same, so long. */
        public Break lasting(Duration length) {
            return new Break(at, length, latest, meeting);
        }

        public boolean mayMove() {
            return latest != null && latest.isAfter(at);
        }
    }

    /**
     * Breaks by a rule, at the times that the plan finds: students work at the bench for at most so long, and then rest for so long.
     * Whatever is not their own work and lasts as long rests them too.
     *
     * @param meeting in which meeting only, from 1; null for every one
     */
    public record Rest(@Required Duration after, @Required Duration lasts, @JsonInclude(JsonInclude.Include.NON_NULL) @OneMeeting Integer meeting) {
        public Rest(Duration after, Duration lasts) {
            this(after, lasts, null);
        }
    }

    /** The number of a meeting of the class, from 1. */
    @Range(from = 1, to = 20)
    @Mend("Enter the number of a meeting, or nothing for all.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface OneMeeting {}

    /** The breaks that a meeting has. */
    public List<Break> breaksOf(Meeting m) {
        int number = meetings.indexOf(m) + 1;
        return breaks.stream().filter(b -> (b.meeting() == null || b.meeting() == number) && m.holds(b)).toList();
    }

    /**
     * When a step is to begin.
     *
     * @param step id of a step
     * @param meeting in which meeting, from 1; null for the first
     */
    public record OwnTime(
            @Required @Length(least = 1, most = 40) @Mend("Choose a step of the project.") String step,
            @JsonInclude(JsonInclude.Include.NON_NULL) @Range(from = 1, to = 20) @Mend("Enter the number of a meeting, or nothing for the first.") Integer meeting,
            @Required LocalTime at) {
        /** Of the meetings of a class, from 0. */
        public int index() {
            return meeting == null ? 0 : meeting - 1;
        }
    }

    /** By step, the time of its own that it has; where its meeting is gone, none. */
    public Map<String, LocalDateTime> timesAskedFor() {
        Map<String, LocalDateTime> times = new LinkedHashMap<>();
        ownTimes.forEach(wish -> meetingOf(wish).ifPresent(m -> times.put(wish.step(), m.date().atTime(wish.at()))));
        return times;
    }

    /** The meeting that a wish is for; nothing where there is none. */
    public Optional<Meeting> meetingOf(OwnTime wish) {
        return wish.index() < meetings.size() ? Optional.of(meetings.get(wish.index())) : Optional.empty();
    }

    /**
     * A student known by name.
     *
     * @param size name of a size of the project; null for the first
     * @param level where the student is more or less practised than the class; null for the class's
     * @param choices by the project's material, what was chosen: one of the materials offered, or a word where none are
     * @param instead materials that stand in for others, for this student
     * @param emergency whom to call; null where not known
     */
    @RecordBuilder
    public record Student(
            @Required @Filled(120) @Mend("Enter the student's name.") String name,
            @Length(most = 20) @Mend("Write the seat in at most 20 characters.") String seat,
            @Length(most = 40) @Mend("Choose a size of the project.") String size,
            @JsonInclude(JsonInclude.Include.NON_NULL) SkillLevel level,
            @Length(most = 100) Map<@MaterialName String, @Chosen String> choices,
            Boolean leftHanded,
            Boolean largePrint,
            @ShortText String needs,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 60) List<Instead> instead,
            @JsonInclude(JsonInclude.Include.NON_NULL) Contact emergency) implements ClassSetupStudentBuilder.With {
        public Student {
            choices = copy(choices);
            instead = instead == null ? List.of() : List.copyOf(instead);
        }

        /** Somebody of whom nothing more is known. */
        public static Student named(String name) {
            return ClassSetupStudentBuilder.builder().name(name).build();
        }

        private Student renamed(String from, String to) {
            return withChoices(ClassSetup.renamed(choices, from, to)).withInstead(ClassSetup.renamed(instead, from, to));
        }
    }

    /** Somebody to call in an emergency: personal data, for the register and nothing else. */
    public record Contact(
            @Length(most = 120) @Mend("Write the name in at most 120 characters.") String name,
            @Required @Length(most = 60) @Matching("[0-9]{3}") @Mend("Write the telephone number to call, in at most 60 characters.") String phone) {}

    @Filled(120)
    @Mend("Name a material in at most 120 letters.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface MaterialName {}

    /** A material or a word that is chosen. */
    @Length(most = 120)
    @Mend("Write the choice in at most 120 characters.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Chosen {}

    /**
     * A material that stands in for another.
     *
     * @param of a material of the project, or one that was chosen
     * @param use a material of the catalogue, of the same kind of amount
     */
    public record Instead(
            @Required @Filled(120) @Mend("Name the material of the project that is not used.") String of,
            @Required @Filled(120) @Mend("Name the material of the catalogue that is used instead.") String use) {
        private Instead renamed(String from, String to) {
            return new Instead(ClassSetup.renamed(of, from, to), ClassSetup.renamed(use, from, to));
        }
    }

    /** The same where a material has got another name. */
    ClassSetup renamed(String from, String to) {
        return withStudents(students.stream().map(s -> s.renamed(from, to)).toList())
                .withChoices(renamed(choices, from, to)).withInstead(renamed(instead, from, to));
    }

    /** The same so many weeks later with nobody known by name: neither who they were, nor what they needed or chose. */
    ClassSetup forOthers(Map<String, Integer> mix, long weeks) {
        return movedBy(weeks).withSizes(mix).withStudents(null);
    }

    /** Without whom to call for each student. */
    public ClassSetup withoutContacts() {
        return withStudents(students.stream().map(s -> s.withEmergency(null)).toList());
    }

    /** Whether somebody of the class is known to be under age. */
    public boolean hasChildren() {
        return youngest != null && youngest < GROWN_UP;
    }

    /** Whether somebody of the class chose this material, or takes it or leaves it for another. */
    boolean names(String material) {
        return !equals(renamed(material, ""));
    }

    private static Map<String, String> renamed(Map<String, String> choices, String from, String to) {
        Map<String, String> renamed = new LinkedHashMap<>();
        choices.forEach((material, chosen) -> renamed.put(renamed(material, from, to), chosen(material, chosen, from, to)));
        return renamed;
    }

    /** A variant may be named by what distinguishes it, which then follows too. */
    private static String chosen(String material, String chosen, String from, String to) {
        String before = MaterialSpec.nameOf(material, "");
        boolean word = !chosen.equalsIgnoreCase(from) && MaterialSpec.nameOf(material, chosen).equalsIgnoreCase(from) && to.startsWith(before);
        return word ? to.substring(before.length()) : renamed(chosen, from, to);
    }

    private static List<Instead> renamed(List<Instead> instead, String from, String to) {
        return instead.stream().map(i -> i.renamed(from, to)).toList();
    }

    private static String renamed(String name, String from, String to) {
        return name.equalsIgnoreCase(from) ? to : name;
    }

    private static <T> Map<String, T> copy(Map<String, T> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
