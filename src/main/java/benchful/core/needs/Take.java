package benchful.core.needs;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What pieces of one size take on one material line.
 *
 * @param kits how many students, demonstration pieces or spare kits
 * @param each the amount for one, or the length of one cut piece
 * @param pieces how many cut pieces for one; null where it is not cut
 * @param rectangle of one cut piece, whose area is {@code each}; null where it is not cut from sheet
 * @param grain whether rectangles must lie along the sheet
 */
public record Take(Taker taker, @Nullable String size, int kits, Quantity each, @Nullable Integer pieces, @Nullable Extent rectangle, boolean grain) {
    /** What is not cut, or cut to length. */
    public Take(Taker taker, @Nullable String size, int kits, Quantity each, @Nullable Integer pieces) {
        this(taker, size, kits, each, pieces, null, false);
    }

    /** Whom a kit is for. */
    public enum Taker {
        STUDENT,
        DEMONSTRATION,
        SPARE,
        /** No kit: the whole class. */
        SHARED
    }

    public Take {
        Objects.requireNonNull(taker, "taker");
        if (kits < 0 || each.signum() < 0 || pieces != null && pieces < 0) {
            throw new IllegalArgumentException("Neither kits nor amounts nor pieces can be negative.");
        }
    }

    /** Whether any piece is cut for it. */
    boolean cuts() {
        return kits > 0 && pieces != null && pieces > 0;
    }

    /** As it can be measured, so that the kits that are packed add up to what is needed. */
    Quantity perKit() {
        return (pieces == null ? each : each.times(pieces)).measurable();
    }

    Quantity amount() {
        return perKit().times(kits);
    }
}
