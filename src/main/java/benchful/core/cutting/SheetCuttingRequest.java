package benchful.core.cutting;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rectangles to be cut from sheets.
 *
 * @param onHand sheets there are; they cost nothing
 * @param planned new sheets that are bought whatever is cut from them; they cost nothing more
 * @param stocks sheets that can be bought; none where nothing is on offer
 * @param loss lost at each cut [length]
 * @param keep offcuts on which such a rectangle lies are worth keeping; null to keep none
 */
public record SheetCuttingRequest(List<Rectangle> pieces, List<Extent> onHand, List<Extent> planned, List<SheetStock> stocks, Quantity loss, @Nullable Rectangle keep) {
    public SheetCuttingRequest {
        pieces = pieces.stream().filter(p -> p.count() > 0).toList();
        onHand = List.copyOf(onHand);
        planned = List.copyOf(planned);
        stocks = List.copyOf(stocks);
        if (loss.signum() < 0) {
            throw new IllegalArgumentException("The loss at a cut can't be negative.");
        }
    }

    /** Nothing is planned yet. */
    public SheetCuttingRequest(List<Rectangle> pieces, List<Extent> onHand, List<SheetStock> stocks, Quantity loss, @Nullable Rectangle keep) {
        this(pieces, onHand, List.of(), stocks, loss, keep);
    }
}
