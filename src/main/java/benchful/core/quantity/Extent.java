package benchful.core.quantity;

/**
 * A rectangle: a sheet, a piece of one, or what is left of it.
 *
 * @param length along the grain, where there is one [length]
 * @param width across it [length]
 */
public record Extent(Quantity length, Quantity width) {
    public Extent {
        if (!length.dimension().equals(Dimension.LENGTH) || !width.dimension().equals(Dimension.LENGTH) || length.signum() <= 0 || width.signum() <= 0) {
            throw new IllegalArgumentException("A rectangle has two lengths above 0, such as 60 mm and 40 mm; given are %s and %s.".formatted(length.measurable(), width.measurable()));
        }
    }

    public Quantity area() {
        return new Quantity(length.base().multiply(width.base()), Unit.MM2);
    }

    /** The same with the longer edge as its length. */
    public Extent upright() {
        return length.compareTo(width) < 0 ? new Extent(width, length) : this;
    }

    /** Whether it lies within the other, the one way or the other. */
    public boolean within(Extent other) {
        Extent inner = upright();
        Extent outer = other.upright();
        return inner.length.compareTo(outer.length) <= 0 && inner.width.compareTo(outer.width) <= 0;
    }

    @Override
    public String toString() {
        return length + " x " + width;
    }
}
