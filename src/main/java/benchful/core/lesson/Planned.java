package benchful.core.lesson;

import java.util.Objects;

/** There is a plan; {@link LessonPlan#fits()} says whether it ends in the booked hours. */
public record Planned(LessonPlan plan) implements LessonOutcome {
    public Planned {
        Objects.requireNonNull(plan, "plan");
    }
}
