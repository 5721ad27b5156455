package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * Pieces to be cut from lengths.
 *
 * @param onHand lengths there are; they cost nothing
 * @param planned new lengths that are bought whatever is cut from them; they cost nothing more
 * @param stocks lengths that can be bought; none where nothing is on offer
 * @param loss lost at each cut [length]
 * @param keep offcuts from this length on are worth keeping
 */
public record CuttingRequest(List<Piece> pieces, List<Quantity> onHand, List<Quantity> planned, List<Stock> stocks, Quantity loss, Quantity keep) {
    public CuttingRequest {
        pieces = pieces.stream().filter(p -> p.count() > 0).toList();
        onHand = onHand.stream().filter(q -> q.signum() > 0).toList();
        planned = List.copyOf(planned);
        stocks = List.copyOf(stocks);
        if (loss.signum() < 0 || keep.signum() < 0) {
            throw new IllegalArgumentException("The loss at a cut and the shortest offcut kept can't be negative.");
        }
    }

    /** Nothing is planned yet. */
    public CuttingRequest(List<Piece> pieces, List<Quantity> onHand, List<Stock> stocks, Quantity loss, Quantity keep) {
        this(pieces, onHand, List.of(), stocks, loss, keep);
    }
}
