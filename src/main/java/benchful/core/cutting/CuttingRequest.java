package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * Pieces to be cut from lengths.
 *
 * @param onHand lengths there are; they cost nothing
 * @param stocks lengths that can be bought; none where nothing is on offer
 * @param loss lost at each cut [length]
 * @param keep offcuts from this length on are worth keeping
 */
public record CuttingRequest(List<Piece> pieces, List<Quantity> onHand, List<Stock> stocks, Quantity loss, Quantity keep) {
    public CuttingRequest {
        pieces = pieces.stream().filter(p -> p.count() > 0).toList();
        onHand = onHand.stream().filter(q -> q.signum() > 0).toList();
        stocks = List.copyOf(stocks);
        if (loss.signum() < 0 || keep.signum() < 0) {
            throw new IllegalArgumentException("The loss at a cut and the shortest offcut kept can't be negative.");
        }
    }
}
