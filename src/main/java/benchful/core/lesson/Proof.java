package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Objects;

/**
 * Whether a shorter plan can exist.
 *
 * @param method how the plan was found
 * @param bound  no plan can finish before this time
 * @param finish when this plan finishes
 */
public record Proof(Method method, LocalDateTime bound, LocalDateTime finish) {

    /** How a plan was found. */
    public enum Method {
        LIST, SOLVER
    }

    public Proof {
        Objects.requireNonNull(method, "method");
        if (bound.isAfter(finish)) {
            throw new IllegalArgumentException("The bound " + bound + " lies after the finish " + finish);
        }
    }

    public boolean isShortest() {
        return bound.equals(finish);
    }

    /** How much shorter another plan might be at most. */
    public Duration gap() {
        return Duration.between(bound, finish);
    }

    public String sentence() {
        return isShortest() ? "Proven shortest: no other order finishes sooner."
                : "Best order found; another might finish up to " + MinuteWords.minutes(gap()) + " sooner.";
    }
}
