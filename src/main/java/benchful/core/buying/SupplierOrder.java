package benchful.core.buying;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What to order from one supplier.
 *
 * @param goods value of the lines before VAT
 * @param delivery before VAT
 * @param vat of all lines and of the delivery
 * @param total goods, delivery and VAT
 * @param shortOfMinimum how much the goods fall below the supplier's minimum order; null where they don't
 * @param orderBy last day to order so that every line arrives in time; null where no day is set
 * @param late true where that day is past
 */
public record SupplierOrder(
        String supplier,
        List<Purchase> purchases,
        Money goods,
        Money delivery,
        Money vat,
        Money total,
        @Nullable Money shortOfMinimum,
        @Nullable LocalDate orderBy,
        boolean late) {

    public SupplierOrder {
        purchases = List.copyOf(purchases);
    }

    /** The part of the VAT that no line has. */
    public Money deliveryVat() {
        return purchases.stream().map(Purchase::vat).reduce(vat, Money::minus);
    }

    static SupplierOrder of(Supplier supplier, List<Purchase> purchases, @Nullable LocalDate today) {
        Money goods = Totals.goods(purchases, supplier.currency());
        Totals totals = Totals.of(purchases, supplier.deliveryFor(goods), supplier.vat());
        Money lacking = goods.isLessThan(supplier.minimumOrder()) ? supplier.minimumOrder().minus(goods) : null;
        LocalDate arriveBy = purchases.stream().map(Purchase::arriveBy).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
        LocalDate orderBy = arriveBy == null ? null : supplier.lead().orderBy(arriveBy);
        boolean late = supplier.late(arriveBy, today);
        return new SupplierOrder(supplier.name(), purchases, goods, totals.delivery(), totals.vat(), totals.total(), lacking, orderBy, late);
    }
}
