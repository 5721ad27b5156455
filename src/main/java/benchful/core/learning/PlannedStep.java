package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * A step as the plan had it.
 *
 * @param handsOn false for a wait, during which other steps go on
 * @param length time worked, breaks left out
 */
public record PlannedStep(String step, String title, boolean handsOn, LocalDateTime start, LocalDateTime end, Duration length) {}
