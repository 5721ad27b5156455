package benchful.projects;

import benchful.catalogue.HazardName;
import benchful.core.lesson.StepKind;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Formerly;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.annotation.JsonAlias;
import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;

/**
 * A part of the making.
 *
 * @param id short name by which others follow it: {@code knot}
 * @param lasts how long it takes, or waits at the least, or keeps one student at home; null for a make step, which has {@code student}
 *     times, and for what is collected or posted
 * @param perStudent for what all watch or do together, what is prepared, or what the tutor does between meetings: what each student adds to {@code lasts}; null for nothing
 * @param mayRunOver for what all watch or do together: how much longer than {@code lasts} it may take at the most; null where it always takes as long
 * @param watchers for a demonstration: how many can watch at once; a larger class is shown it in turns. Null where all can
 * @param places for a wait: how many pieces go into one load of its equipment, one load after the other; null where all go in at once
 * @param atMost for a wait: the longest it may last (glue that must be used while tacky); null where it may go on
 * @param student for a make step: one student's times, of one repeat where {@code repeats} is given
 * @param beside for a make step: the tutor or a helper stays beside each student all the while, so students take turns; at a torch
 * @param repeats formula: how often it is done per piece ({@code strand_knots}); null for once
 * @param share for a make step: the share of students that must be done before the class moves on, in (0, 1]; null for all
 * @param atHome for a wait: it may end at home, with the text as instruction
 * @param after what must have ended before it starts; null lets it follow the step before it in the sheet,
 *     an empty list means it can start at any time
 * @param tools what it uses, for each student at work (or for the class while it waits: a kiln, a rack)
 * @param help what the tutor is asked during a make step; null for none
 * @param text what to do, for the handout (Markdown); its blanks, such as {@code <length>}, are filled in for each reader
 * @param leftHanded the same for a left-handed student; null where it makes no difference
 * @param pictures names of the project's pictures that show it, in their order
 * @param link a film or page about the step; printed as a code
 */
@RecordBuilder
public record Step(
        @Required @FormulaName @Mend("Give the step a short name of small letters, digits and _, such as “knot”.") String id,
        @Required @Filled(120) @Mend("Give the step a title.") String title,
        @Required StepKind kind,
        Duration lasts,
        @JsonInclude(JsonInclude.Include.NON_NULL) Duration perStudent,
        @JsonInclude(JsonInclude.Include.NON_NULL) Duration mayRunOver,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Range(from = 1, to = 200) @Mend("Give how many can watch at once, from 1 to 200.") Integer watchers,
        Duration atMost,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Range(from = 1, to = 1000) @Mend("Give how many pieces go into one load, from 1.") Integer places,
        StudentTime student,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean beside,
        @FormulaText String repeats,
        @Range(above = 0, to = 1) @Mend("Give the share of students as a number above 0 and up to 1, such as 0.9.") BigDecimal share,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean atHome,
        @JsonInclude(JsonInclude.Include.NON_NULL) @JsonSetter(nulls = Nulls.SET) @Length(most = 100) List<After> after,
        @Length(most = 30) List<ToolUse> tools,
        Help help,
        @Length(most = 30) List<@HazardName String> hazards,
        @LongText String text,
        @LongText String leftHanded,
        @Formerly("picture") @JsonAlias("picture") @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY)
        @Length(most = 12) List<@Length(least = 1, most = 60) @Mend("Name one of this project's pictures.") String> pictures,
        @Length(most = 300) @Matching("^https?://\\S+$") @Mend("Give a whole web address that starts with https://.") String link) implements StepBuilder.With {

    public Step {
        after = after == null ? null : List.copyOf(after);
        tools = ProjectSpec.copy(tools);
        hazards = ProjectSpec.copy(hazards);
        pictures = ProjectSpec.copy(pictures);
    }

    public static Step of(String id, String title, StepKind kind) {
        return StepBuilder.builder().id(id).title(title).kind(kind).build();
    }

    /** Three times for one improver: quick, usual and slow. */
    @Mend("Give one student's quick, usual and slow times.")
    public record StudentTime(@Required Duration quick, @Required Duration usual, @Required Duration slow) {}

    /**
     * Another step, and how long after its end this one starts.
     *
     * @param least shortest gap; null for 0; negative where they may overlap by so much
     * @param most greatest gap; null for none; negative where they must
     */
    public record After(
            @Required @Length(least = 1, most = 40) @Mend("Name the step that comes before.") String step, @Gap Duration least, @Gap Duration most) {
        /** Whether it can't begin before the other has ended. */
        public boolean follows() {
            return least == null || !least.isNegative();
        }
    }

    /** A time that may be less than nothing. */
    @Length(least = 1, most = 40)
    @Matching("^\\s*-?\\s*\\d")
    @Mend("Give a time, such as 10 min; -5 min where it may begin 5 min before the other ends.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Gap {}

    /**
     * @param each how many one student uses at once, or those who share them; for a wait or a demonstration, how many in all
     * @param sharedBy how many students work at the same ones together, such as 2 for pairs at a press; null for each alone
     */
    public record ToolUse(
            @Required @Length(least = 1, most = 80) @Mend("Name a tool of this project.") String tool,
            @Required @Range(from = 1, to = 1000) @Mend("Give how many one student uses at once, from 1.") int each,
            @JsonInclude(JsonInclude.Include.NON_NULL) @Range(from = 1, to = 8) @Mend("Give how many students share it, from 1 to 8.") Integer sharedBy) {
        /** One that nobody shares. */
        public ToolUse(String tool, int each) {
            this(tool, each, null);
        }

        public int together() {
            return sharedBy == null ? 1 : sharedBy;
        }

        /** As the lesson is planned with it. */
        public benchful.core.lesson.ToolUse planned() {
            return new benchful.core.lesson.ToolUse(tool, each, together());
        }
    }

    /**
     * @param calls how often one student asks for help in an hour of work
     * @param lasts how long the tutor spends on one call
     */
    public record Help(
            @Required @Range(from = 0, to = 60) @Mend("Give how often one student asks in an hour, from 0 to 60.") BigDecimal calls, @Required Duration lasts) {}
}
