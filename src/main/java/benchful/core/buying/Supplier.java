package benchful.core.buying;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who sells packs.
 *
 * @param minimumOrder least value of goods before VAT; zero for none
 * @param delivery charge for one delivery before VAT; zero for none
 * @param freeAbove goods value before VAT from which delivery is free; null for never
 * @param lead time from order to delivery
 * @param vat percentage on goods and delivery
 */
public record Supplier(String name, Money minimumOrder, Money delivery, @Nullable Money freeAbove, LeadTime lead, BigDecimal vat) {
    public Supplier {
        Objects.requireNonNull(name, "name");
        if (minimumOrder.isNegative() || delivery.isNegative() || freeAbove != null && freeAbove.isNegative() || vat.signum() < 0) {
            throw new IllegalArgumentException("No charge, threshold or VAT of “%s” can be negative.".formatted(name));
        }
        Objects.requireNonNull(lead, "lead time");
        minimumOrder.plus(delivery);
        if (freeAbove != null) {
            minimumOrder.plus(freeAbove);
        }
    }

    public CurrencyUnit currency() {
        return delivery.getCurrencyUnit();
    }

    /** Whether goods ordered today arrive after the day they are needed; never where either day is not known (null). */
    public boolean late(@Nullable LocalDate arriveBy, @Nullable LocalDate today) {
        return arriveBy != null && today != null && lead.arrives(today).isAfter(arriveBy);
    }

    /** What one delivery of goods of this value costs before VAT. */
    public Money deliveryFor(Money goods) {
        boolean free = goods.isZero() || freeAbove != null && goods.compareTo(freeAbove) >= 0;
        return free ? Money.zero(currency()) : delivery;
    }
}
