package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;

/**
 * A length that can be bought as often as needed.
 *
 * @param length of one [length]
 * @param cost of one, in any unit that is the same for all; 1 where only their number counts; up to four decimals count
 */
public record Stock(Quantity length, BigDecimal cost) {
    public Stock {
        if (length.signum() <= 0) {
            throw new IllegalArgumentException("A stock length must be more than nothing.");
        }
        if (cost.signum() < 0 || cost.compareTo(BigDecimal.valueOf(10_000_000)) > 0) {
            throw new IllegalArgumentException("A stock length costs from 0 to 10,000,000, but %s is given.".formatted(cost));
        }
    }
}
