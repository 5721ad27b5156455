package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Objects;

/**
 * Whether a shorter order of the steps can exist, with each as long as it is expected to be and the class moving on together.
 *
 * @param method how the order was found
 * @param pacing how students really go on
 * @param bound  no order can finish before this time
 * @param finish when this order is expected to finish, so
 */
public record Proof(Method method, Pacing pacing, LocalDateTime bound, LocalDateTime finish) {

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
        String together = pacing == Pacing.TOGETHER ? "" : ", were all to move on together";
        return isShortest() ? "No order of these steps ends sooner" + together + "."
                : "The best order found; another might end up to " + MinuteWords.minutes(gap()) + " sooner" + together + ".";
    }
}
