package benchful.core.lesson;

import java.time.LocalDateTime;
import java.util.Objects;

/** A break at a fixed time inside a meeting, in which nobody works; waits run on. */
public record Break(String title, LocalDateTime start, LocalDateTime end) {
    public Break {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }
}
