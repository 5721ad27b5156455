package benchful.core.lesson.risk;

import java.util.Arrays;

/**
 * The soonest of the students' next events, as a tree of winners: setting one time costs O(log students). A node holds time and
 * student in one number, so that the smaller of two is found by its sign, without a branch that a processor could not foresee.
 */
final class Soonest {

    private static final int STUDENT_BITS = 10;
    private static final long NEVER = Long.MAX_VALUE / 2;
    private static final double TICKS_PER_SECOND = 1 << 20;

    private final int leaves;
    private final long[] nodes;
    private final double[] time;

    /** @param students at most 1024 */
    Soonest(int students) {
        leaves = Integer.highestOneBit(Math.max(1, students - 1)) * 2;
        nodes = new long[2 * leaves];
        time = new double[leaves];
        Arrays.fill(nodes, NEVER);
    }

    void set(int student, double when) {
        time[student] = when;
        carryUp(student, (long) (when * TICKS_PER_SECOND) << STUDENT_BITS | student);
    }

    /** The student has no next event. */
    void never(int student) {
        carryUp(student, NEVER);
    }

    private void carryUp(int student, long key) {
        int node = leaves + student;
        long best = key;
        nodes[node] = key;
        while (node > 1) {
            long less = nodes[node ^ 1] - best;
            best += less & less >> Long.SIZE - 1;
            node >>= 1;
            nodes[node] = best;
        }
    }

    /** Whoever comes next; there must be one. */
    int student() {
        return (int) nodes[1] & (1 << STUDENT_BITS) - 1;
    }

    double time(int student) {
        return time[student];
    }
}
