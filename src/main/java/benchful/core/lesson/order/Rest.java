package benchful.core.lesson.order;

import benchful.core.lesson.Meeting;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A rule for breaks: students work at the bench for so long at most before they rest for so long. Whatever is not their own work rests
 * them too if it lasts as long: a break, something shown, a wait.
 *
 * @param after  at most so much work, above zero
 * @param lasts  at least so long, above zero
 * @param during the one meeting that it is for; empty for every one
 */
public record Rest(Duration after, Duration lasts, Optional<Meeting> during) {
    public Rest {
        if (after.isNegative() || after.isZero() || lasts.isNegative() || lasts.isZero()) {
            throw new IllegalArgumentException("A rest of " + lasts + " after " + after + " of work: both must be above zero");
        }
    }

    public Rest(Duration after, Duration lasts) {
        this(after, lasts, Optional.empty());
    }

    /** Whether it is for work that begins then. */
    public boolean isFor(LocalDateTime time) {
        return during.isEmpty() || !time.isBefore(during.get().start()) && time.isBefore(during.get().end());
    }
}
