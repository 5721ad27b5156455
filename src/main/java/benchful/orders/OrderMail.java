package benchful.orders;

import benchful.core.buying.Purchase;
import benchful.core.buying.Totals;
import benchful.web.Formats;
import java.time.LocalDate;
import java.util.stream.Collectors;

/** An order as the text of a mail. */
final class OrderMail {
    private OrderMail() {}

    static String text(PurchaseOrder order) {
        Totals totals = order.totals();
        return """
                Order %d to %s

                Please send:

                %s

                Goods %s, delivery %s, VAT %s, in all %s.
                %s""".formatted(order.id(), order.supplier(),
                order.purchases().stream().map(OrderMail::line).collect(Collectors.joining("\n")),
                Formats.words(totals.goods()), Formats.words(totals.delivery()), Formats.words(totals.vat()), Formats.words(totals.total()),
                deadline(order.neededBy()) + (order.note() == null ? "" : order.note() + "\n"));
    }

    private static String line(Purchase p) {
        return "%d × %s of %s at %s".formatted(p.packs(), Formats.withUnit(p.holds()), p.material(), Formats.words(p.price()));
    }

    private static String deadline(LocalDate day) {
        return day == null ? "" : "Please deliver by %s.\n".formatted(Formats.words(day));
    }
}
