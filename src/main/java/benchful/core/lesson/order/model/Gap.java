package benchful.core.lesson.order.model;

/**
 * Bounds on the time from the end of one activity (or its start, if {@code fromStart}) to the start of another [grains].
 *
 * @param least    at least this, or {@link #NO_LEAST}
 * @param greatest at most this, or {@link #NO_GREATEST}
 */
public record Gap(int from, boolean fromStart, int to, long least, long greatest) {

    static final long NO_LEAST = Long.MIN_VALUE;
    public static final long NO_GREATEST = Long.MAX_VALUE;

    public boolean hasLeast() {
        return least != NO_LEAST;
    }

    public boolean hasGreatest() {
        return greatest != NO_GREATEST;
    }
}
