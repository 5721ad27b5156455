package benchful.core.buying;

import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;

/**
 * What to order from one supplier.
 *
 * @param goods value of the lines before VAT
 * @param delivery before VAT
 * @param vat of all lines and of the delivery
 * @param total goods, delivery and VAT
 * @param shortOfMinimum how much the goods fall below the supplier's minimum order; null where they don't
 * @param orderBy last day to order so that it arrives in time; null where no day is set
 * @param late true where that day is past
 */
public record SupplierOrder(
        String supplier,
        List<Purchase> purchases,
        Money goods,
        Money delivery,
        Money vat,
        Money total,
        Money shortOfMinimum,
        LocalDate orderBy,
        boolean late) {

    public SupplierOrder {
        purchases = List.copyOf(purchases);
    }

    static SupplierOrder of(Supplier supplier, List<Purchase> purchases, BuyingRequest request) {
        Money none = Money.zero(supplier.currency());
        Money goods = purchases.stream().map(Purchase::net).reduce(none, Money::plus);
        Money delivery = supplier.deliveryFor(goods);
        Money vat = purchases.stream().map(Purchase::vat).reduce(Vat.on(delivery, supplier.vat()), Money::plus);
        Money lacking = goods.isLessThan(supplier.minimumOrder()) ? supplier.minimumOrder().minus(goods) : null;
        LocalDate orderBy = request.arriveBy() == null ? null : request.arriveBy().minusDays(supplier.leadDays());
        boolean late = request.today() != null && orderBy != null && orderBy.isBefore(request.today());
        return new SupplierOrder(supplier.name(), purchases, goods, delivery, vat, goods.plus(delivery).plus(vat), lacking, orderBy, late);
    }
}
