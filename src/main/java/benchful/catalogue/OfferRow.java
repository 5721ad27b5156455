package benchful.catalogue;

import benchful.core.quantity.Extent;
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
 * @param article its number with the supplier; null where not known
 * @param link a page that shows it; null for none
 * @param perUnit "£1.20 per m"
 * @param breaks "£3.90 from 5 packs"
 * @param past "£4.20 from Mon 1 Mar 2027 until Tue 2 Mar 2027", the latest first
 * @param old true where the price was learnt more than a year ago
 */
@TemplateData
public record OfferRow(long supplierId, String supplier, String pack, String article, String link, String price, String perUnit, List<String> breaks, LocalDate pricedOn, List<String> past, boolean old, String lead) {

    public static OfferRow of(SupplierOffer o, LocalDate today) {
        return new OfferRow(o.supplier.id(), o.supplier.name(), pack(o), o.article, o.link, Formats.words(o.money()), perUnit(o),
                o.breaks.stream().map(b -> "%s from %d packs".formatted(Formats.words(o.money(b.price)), b.packs)).toList(),
                o.pricedOn(), o.pastPrices.stream().map(p -> past(o, p)).toList(), o.pricedOn().isBefore(today.minusYears(1)), o.supplier.toSpec().leadWords());
    }

    private static String past(SupplierOffer o, PastPrice p) {
        return "%s from %s until %s".formatted(Formats.words(o.money(p.price)), Formats.words(p.pricedOn), Formats.words(p.until));
    }

    static String pack(SupplierOffer o) {
        if (o.holds().unit().counted() != null) {
            return Formats.words(o.holds());
        }
        Extent sheet = o.toSpec().sheet();
        if (sheet != null) {
            return "%s %s".formatted(Formats.counted(o.holds().base().divideToIntegralValue(sheet.area().base()).intValueExact(), "sheet"), Formats.words(sheet));
        }
        if (o.lengths == null || o.lengths == 1) {
            return Formats.withUnit(o.holds());
        }
        Quantity each = new Quantity(o.holds().amount().divide(BigDecimal.valueOf(o.lengths), Quantity.PRECISION), o.holds().unit());
        return "%d lengths of %s".formatted(o.lengths, Formats.words(each));
    }

    private static String perUnit(SupplierOffer o) {
        Unit unit = o.material.unit();
        BigDecimal each = o.price.divide(o.holds().in(unit).amount(), 4, RoundingMode.HALF_UP);
        String price = Formats.words(BigMoney.of(CurrencyUnit.of(o.supplier.currency()), each.stripTrailingZeros()));
        return "%s per %s".formatted(price, Formats.one(unit));
    }
}
