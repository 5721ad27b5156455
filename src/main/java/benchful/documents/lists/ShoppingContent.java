package benchful.documents.lists;

import benchful.catalogue.SupplierSpec;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.MaterialsPlan;
import benchful.web.Formats;
import benchful.web.Writing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What to buy from whom, by when, and what the shelf already gives.
 *
 * @param total of all orders with delivery and VAT; empty where nothing is bought
 * @param tax what sales tax is called
 * @param missing what nobody sells
 */
public record ShoppingContent(PrintHead head, List<Order> orders, String total, String proof, String tax, List<String> shelf, List<String> missing) {

    /** @param warning what to mind about the order; may be empty */
    public record Order(String supplier, String contact, String by, String warning, List<Line> lines, String goods, String delivery, String vat, String total) {}

    public record Line(String packs, String material, String price, String net, String left) {}

    public static ShoppingContent of(PrintSource source, PrintOptions options) {
        Amounts amounts = Amounts.briefly(options);
        MaterialsPlan plan = source.materials();
        PrintHead head = PrintHead.of(source, "Shopping list: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), bookmarks(plan));
        Taken taken = new Taken(amounts);
        Map<String, String> left = new HashMap<>();
        plan.materials().forEach(material -> left.put(material.name(), taken.left(material)));
        List<Order> orders = plan.orders().stream().map(order -> order(source, order, left)).toList();
        List<String> shelf = plan.materials().stream().map(taken::fromShelf).filter(words -> !words.isEmpty()).toList();
        List<String> missing = plan.unsold().stream().map(material -> amounts.words(material.bought().unmet()) + " " + material.name()).toList();
        return new ShoppingContent(head, orders, plan.orders().isEmpty() ? "" : Formats.words(plan.total()), plan.proof(), source.studio().tax(), shelf, missing);
    }

    private static List<PrintHead.Bookmark> bookmarks(MaterialsPlan plan) {
        List<PrintHead.Bookmark> bookmarks = new ArrayList<>();
        for (int i = 0; i < plan.orders().size(); i++) {
            bookmarks.add(new PrintHead.Bookmark(plan.orders().get(i).supplier(), "order" + (i + 1)));
        }
        bookmarks.add(new PrintHead.Bookmark("From the shelf", "shelf"));
        return bookmarks;
    }

    /** @param left by material, taken out where it is said: once for all packs of one material */
    private static Order order(PrintSource source, SupplierOrder order, Map<String, String> left) {
        String contact = source.file().suppliers().stream().filter(supplier -> supplier.name().equals(order.supplier()))
                .map(SupplierSpec::contact).filter(words -> words != null).findFirst().orElse("");
        List<Line> lines = order.purchases().stream().map(purchase -> line(purchase, left)).toList();
        return new Order(order.supplier(), contact, order.orderBy() == null ? "" : Formats.words(order.orderBy()), warning(order), lines,
                Formats.words(order.goods()), Formats.words(order.delivery()), Formats.words(order.vat()), Formats.words(order.total()));
    }

    private static String warning(SupplierOrder order) {
        if (order.late()) {
            return "It can't arrive in time by the usual delivery: ask for a faster one, or buy elsewhere.";
        }
        return order.shortOfMinimum() == null ? "" : "%s below the minimum order: add something you will need anyway.".formatted(Formats.words(order.shortOfMinimum()));
    }

    private static Line line(Purchase purchase, Map<String, String> left) {
        String packs = "%d × %s".formatted(purchase.packs(), Formats.words(purchase.holds()));
        String leftOver = Objects.requireNonNullElse(left.remove(purchase.material()), "");
        return new Line(packs, purchase.material(), Formats.words(purchase.price()), Formats.words(purchase.net()), leftOver);
    }

    /** What all that suppliers sell is called. */
    public String catalogue() {
        return Writing.current().spelt("catalogue");
    }
}
