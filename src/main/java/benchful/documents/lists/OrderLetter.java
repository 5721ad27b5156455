package benchful.documents.lists;

import benchful.catalogue.Supplier;
import benchful.core.buying.Totals;
import benchful.documents.paper.Paper;
import benchful.documents.paper.Stylesheet;
import benchful.documents.paper.Version;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PrintHead;
import benchful.orders.OrderLine;
import benchful.orders.PurchaseOrder;
import benchful.web.Formats;
import java.time.LocalDate;
import java.util.List;

/**
 * An order as it is sent to a supplier on paper.
 *
 * @param when    on which day it was sent, or that it is a draft
 * @param contact of the supplier; may be empty
 * @param by      the day by which all must be there; empty where there is none
 * @param note    to the supplier; may be empty
 */
public record OrderLetter(PrintHead head, String title, String when, String contact, String by, String note, List<Line> lines, String goods,
        String delivery, String vat, String total) {

    public record Line(String packs, String material, String by, String price, String net, String vat) {}

    public static OrderLetter of(PurchaseOrder order, Paper paper) {
        Amounts amounts = Amounts.briefly(paper);
        Totals totals = order.totals();
        String title = "Order %d to %s".formatted(order.id(), order.supplier());
        String when = order.sentOn() == null ? "Draft of " + Formats.words(order.writtenOn()) : "Sent " + Formats.words(order.sentOn());
        PrintHead head = new PrintHead(title, when, title, "", Stylesheet.of(paper, Version.NORMAL),
                Version.NORMAL.slug() + " " + paper.slug(), List.of(new PrintHead.Bookmark(title, "order")));
        return new OrderLetter(head, title, when, contact(order.seller()), day(order.neededBy()), order.note() == null ? "" : order.note(),
                order.lines().stream().map(line -> line(line, amounts)).toList(), Formats.words(totals.goods()),
                Formats.words(totals.delivery()), Formats.words(totals.vat()), Formats.words(totals.total()));
    }

    private static Line line(OrderLine line, Amounts amounts) {
        return new Line("%d × %s".formatted(line.packs(), Formats.withUnit(amounts.words(line.holds()), line.holds())), line.material(), day(line.neededBy()),
                Formats.words(line.purchase().price()), Formats.words(line.purchase().net()), Formats.words(line.purchase().vat()));
    }

    private static String contact(Supplier seller) {
        return seller == null || seller.toSpec().contact() == null ? "" : seller.toSpec().contact();
    }

    private static String day(LocalDate day) {
        return day == null ? "" : Formats.words(day);
    }
}
