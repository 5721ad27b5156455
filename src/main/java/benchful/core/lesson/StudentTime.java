package benchful.core.lesson;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What one student needs for one piece or one repeat: the quickest, the usual (most likely) and the slowest one.
 * The times include being helped, but not waiting for help or for a tool.
 *
 * @param work how much of it each student does, in the order of the seats; one entry where all do the same. A class with fewer
 *             seats takes the first, one with more the last again
 */
public record StudentTime(Duration quick, Duration usual, Duration slow, List<Work> work) {

    /**
     * How much of a step one student does.
     *
     * @param repeats     how often it is done in the student's piece (knots, coils), at least 1
     * @param skillFactor what the student's level multiplies the times by, above 0 (1 = as written)
     */
    public record Work(int repeats, double skillFactor) {

        public Work {
            Guard.atLeast(1, repeats, "The number of repeats");
            if (!(skillFactor > 0 && skillFactor < 1000)) {
                throw new IllegalArgumentException("The skill factor must be above 0 and below 1000, not " + skillFactor);
            }
        }

        /** What one unit of time as written becomes. */
        public double scale() {
            return repeats * skillFactor;
        }
    }

    public StudentTime {
        Guard.notNegative(quick, "quick time");
        Guard.notNegative(usual, "usual time");
        Guard.notNegative(slow, "slow time");
        List<Work> distinct = work.stream().distinct().toList();
        work = distinct.size() == 1 ? distinct : List.copyOf(work);
        Guard.atLeast(1, work.size(), "The number of students who do it");
    }

    /** All students do the same. */
    public StudentTime(Duration quick, Duration usual, Duration slow, int repeats, double skillFactor) {
        this(quick, usual, slow, List.of(new Work(repeats, skillFactor)));
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

    /** What one unit of time as written becomes for a student's piece and level; students count from 0. */
    public double scale(int student) {
        return workOf(student).scale();
    }

    /** The same of those who stay, by their seats. */
    public StudentTime of(List<Integer> seats) {
        return new StudentTime(quick, usual, slow, seats.stream().map(this::workOf).toList());
    }

    /** How often a student does it; students count from 0. */
    public int repeats(int student) {
        return workOf(student).repeats();
    }

    /** How much of it a student does; students count from 0. */
    public Work workOf(int student) {
        return work.get(Math.min(student, work.size() - 1));
    }

    /** What the first so many students' units become. */
    public double[] scales(int students) {
        return IntStream.range(0, students).mapToDouble(this::scale).toArray();
    }
}
