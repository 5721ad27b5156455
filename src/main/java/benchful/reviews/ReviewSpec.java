package benchful.reviews;

import benchful.core.learning.PlannedStep;
import benchful.core.quantity.Quantity;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the tutor types after a class.
 *
 * @param began when the class really began; null for as planned
 * @param students how many came; null for all
 * @param steps by the key of the planned step: its id, and for a group {@code knot/2}
 * @param materials by name
 */
public record ReviewSpec(
        LocalTime began, Integer students, Map<String, StepNote> steps, Map<String, MaterialNote> materials, String notes) {

    static final ReviewSpec EMPTY = new ReviewSpec(null, null, null, null, null);

    public ReviewSpec {
        steps = copy(steps);
        materials = copy(materials);
    }

    /** The same for these steps: a note that does not say which group it is of, where groups did the step, is of the first. */
    ReviewSpec of(List<PlannedStep> planned) {
        Map<String, StepNote> notes = new LinkedHashMap<>();
        steps.forEach((key, note) -> notes.put(planned.stream().filter(p -> p.key().equals(key)).findFirst()
                .or(() -> planned.stream().filter(p -> p.step().equals(key)).findFirst()).map(PlannedStep::key).orElse(key), note));
        return new ReviewSpec(began, students, notes, materials, this.notes);
    }

    /**
     * How a step went: how long it took, or when it ended.
     *
     * @param ended time of day, on the date it was planned for
     */
    public record StepNote(Duration took, LocalTime ended, String note) {}

    /** What was left over, broken and short of a material, in its own unit; each null where not noticed. */
    public record MaterialNote(Quantity left, Quantity broken, Quantity missing) {}

    private static <T> Map<String, T> copy(Map<String, T> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
