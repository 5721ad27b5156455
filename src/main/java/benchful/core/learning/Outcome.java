package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDate;

/**
 * How one class came out against its plan.
 *
 * @param over by how much it ran over the time that was promised; negative where it was shorter
 */
public record Outcome(LocalDate day, Duration over) {
    /** Whether it kept the promised time. */
    public boolean kept() {
        return over.compareTo(Duration.ZERO) <= 0;
    }
}
