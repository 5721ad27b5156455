package benchful.core.cutting.patterns;

/**
 * Equal lengths to cut from.
 *
 * @param capacity of one, a cut's loss included [um]
 * @param cost of one, in ten-thousandths of the unit of costs
 * @param available how many there are; unlimited of what can be bought as often as needed
 * @param bought false for what is on hand; what is new may be limited too, where it is planned already
 */
public record EqualLengths(long capacity, long cost, int available, boolean bought) {
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public boolean limited() {
        return available != UNLIMITED;
    }

    EqualLengths without(int times) {
        return limited() ? new EqualLengths(capacity, cost, available - times, bought) : this;
    }
}
