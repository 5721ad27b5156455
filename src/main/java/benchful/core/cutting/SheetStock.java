package benchful.core.cutting;

import benchful.core.quantity.Extent;
import java.math.BigDecimal;

/**
 * A sheet that can be bought as often as needed.
 *
 * @param cost of one, as of {@link Stock}
 */
public record SheetStock(Extent size, BigDecimal cost) {
    public SheetStock {
        if (cost.signum() < 0 || cost.compareTo(BigDecimal.valueOf(10_000_000)) > 0) {
            throw new IllegalArgumentException("A sheet costs from 0 to 10,000,000, but %s is given.".formatted(cost));
        }
    }
}
