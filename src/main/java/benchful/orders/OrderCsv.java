package benchful.orders;

import benchful.core.buying.Purchase;
import benchful.web.tables.Table;
import benchful.web.tables.TableFile;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** An order as a table that a spreadsheet reads. */
final class OrderCsv {
    private static final List<String> COLUMNS = List.of("material", "article", "packs", "pack", "holds", "price", "net", "tax_percent", "tax", "gross", "currency", "needed_by", "link");

    private OrderCsv() {}

    static String text(PurchaseOrder order) {
        List<Table.Row> rows = IntStream.range(0, order.lines.size())
                .mapToObj(i -> new Table.Row(i + 2, cells(order.lines.get(i), order.currency))).toList();
        return TableFile.csv(new Table(COLUMNS, rows));
    }

    private static Map<String, String> cells(OrderLine line, String currency) {
        Purchase p = line.purchase();
        List<Object> values = List.of(p.material(), given(line.article()), p.packs(), line.pack(), p.holds(), p.price().getAmount().toPlainString(), p.net().getAmount(), line.vat.toPlainString(),
                p.vat().getAmount(), p.gross().getAmount(), currency, Objects.requireNonNullElse(p.arriveBy(), ""), given(line.link()));
        Map<String, String> cells = new HashMap<>();
        IntStream.range(0, COLUMNS.size()).forEach(i -> cells.put(COLUMNS.get(i), values.get(i).toString()));
        return cells;
    }

    private static String given(String text) {
        return Objects.requireNonNullElse(text, "");
    }
}
