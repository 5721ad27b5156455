package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * One length with its cuts, the longest pieces first.
 *
 * @param bought false for a length that was on hand
 * @param offcut what remains after the last cut
 * @param kept whether the offcut goes back into stock
 */
public record CutLength(Quantity length, boolean bought, List<Cut> cuts, Quantity offcut, boolean kept) {
    /** A piece, and where it begins on the length. */
    public record Cut(String label, Quantity length, Quantity at) {}

    public CutLength {
        cuts = List.copyOf(cuts);
    }
}
