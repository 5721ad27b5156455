package benchful.core.needs;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Equal pieces to be cut.
 *
 * @param label whom they are for: "small", or "reserve" for those that may spoil
 * @param length of one; null for rectangles
 * @param rectangle of one; null for lengths
 * @param grain whether rectangles must lie along the sheet
 */
public record CutNeed(String label, @Nullable Quantity length, @Nullable Extent rectangle, boolean grain, int count) {
    static final String RESERVE = "reserve";

    public CutNeed(String label, Quantity length, int count) {
        this(label, length, null, false, count);
    }

    public CutNeed(String label, Extent rectangle, boolean grain, int count) {
        this(label, null, rectangle, grain, count);
    }

    /** Whether they are for nobody yet, in case others spoil. */
    public boolean isReserve() {
        return label.equals(RESERVE);
    }

    /** Length or area of all. */
    public Quantity amount() {
        return (rectangle == null ? requireNonNull(length) : rectangle.area()).times(count);
    }

    /** The same pieces under another label. */
    public CutNeed labelled(String other) {
        return new CutNeed(other, length, rectangle, grain, count);
    }
}
