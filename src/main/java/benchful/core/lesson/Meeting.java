package benchful.core.lesson;

import java.time.LocalDateTime;
import java.util.Objects;

/** The hours booked on one occasion. A lesson has one or more; only the last may be overrun. */
public record Meeting(LocalDateTime start, LocalDateTime end) {
    public Meeting {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    /** Whether a break lies wholly in it. */
    public boolean holds(Break pause) {
        return !pause.start().isBefore(start) && !pause.end().isAfter(end);
    }
}
