package benchful.orders;

import benchful.core.buying.Purchase;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** An order as a table that a spreadsheet reads. Names that a spreadsheet would take for a formula get an apostrophe in front. */
final class OrderCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
            .setHeader("material", "packs", "pack", "price", "net", "vat_percent", "vat", "gross", "currency", "needed_by")
            .get();

    private OrderCsv() {}

    static String text(PurchaseOrder order) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter out = new CSVPrinter(text, FORMAT)) {
            for (OrderLine line : order.lines) {
                Purchase p = line.purchase();
                out.printRecord(plain(p.material()), p.packs(), p.holds(), p.price().getAmount().toPlainString(), p.net().getAmount(), line.vat.toPlainString(),
                        p.vat().getAmount(), p.gross().getAmount(), order.currency, p.arriveBy());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String plain(String name) {
        return name.matches("[=+\\-@\\t\\r].*") ? "'" + name : name;
    }
}
