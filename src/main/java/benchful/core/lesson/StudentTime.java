package benchful.core.lesson;

import java.time.Duration;

/**
 * What one student needs for one piece or one repeat: the quickest, the usual (most likely) and the slowest one.
 * The times include being helped, but not waiting for help or for a tool.
 *
 * @param repeats     how often it is done in one student's piece (knots, coils), at least 1
 * @param skillFactor what the level of the class multiplies the times by, above 0 (1 = as written)
 */
public record StudentTime(Duration quick, Duration usual, Duration slow, int repeats, double skillFactor) {
    public StudentTime {
        Guard.notNegative(quick, "quick time");
        Guard.notNegative(usual, "usual time");
        Guard.notNegative(slow, "slow time");
        Guard.atLeast(1, repeats, "The number of repeats");
        if (!(skillFactor > 0 && skillFactor < 1000)) {
            throw new IllegalArgumentException("The skill factor must be above 0 and below 1000, not " + skillFactor);
        }
    }

    public StudentTime(Duration quick, Duration usual, Duration slow) {
        this(quick, usual, slow, 1, 1);
    }

    public static StudentTime ofMinutes(long quick, long usual, long slow) {
        return new StudentTime(Duration.ofMinutes(quick), Duration.ofMinutes(usual), Duration.ofMinutes(slow));
    }

    /** Whether quick is at most usual, and usual at most slow. */
    public boolean isInOrder() {
        return quick.compareTo(usual) <= 0 && usual.compareTo(slow) <= 0;
    }

    /** What one unit of time as written becomes for this piece and this class. */
    public double scale() {
        return repeats * skillFactor;
    }
}
