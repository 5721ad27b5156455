package benchful.core.lesson;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * Step {@code to} follows step {@code from}: the gap from the end of the one to the start of the other is at least
 * {@code least} and, if given, at most {@code greatest}. A negative gap lets them overlap.
 */
public record Link(String from, String to, Duration least, Optional<Duration> greatest) {
    public Link {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(greatest, "greatest");
    }

    public Link(String from, String to) {
        this(from, to, Duration.ZERO, Optional.empty());
    }
}
