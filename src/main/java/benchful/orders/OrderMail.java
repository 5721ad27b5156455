package benchful.orders;

import benchful.core.buying.Totals;
import benchful.studio.StudioSpec;
import benchful.web.Formats;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An order as the text of a mail. */
final class OrderMail {
    private OrderMail() {}

    static String text(PurchaseOrder order, StudioSpec studio) {
        return Stream.of(head(order), studio.hello() + "\n\nPlease send:", lines(order), sums(order.totals(), studio.tax()), delivery(order),
                Objects.requireNonNullElse(order.note(), ""), farewell(studio)).filter(part -> !part.isBlank()).collect(Collectors.joining("\n\n")) + "\n";
    }

    private static String head(PurchaseOrder order) {
        String head = "Order %d to %s".formatted(order.id(), order.supplier());
        return order.customerNumber() == null ? head : "%s\nOur customer number: %s".formatted(head, order.customerNumber());
    }

    private static String lines(PurchaseOrder order) {
        return order.lines().stream().map(OrderMail::line).collect(Collectors.joining("\n"));
    }

    private static String line(OrderLine line) {
        String article = line.article() == null ? "" : ", article " + line.article();
        String link = line.link() == null ? "" : "\n    " + line.link();
        return "- %s: %s%s, at %s a pack%s".formatted(line.material(), line.counted(), article, Formats.words(line.purchase().price()), link);
    }

    private static String sums(Totals totals, String tax) {
        return "Goods %s, delivery %s, %s %s, in all %s.".formatted(
                Formats.words(totals.goods()), Formats.words(totals.delivery()), tax, Formats.words(totals.vat()), Formats.words(totals.total()));
    }

    private static String delivery(PurchaseOrder order) {
        String by = order.neededBy() == null ? "" : " by " + Formats.words(order.neededBy());
        List<String> address = StudioSpec.lines(order.deliverTo()).toList();
        if (address.isEmpty()) {
            return by.isEmpty() ? "" : "Please deliver%s.".formatted(by);
        }
        return "Please deliver%s to:\n%s".formatted(by, String.join("\n", address));
    }

    private static String farewell(StudioSpec studio) {
        List<String> sender = studio.sender();
        String number = studio.taxNumber() == null ? "" : "\n%s number %s".formatted(studio.tax(), studio.taxNumber());
        return sender.isEmpty() ? number.strip() : "With kind regards\n" + String.join("\n", sender) + number;
    }
}
