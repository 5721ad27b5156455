package benchful.core.cutting.patterns;

/** Asked for the most valuable pattern that one length, or sheet, gives. */
public interface Filler {
    /**
     * @param length which of the {@link Kinds#lengths()}
     * @param worths of a piece of each kind, in whole numbers
     * @return a pattern, and what no other exceeds in value
     */
    Knapsack.Best best(int length, long[] worths);
}
