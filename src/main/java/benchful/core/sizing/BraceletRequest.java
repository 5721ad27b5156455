package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A closed row of beads asked for.
 *
 * @param wrist or finger, measured close [length]
 * @param ease added for comfort [length]
 * @param closure what the closure adds along the beads' centres; nothing for elastic [length]
 * @param maximum most beads there are; null for no limit
 * @param tolerance how far the inside may be from wrist and ease for whole repeats; null where only the length counts [length]
 */
public record BraceletRequest(
        Quantity wrist,
        Quantity ease,
        Quantity closure,
        List<BeadRun> pattern,
        Arrangement arrangement,
        Knots knots,
        @Nullable Integer maximum,
        @Nullable Quantity tolerance) {

    public BraceletRequest {
        pattern = List.copyOf(pattern);
        Guard.positive(wrist, Dimension.LENGTH, "The wrist");
        Guard.notNegative(ease, Dimension.LENGTH, "The ease");
        if (pattern.isEmpty()) {
            throw new IllegalArgumentException("The pattern needs at least one bead.");
        }
    }
}
