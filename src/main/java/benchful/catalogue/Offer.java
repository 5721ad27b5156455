package benchful.catalogue;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;

/**
 * A pack of a material that a supplier sells. For things cut to length a pack is {@code lengths} stock lengths of
 * {@code holds} divided by them.
 *
 * @param holds how much is in one pack
 * @param price of one pack before VAT, in the supplier's currency
 * @param lengths for things cut to length: how many equal lengths the pack comes in; null for one
 * @param sheet for rectangles cut from sheet: one sheet's length and width, of which the pack holds a whole number; null for none
 * @param breaks lower prices for more packs, by rising number
 */
public record Offer(String supplier, Quantity holds, BigDecimal price, Integer lengths,
        @JsonInclude(JsonInclude.Include.NON_NULL) Extent sheet, List<PriceBreak> breaks) {
    public Offer {
        breaks = breaks == null ? List.of() : List.copyOf(breaks);
    }

    /** A pack that holds no sheets. */
    public Offer(String supplier, Quantity holds, BigDecimal price, Integer lengths, List<PriceBreak> breaks) {
        this(supplier, holds, price, lengths, null, breaks);
    }

    /** From so many packs on, each costs this. */
    public record PriceBreak(int packs, BigDecimal price) {}
}
