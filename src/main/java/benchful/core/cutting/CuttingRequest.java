package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * Pieces to be cut from lengths.
 *
 * @param onHand lengths there are, used first
 * @param stock length of a new one, bought as many times as needed; null where none can be had
 * @param loss lost at each cut [length]
 * @param keep offcuts from this length on are worth keeping
 */
public record CuttingRequest(List<Piece> pieces, List<Quantity> onHand, Quantity stock, Quantity loss, Quantity keep) {
    public CuttingRequest {
        pieces = pieces.stream().filter(p -> p.count() > 0).toList();
        onHand = onHand.stream().filter(q -> q.signum() > 0).toList();
        if (stock != null && stock.signum() <= 0) {
            throw new IllegalArgumentException("A stock length must be more than nothing.");
        }
        if (loss.signum() < 0 || keep.signum() < 0) {
            throw new IllegalArgumentException("The loss at a cut and the shortest offcut kept can't be negative.");
        }
    }
}
