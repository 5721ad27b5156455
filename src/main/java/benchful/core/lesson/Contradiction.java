package benchful.core.lesson;

import java.util.List;

/**
 * The request cannot be met by any plan, however long.
 *
 * @param conflicts at least one, each naming the steps at fault
 * @param proven    false if no order was found in the time allowed but one may exist
 */
public record Contradiction(List<Conflict> conflicts, boolean proven) implements LessonOutcome {
    public Contradiction {
        conflicts = List.copyOf(conflicts);
        Guard.atLeast(1, conflicts.size(), "The number of conflicts");
    }
}
