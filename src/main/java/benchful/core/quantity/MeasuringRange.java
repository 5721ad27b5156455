package benchful.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * How finely amounts of a kind are measured at a bench, and how much of it one class is planned with at most. Lengths go to a
 * micrometre, as cutting plans count, and masses to what a jeweller's scale shows (common practice, no source); the most is what
 * every engine can still count with in whole numbers.
 */
public final class MeasuringRange {
    /** Both in base units. */
    private record Range(BigDecimal finest, BigDecimal most) {}

    private static final Map<Dimension, Range> RANGES = Map.of(
            Dimension.COUNT, range("0.0001", "1e6"),
            Dimension.LENGTH, range("0.001", "1e8"),
            Dimension.AREA, range("0.001", "1e10"),
            Dimension.VOLUME, range("1", "1e12"),
            Dimension.MASS, range("0.0001", "1e9"));
    private static final Range ANY = range("1e-9", "1e12");

    private MeasuringRange() {}

    private static Range range(String finest, String most) {
        return new Range(new BigDecimal(finest), new BigDecimal(most));
    }

    private static Range of(Dimension dimension) {
        return RANGES.getOrDefault(dimension, ANY);
    }

    /**
     * Decimal places of an amount in this unit. One step of any unit is at least one of the base unit's, so that an amount in feet
     * comes back the same from millimetres.
     */
    static int places(Unit unit) {
        BigDecimal steps = unit.factor().divideToIntegralValue(of(unit.dimension()).finest());
        return Math.max(0, steps.precision() - steps.scale() - 1);
    }

    /** @throws IllegalArgumentException with a sentence for its writer, where it is more than anything is planned with */
    public static Quantity bounded(Quantity amount) {
        Quantity most = most(amount.unit());
        if (amount.base().abs().compareTo(most.base()) > 0) {
            throw new IllegalArgumentException("That is more than anything is planned with here. Give at most %s.".formatted(most));
        }
        return amount;
    }

    /** The most in this unit, to whole ones where it is as many. */
    private static Quantity most(Unit unit) {
        BigDecimal most = of(unit.dimension()).most().divide(unit.factor(), Quantity.PRECISION);
        return new Quantity(most.compareTo(BigDecimal.ONE) < 0 ? most : most.setScale(0, RoundingMode.FLOOR), unit);
    }
}
