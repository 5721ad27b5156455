package benchful.documents.lists;

import benchful.catalogue.Supplier;
import benchful.core.buying.Totals;
import benchful.documents.paper.Stylesheet;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.orders.OrderLine;
import benchful.orders.PurchaseOrder;
import benchful.projects.pictures.Picture;
import benchful.studio.Paper;
import benchful.studio.StudioSpec;
import benchful.web.Formats;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * An order as it is sent to a supplier on paper.
 *
 * @param sender    name, address and the like of the studio; only what is known
 * @param sign      name of the picture of the studio's sign; null for none
 * @param number    the studio's number for sales tax, "VAT number GB 123"; empty where not known
 * @param when      on which day it was sent, or that it is a draft
 * @param contact   of the supplier; may be empty
 * @param customer  the number by which the supplier knows the studio; empty where there is none
 * @param by        the day by which all must be there; empty where there is none
 * @param deliverTo lines of the address to which it is sent
 * @param note      lines of remarks to the supplier
 * @param tax       what sales tax is called
 */
public record OrderLetter(PrintHead head, List<String> sender, String sign, String number, String title, String when, String contact, String customer,
        String greeting, String by, List<String> deliverTo, List<String> note, List<Line> lines, String goods, String delivery, String tax, String vat, String total) {

    /**
     * @param packs   "3 packs of 10 sheets 70 × 50 cm"
     * @param article its number with the supplier; empty where not known
     * @param link    a page of the supplier that shows it; empty for none
     */
    public record Line(String packs, String material, String article, String link, String by, String price, String net, String vat) {}

    /** @param sign the picture of the studio's sign; null for none */
    public static OrderLetter of(PurchaseOrder order, StudioSpec studio, Picture sign, Paper paper, PictureBag bag) {
        Totals totals = order.totals();
        String title = "Order %d to %s".formatted(order.id(), order.supplier());
        String when = order.sentOn() == null ? "Draft of " + Formats.words(order.writtenOn()) : Formats.words(order.sentOn());
        PrintHead head = new PrintHead(title, when, title, "", studio.line(), Stylesheet.of(paper, Version.NORMAL),
                Version.NORMAL.slug() + " " + paper.slug(), List.of(new PrintHead.Bookmark(title, "order")));
        return new OrderLetter(head, studio.sender(), sign == null ? null : bag.picture(sign), number(studio), title, when, contact(order.seller()),
                given(order.customerNumber()), studio.hello(), day(order.neededBy()), StudioSpec.lines(order.deliverTo()).toList(), StudioSpec.lines(order.note()).toList(),
                order.lines().stream().map(OrderLetter::line).toList(), Formats.words(totals.goods()),
                Formats.words(totals.delivery()), studio.tax(), Formats.words(totals.vat()), Formats.words(totals.total()));
    }

    private static String number(StudioSpec studio) {
        return studio.taxNumber() == null ? "" : "%s number %s".formatted(studio.tax(), studio.taxNumber());
    }

    private static Line line(OrderLine line) {
        return new Line(line.counted(), line.material(), given(line.article()), given(line.link()), day(line.neededBy()),
                Formats.words(line.purchase().price()), Formats.words(line.purchase().net()), Formats.words(line.purchase().vat()));
    }

    private static String contact(Supplier seller) {
        return seller == null ? "" : given(seller.toSpec().contact());
    }

    private static String given(String text) {
        return Objects.requireNonNullElse(text, "");
    }

    private static String day(LocalDate day) {
        return day == null ? "" : Formats.words(day);
    }
}
