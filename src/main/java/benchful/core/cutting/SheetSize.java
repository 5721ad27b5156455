package benchful.core.cutting;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;

/**
 * A sheet, or what is left of one.
 *
 * @param length along the grain, where there is one [length]
 * @param width across it [length]
 */
public record SheetSize(Quantity length, Quantity width) {
    public SheetSize {
        if (!length.dimension().equals(Dimension.LENGTH) || !width.dimension().equals(Dimension.LENGTH) || length.signum() <= 0 || width.signum() <= 0) {
            throw new IllegalArgumentException("A sheet must have a length and a width, but %s x %s is given.".formatted(length, width));
        }
    }

    public Quantity area() {
        return new Quantity(length.base().multiply(width.base()), Unit.MM2);
    }

    /** Whether a rectangle of this size lies within the other, laid one way or the other. */
    boolean within(SheetSize other) {
        return length.compareTo(other.length) <= 0 && width.compareTo(other.width) <= 0
                || length.compareTo(other.width) <= 0 && width.compareTo(other.length) <= 0;
    }

    @Override
    public String toString() {
        return length + " x " + width;
    }
}
