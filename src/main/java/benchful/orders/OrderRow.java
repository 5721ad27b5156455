package benchful.orders;

import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import org.joda.money.Money;

/**
 * An order in a list.
 *
 * @param day of which the tutor must think: the last day to send a draft, the day something sent should arrive; null for none
 * @param late true where it comes later than it is needed, or should have come by now
 */
@TemplateData
public record OrderRow(long id, String supplier, OrderStatus status, LocalDate day, boolean late, Money total) {

    static OrderRow of(PurchaseOrder order, LocalDate today) {
        LocalDate day = order.status() == OrderStatus.DRAFT ? order.orderBy() : order.status().awaited() ? order.expectedOn() : null;
        boolean overdue = order.status().awaited() && order.expectedOn().isBefore(today);
        return new OrderRow(order.id(), order.supplier(), order.status(), day, overdue || order.late(today), order.totals().total());
    }

    public boolean draft() {
        return status == OrderStatus.DRAFT;
    }
}
