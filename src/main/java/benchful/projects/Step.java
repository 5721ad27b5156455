package benchful.projects;

import benchful.core.lesson.StepKind;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;

/**
 * A part of the making.
 *
 * @param id short name by which others follow it: {@code knot}
 * @param lasts how long it takes, or waits at the least; null for a make step, which has {@code student} times
 * @param atMost for a wait: the longest it may last (glue that must be used while tacky); null where it may go on
 * @param student for a make step: one student's times, of one repeat where {@code repeats} is given
 * @param repeats formula: how often it is done per piece ({@code strand_knots}); null for once
 * @param share for a make step: the share of students that must be done before the class moves on, in (0, 1]; null for all
 * @param atHome for a wait: it may end at home, with the text as instruction
 * @param after what must have ended before it starts; null lets it follow the step before it in the sheet,
 *     an empty list means it can start at any time
 * @param tools what it uses, for each student at work (or for the class while it waits: a kiln, a rack)
 * @param help what the tutor is asked during a make step; null for none
 * @param text what to do, for the handout (Markdown)
 * @param leftHanded the same for a left-handed student; null where it makes no difference
 * @param link a film or page about the step; printed as a code
 */
public record Step(
        String id,
        String title,
        StepKind kind,
        Duration lasts,
        Duration atMost,
        StudentTime student,
        String repeats,
        BigDecimal share,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean atHome,
        @JsonInclude(JsonInclude.Include.NON_NULL) @JsonSetter(nulls = Nulls.SET) List<After> after,
        List<ToolUse> tools,
        Help help,
        List<String> hazards,
        String text,
        String leftHanded,
        String picture,
        String link) {

    public Step {
        after = after == null ? null : List.copyOf(after);
        tools = ProjectSpec.copy(tools);
        hazards = ProjectSpec.copy(hazards);
    }

    /** Three times for one improver: quick, usual and slow. */
    public record StudentTime(Duration quick, Duration usual, Duration slow) {}

    /**
     * Another step, and how long after its end this one starts.
     *
     * @param least shortest gap; null for 0; negative where they may overlap by so much
     * @param most greatest gap; null for none; negative where they must
     */
    public record After(String step, Duration least, Duration most) {
        /** Whether it can't begin before the other has ended. */
        boolean follows() {
            return least == null || !least.isNegative();
        }
    }

    /** @param each how many one student uses at once; for a wait or a demonstration, how many in all */
    public record ToolUse(String tool, int each) {}

    /**
     * @param calls how often one student asks for help in an hour of work
     * @param lasts how long the tutor spends on one call
     */
    public record Help(BigDecimal calls, Duration lasts) {}
}
