package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;

/** A time in which no step went on: a break, or the days between two meetings. */
public record Pause(LocalDateTime start, LocalDateTime end) {
    /** How much of it lies between two moments. */
    Duration within(LocalDateTime from, LocalDateTime to) {
        LocalDateTime s = start.isAfter(from) ? start : from;
        LocalDateTime e = end.isBefore(to) ? end : to;
        return e.isAfter(s) ? Duration.between(s, e) : Duration.ZERO;
    }
}
