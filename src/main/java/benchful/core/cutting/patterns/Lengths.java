package benchful.core.cutting.patterns;

/**
 * Equal lengths to cut from.
 *
 * @param capacity of one, a cut's loss included [um]
 * @param cost of one, in ten-thousandths of the unit of costs
 * @param available how many there are
 * @param bought false for what is on hand
 */
public record Lengths(long capacity, long cost, int available, boolean bought) {
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public boolean limited() {
        return available != UNLIMITED;
    }

    Lengths without(int times) {
        return limited() ? new Lengths(capacity, cost, available - times, bought) : this;
    }
}
