package benchful.catalogue;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * An offer as it is read.
 *
 * @param pack "2 m", "5 lengths of 1 m"
 * @param perUnit "£1.20 per m"
 * @param breaks "£3.90 from 5 packs"
 */
@TemplateData
public record OfferRow(long supplierId, String supplier, String pack, String price, String perUnit, List<String> breaks, LocalDate pricedOn, String lead) {

    public static OfferRow of(SupplierOffer o) {
        int lead = o.supplier.leadDays;
        return new OfferRow(o.supplier.id(), o.supplier.name(), pack(o), Formats.words(o.money()), perUnit(o),
                o.breaks.stream().map(b -> "%s from %d packs".formatted(Formats.words(o.money(b.price)), b.packs)).toList(),
                o.pricedOn(), lead == 0 ? "same day" : Formats.counted(lead, "day"));
    }

    /** With its unit even where it counts pieces. */
    static String amount(Quantity amount) {
        return Formats.words(amount) + (amount.unit() == Unit.PIECE ? " pcs" : "");
    }

    private static String pack(SupplierOffer o) {
        if (o.lengths == null || o.lengths == 1) {
            return amount(o.holds);
        }
        Quantity each = new Quantity(o.holds.amount().divide(BigDecimal.valueOf(o.lengths), Quantity.PRECISION), o.holds.unit());
        return "%d lengths of %s".formatted(o.lengths, Formats.words(each));
    }

    private static String perUnit(SupplierOffer o) {
        Unit unit = o.material.unit();
        BigDecimal each = o.price.divide(o.holds.in(unit).amount(), 4, RoundingMode.HALF_UP);
        String price = Formats.words(BigMoney.of(CurrencyUnit.of(o.supplier.currency()), each.stripTrailingZeros()));
        return "%s per %s".formatted(price, unit == Unit.PIECE ? "piece" : unit.symbol());
    }
}
