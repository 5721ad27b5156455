package benchful.core.lesson;

import java.time.LocalDateTime;

/** The row of the plan's picture that a block stands in. Demonstrations are drawn for the tutor as well, see {@link TutorLoad}. */
public enum Lane {
    CLASS, WAIT, EQUIPMENT, HOME, OUTSIDE;

    /** Where a step stands that ends at a time. */
    public static Lane of(Step step, LocalDateTime end, LocalDateTime bookedEnd) {
        if (!(step instanceof Step.Wait wait)) {
            return step.kind().isOutside() ? OUTSIDE : CLASS;
        }
        return wait.endsAtHome() && end.isAfter(bookedEnd) ? HOME : wait.uses().isEmpty() ? WAIT : EQUIPMENT;
    }
}
