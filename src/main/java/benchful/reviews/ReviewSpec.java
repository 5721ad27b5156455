package benchful.reviews;

import benchful.core.learning.PlannedStep;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the tutor types after a class.
 *
 * @param began when the class really began; null for as planned
 * @param students how many came; null for all
 * @param steps by the key of the planned step: its id, and for a group {@code knot/2}
 * @param breaks by the key under which a break of the plan is told of on the day
 * @param materials by name
 * @param waited names of the tools that students waited for
 * @param why in the tutor's own words, used again and again: what made the class go as it did
 */
@Spec(name = "review-1", title = "What really happened in a class")
public record ReviewSpec(
        LocalTime began,
        @Range(from = 0, to = 200) @Mend("Enter how many students came, from 0 to 200.") Integer students,
        @Length(most = 400) Map<@Filled(60) @Mend("Name a step in at most 60 letters.") String, StepNote> steps,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 400) Map<@Filled(60) @Mend("Name a break in at most 60 letters.") String, BreakNote> breaks,
        @Length(most = 400) Map<@Filled(120) @Mend("Name a material in at most 120 letters.") String, MaterialNote> materials,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 60) List<@Filled(80) @Mend("Name a tool in at most 80 letters.") String> waited,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 12) List<@Filled(40) @Mend("Say why in at most 40 letters.") String> why,
        @LongText String notes) {

    static final ReviewSpec EMPTY = new ReviewSpec(null, null, null, null, null, null, null, null);

    public ReviewSpec {
        steps = copy(steps);
        breaks = copy(breaks);
        materials = copy(materials);
        waited = waited == null ? List.of() : List.copyOf(waited);
        why = why == null ? List.of() : List.copyOf(why);
    }

    /** Why, each reason once, as it was first written: “Late” and “late” are one. */
    Set<String> reasons() {
        Set<String> reasons = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        reasons.addAll(why);
        return reasons;
    }

    /** The same for these steps: a note that does not say which group it is of, where groups did the step, is of the first. */
    ReviewSpec of(List<PlannedStep> planned) {
        Map<String, StepNote> notes = new LinkedHashMap<>();
        steps.forEach((key, note) -> notes.put(planned.stream().filter(p -> p.key().equals(key)).findFirst()
                .or(() -> planned.stream().filter(p -> p.step().equals(key)).findFirst()).map(PlannedStep::key).orElse(key), note));
        return new ReviewSpec(began, students, notes, breaks, materials, waited, why, this.notes);
    }

    /**
     * How a step went: how long it took, or when it ended.
     *
     * @param ended time of day, on the date it was planned for
     */
    public record StepNote(Duration took, LocalTime ended, @ShortText String note) {}

    /**
     * How a break went.
     *
     * @param began time of day, on the date it was planned for; null for as planned
     * @param took nothing where it was left out; null where not known
     */
    public record BreakNote(LocalTime began, Duration took) {}

    /** What was left over, broken and short of a material, in its own unit; each null where not noticed. */
    public record MaterialNote(Quantity left, Quantity broken, Quantity missing) {
        private MaterialNote sized(Unit way) {
            return new MaterialNote(sized(left, way), sized(broken, way), sized(missing, way));
        }

        private static Quantity sized(Quantity amount, Unit way) {
            return amount == null ? null : amount.sized(way);
        }
    }

    /**
     * The same with "2 sheets" as sheets of the size that the material is counted in.
     *
     * @param ways by material, what it is counted in
     */
    ReviewSpec sized(Map<String, Unit> ways) {
        Map<String, MaterialNote> notes = new LinkedHashMap<>();
        materials.forEach((name, note) -> notes.put(name, ways.containsKey(name) ? note.sized(ways.get(name)) : note));
        return new ReviewSpec(began, students, steps, breaks, notes, waited, why, this.notes);
    }

    /** The same without what is said in words, and without what was waited for: all that minutes and waste are learned from. */
    public ReviewSpec figures() {
        Map<String, StepNote> timed = new LinkedHashMap<>();
        steps.forEach((key, note) -> {
            if (note.took() != null || note.ended() != null) {
                timed.put(key, new StepNote(note.took(), note.ended(), null));
            }
        });
        return new ReviewSpec(began, students, timed, breaks, materials, null, null, null);
    }

    private static <T> Map<String, T> copy(Map<String, T> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
