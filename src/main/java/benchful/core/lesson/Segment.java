package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Objects;

/** A stretch of time without interruption. */
public record Segment(LocalDateTime start, LocalDateTime end) {
    public Segment {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    public Duration length() {
        return Duration.between(start, end);
    }
}
