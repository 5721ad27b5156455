package benchful.core.buying;

/**
 * What a search for the cheapest choice may still spend, in nodes of the solver times variables of its programme and not by the
 * clock, so that the same wants get the same choice on every machine. When it is spent, the best that was found stands with its
 * bound.
 */
final class Effort {
    /** Some four seconds of a processor of 2024: a node of 500 variables takes 5 to 15 ms there. */
    private static final long MOST = 150_000;

    /** What a programme takes before its first division into nodes is like so many of them. */
    private static final int BEFORE_NODES = 20;
    private static final int MOST_NODES = 4000;

    private long left = MOST;

    /** How many nodes a programme of this size may have; none where it is too large to begin with. */
    int nodes(int variables) {
        return (int) Math.min(MOST_NODES, left / each(variables) - BEFORE_NODES);
    }

    void spend(int variables, long nodes) {
        left -= Math.min(left, each(variables) * (nodes + BEFORE_NODES));
    }

    /** What a node takes grows faster than the programme. */
    private static long each(long variables) {
        return Math.max(1, variables + variables * variables / 1500);
    }
}
