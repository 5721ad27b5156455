package benchful.core.learning;

import java.time.LocalDateTime;

/** Somebody saw how many students had finished a planned step. */
public record Counted(String key, LocalDateTime at, int finished) {}
