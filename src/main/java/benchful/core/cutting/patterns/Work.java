package benchful.core.cutting.patterns;

/**
 * How much a search for cuttings may still do, counted in steps and not by the clock, so that the same pieces get the same plan
 * on every machine. When it is spent the search ends with the best it has found and the bound it has proven.
 */
public final class Work {
    /** At most about two seconds on an ordinary machine of 2020. */
    private static final long MOST = 120_000_000;

    private long left;

    private Work(long left) {
        this.left = left;
    }

    /** @param attempts that share the allowance of one material */
    public static Work among(int attempts) {
        return new Work(MOST / Math.max(1, attempts));
    }

    public void spend(long steps) {
        left -= Math.min(left, steps);
    }

    public boolean isSpent() {
        return left == 0;
    }
}
