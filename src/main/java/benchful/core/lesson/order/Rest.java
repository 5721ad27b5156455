package benchful.core.lesson.order;

import java.time.Duration;

/**
 * A rule for breaks: students work at the bench for so long at most before they rest for so long. Whatever is not their own work rests
 * them too if it lasts as long: a break, something shown, a wait.
 *
 * @param after at most so much work, above zero
 * @param lasts at least so long, above zero
 */
public record Rest(Duration after, Duration lasts) {
    public Rest {
        if (after.isNegative() || after.isZero() || lasts.isNegative() || lasts.isZero()) {
            throw new IllegalArgumentException("A rest of " + lasts + " after " + after + " of work: both must be above zero");
        }
    }
}
