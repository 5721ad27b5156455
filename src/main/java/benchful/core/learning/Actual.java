package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * What the tutor typed of one step: how long it took, or when it ended, or both; minutes count before the end.
 *
 * @param took null where not typed
 * @param ended null where not typed
 */
public record Actual(String step, Duration took, LocalDateTime ended) {}
