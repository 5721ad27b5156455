package benchful.catalogue;

import benchful.core.quantity.Counted;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
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
 * @param article its number with the supplier; null where not known
 * @param link page of the supplier that shows it; null for none
 * @param breaks lower prices for more packs, by rising number
 */
@RecordBuilder
public record Offer(
        @Required @Length(least = 1, most = 120) @Mend("Name the supplier.") String supplier,
        @Required Quantity holds,
        @Required @Price BigDecimal price,
        @Range(from = 1, to = 10_000) @Mend("Give how many lengths are in the pack, from 1.") Integer lengths,
        @JsonInclude(JsonInclude.Include.NON_NULL) Extent sheet,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 60) @Mend("Write the article number in at most 60 characters.") String article,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 300) @Matching("^\\s*$|^https?://\\S+$") @Mend("Give the address of a page, beginning with https://.") String link,
        @Length(most = 20) List<PriceBreak> breaks) implements OfferBuilder.With {
    private static final BigDecimal MOST_LENGTHS = BigDecimal.valueOf(10_000);

    public Offer {
        breaks = breaks == null ? List.of() : List.copyOf(breaks);
    }

    /** A pack in one length, at one price however many are bought. */
    public static Offer of(String supplier, Quantity holds, BigDecimal price) {
        return OfferBuilder.builder().supplier(supplier).holds(holds).price(price).build();
    }

    /**
     * The same for a material that is counted in a certain way: "10 sheets" are sheets of that size, and a pack of sheets or of things
     * that have a length says how they come where it does not yet.
     */
    Offer sized(Unit way) {
        Offer same = holds == null ? this : withHolds(holds.sized(way));
        Counted thing = same.holds == null ? null : same.holds.unit().counted();
        if (thing == null || !thing.sized() || thing.runs() || !same.holds.whole() || same.holds.signum() <= 0) {
            return same;
        }
        if (thing.sheet() != null) {
            return sheet == null ? same.withSheet(thing.sheet()) : same;
        }
        boolean lying = thing.each().dimension().equals(Dimension.LENGTH) && lengths == null && same.holds.amount().compareTo(MOST_LENGTHS) <= 0;
        return lying ? same.withLengths(same.holds.amount().intValueExact()) : same;
    }

    /** How what is in the pack is counted, where it is sold in sheets or off a roll; null where neither. */
    Unit way() {
        return sheet != null ? Unit.of(Counted.of(sheet)) : holds != null && holds.unit().runs() ? holds.unit() : null;
    }

    /** The same with its sheets counted, where a pack is a whole number of them. */
    Offer inSheets() {
        if (sheet == null || holds == null || !holds.dimension().equals(Dimension.AREA) || holds.base().remainder(sheet.area().base()).signum() != 0) {
            return this;
        }
        return withHolds(holds.in(Unit.of(Counted.of(sheet))));
    }

    /** From so many packs on, each costs this. */
    public record PriceBreak(
            @Required @Range(from = 2, to = 100_000) @Mend("Give from how many packs the price holds, 2 or more.") int packs, @Required @Price BigDecimal price) {}
}
