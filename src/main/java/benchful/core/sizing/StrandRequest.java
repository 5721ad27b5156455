package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A strand asked for.
 *
 * @param target finished length, closure included [length]
 * @param closure what the closure adds to it, covers and wire guard included [length]
 * @param maximum most beads there are; null for no limit
 * @param closed true for a row that is closed to a ring
 * @param tolerance how far from the length a strand may be that keeps its pattern whole; null where only the length counts [length]
 */
public record StrandRequest(Quantity target, Quantity closure, List<BeadRun> pattern, Arrangement arrangement, Knots knots,
        @Nullable Integer maximum, boolean closed, @Nullable Quantity tolerance) {
    static final int MOST_BEADS = 5000;

    public StrandRequest {
        pattern = List.copyOf(pattern);
        Objects.requireNonNull(arrangement, "arrangement");
        Objects.requireNonNull(knots, "knots");
        Guard.positive(target, Dimension.LENGTH, "The finished length");
        Guard.notNegative(closure, Dimension.LENGTH, "The closure's length");
        if (tolerance != null) {
            Guard.notNegative(tolerance, Dimension.LENGTH, "The tolerance");
        }
        if (target.compareTo(closure) <= 0) {
            throw new IllegalArgumentException("The finished length must be longer than the closure.");
        }
        if (pattern.isEmpty()) {
            throw new IllegalArgumentException("The pattern needs at least one bead.");
        }
        if (maximum != null) {
            Guard.between(maximum, 1, MOST_BEADS, "The most beads");
        }
        Guard.between(reach(target, closure, pattern), 0, MOST_BEADS, "The number of beads");
    }

    /** Of an open strand, by its length alone. */
    public static StrandRequest byLength(Quantity target, Quantity closure, List<BeadRun> pattern, Arrangement arrangement, Knots knots, @Nullable Integer maximum) {
        return new StrandRequest(target, closure, pattern, arrangement, knots, maximum, false, null);
    }

    /** Whether a strand of so many beads keeps its pattern whole where it is seen. */
    boolean isWhole(int beads) {
        return arrangement.isWhole(pattern, beads, closed);
    }

    /** How many of the smallest beads alone would fill the target. */
    int reach() {
        return reach(target, closure, pattern);
    }

    private static int reach(Quantity target, Quantity closure, List<BeadRun> pattern) {
        BigDecimal least = pattern.stream().map(run -> run.size().base()).min(Comparator.naturalOrder()).orElseThrow();
        BigDecimal beads = target.minus(closure).base().divide(least, 0, RoundingMode.CEILING);
        return beads.min(BigDecimal.valueOf(Integer.MAX_VALUE)).intValue();
    }
}
