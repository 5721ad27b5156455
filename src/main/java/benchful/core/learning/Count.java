package benchful.core.learning;

/**
 * So many students had finished a step by then.
 *
 * @param after time since the step could begin, pauses left out [s]
 */
public record Count(double after, int finished) {}
