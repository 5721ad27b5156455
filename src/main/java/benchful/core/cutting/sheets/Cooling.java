package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Work;

/** How long a local search may go on, and how much worse than where it is it may go: less and less, nothing in the end. */
final class Cooling {
    private final int tries;
    private final long mostSteps;
    private final double heat;
    private final Work work;
    private int tried;
    private long steps;

    /**
     * @param mostSteps so that enough of the work is left for the bound
     * @param heat at first, see {@link FilledSheets#isTakenFor}
     */
    Cooling(int tries, long mostSteps, double heat, Work work) {
        this.tries = tries;
        this.mostSteps = mostSteps;
        this.heat = heat;
        this.work = work;
    }

    boolean goesOn() {
        return tried < tries && steps < mostSteps && !work.isSpent();
    }

    /** For the next try. */
    double next() {
        double gone = Math.max((double) tried / tries, (double) steps / mostSteps);
        tried++;
        return heat * (1 - gone);
    }

    /** What it costs to fill sheets with so many pieces. */
    void spend(long pieces) {
        work.spend(pieces * pieces);
        steps += pieces * pieces;
    }
}
