package benchful.core.buying;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * What to buy for one class or several.
 *
 * @param currency of the totals; offers in other currencies are not compared
 * @param assortments wants among these that can stand in for each other
 * @param today the first day on which an order can be sent; null where that does not matter
 */
public record BuyingRequest(CurrencyUnit currency, List<Want> wants, List<Assortment> assortments, @Nullable LocalDate today) {
    public BuyingRequest {
        Objects.requireNonNull(currency, "currency");
        wants = List.copyOf(wants);
        assortments = List.copyOf(assortments);
    }

    /** Every want must be met by itself. */
    public BuyingRequest(CurrencyUnit currency, List<Want> wants, @Nullable LocalDate today) {
        this(currency, wants, List.of(), today);
    }
}
