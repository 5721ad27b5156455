package benchful.core.cutting;

import java.util.List;

/**
 * What the new stock of every plan is worth at least: each stock's worth times the number taken of it, planned ones counted.
 *
 * @param worths of one of each stock, in the order of the request's
 */
public record StockFloor(List<Long> worths, long least) {
    public StockFloor {
        worths = List.copyOf(worths);
    }
}
