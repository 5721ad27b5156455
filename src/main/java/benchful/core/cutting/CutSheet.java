package benchful.core.cutting;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * One sheet with its cuts. Places are measured from one corner, first along the sheet's length, then along its width.
 *
 * @param bought false for a sheet that was on hand
 * @param cuts in the order in which to make them, each from edge to edge of what it divides
 */
public record CutSheet(Extent size, boolean bought, List<Piece> pieces, List<Offcut> offcuts, List<Cut> cuts) {
    public CutSheet {
        pieces = List.copyOf(pieces);
        offcuts = List.copyOf(offcuts);
        cuts = List.copyOf(cuts);
    }

    /**
     * A rectangle, and where it lies.
     *
     * @param size as it lies: its length along the sheet's
     */
    public record Piece(String label, Extent size, Quantity x, Quantity y) {}

    /** What is left, and whether it goes back into stock. */
    public record Offcut(Extent size, Quantity x, Quantity y, boolean kept) {}

    /**
     * A straight cut.
     *
     * @param across true where it runs across the sheet's length
     * @param at where the kept side of the cut lies, from the corner
     * @param from where it begins, measured along it
     */
    public record Cut(boolean across, Quantity at, Quantity from, Quantity to) {}
}
