package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * A step as the plan had it: once, or once for each group.
 *
 * @param group 0 for the whole class, else the group from 1
 * @param handsOn false for a wait, during which other steps go on
 * @param length time worked, breaks left out
 */
public record PlannedStep(String step, int group, String title, boolean handsOn, LocalDateTime start, LocalDateTime end, Duration length) {

    /** What tells it from all others of its plan: {@code knot}, or {@code knot/2} for the second group. */
    public String key() {
        return key(step, group);
    }

    /** The key of a step that one group does, or the whole class (group 0). */
    public static String key(String step, int group) {
        return group == 0 ? step : step + "/" + group;
    }

    /** "Knot the strand, group 2". */
    public String name() {
        return named(title, group);
    }

    /** The same done by one group. */
    public PlannedStep of(int oneGroup) {
        return new PlannedStep(step, oneGroup, title, handsOn, start, end, length);
    }

    static String named(String title, int group) {
        return group == 0 ? title : title + ", group " + group;
    }
}
