package benchful.plans;

import benchful.core.lesson.Break;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.risk.Risk;
import java.util.List;

/**
 * The lesson of a class on the clock; its components are those of {@link ClassPlan}.
 *
 * @param lesson null where {@code conflicts} keep the class from being planned, and {@code risk} with it
 */
public record Timing(LessonPlan lesson, Risk risk, List<Break> breaks, List<Conflict> conflicts) {
    public Timing {
        breaks = List.copyOf(breaks);
        conflicts = List.copyOf(conflicts);
    }

    /** Whether it fits; null where there is no plan. */
    public HoursVerdict verdict() {
        return lesson == null ? null : HoursVerdict.of(lesson, risk);
    }
}
