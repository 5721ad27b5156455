package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What the tutor typed of one planned step: how long it took, or when it ended, or both; minutes count before the end.
 *
 * @param key of the planned step, see {@link PlannedStep#key}
 * @param took null where not typed
 * @param ended null where not typed
 */
public record Actual(String key, @Nullable Duration took, @Nullable LocalDateTime ended) {}
