package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;

/**
 * Where knots go, and what each does to strand and cord. Knots at the ends sit under the closure's covers and add no length.
 *
 * @param between a knot between all beads
 * @param ends how many at the ends, 0 to 2
 * @param along what one knot between beads adds to the strand [length]
 * @param takes the cord one knot takes up [length], at least {@code along}
 */
public record Knots(boolean between, int ends, Quantity along, Quantity takes) {
    /** Length of a tight overhand knot along the strand, in cord diameters: common practice, no source. */
    public static final BigDecimal ALONG = new BigDecimal("2");
    /**
     * Cord in a tight open overhand knot, in cord diameters. Source: Pieranski, Przybyl, Stasiak, "Tight open knots",
     * Eur. Phys. J. E 6 (2001), figure from memory.
     */
    public static final BigDecimal TAKES = new BigDecimal("10.1");

    public Knots {
        Guard.between(ends, 0, 2, "Knots at the ends");
        Guard.notNegative(along, Dimension.LENGTH, "The length a knot adds");
        Guard.notNegative(takes, Dimension.LENGTH, "The cord a knot takes");
        if (takes.compareTo(along) < 0) {
            throw new IllegalArgumentException("A knot can't take less cord than the length it adds.");
        }
    }

    public static Knots none() {
        return new Knots(false, 0, Quantity.zero(Unit.MM), Quantity.zero(Unit.MM));
    }

    /** Tight overhand knots in a cord of this diameter. */
    public static Knots tight(Quantity cord, boolean between, int ends) {
        Guard.positive(cord, Dimension.LENGTH, "The cord's diameter");
        return new Knots(between, ends, cord.times(ALONG), cord.times(TAKES));
    }
}
