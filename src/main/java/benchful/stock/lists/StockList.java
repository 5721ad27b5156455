package benchful.stock.lists;

import benchful.catalogue.Material;
import benchful.core.quantity.Quantity;
import benchful.web.tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes what lies on the shelf as a list that can be taken round, filled in and read back. */
final class StockList {
    private StockList() {}

    static Table of(List<Material> materials) {
        List<Table.Row> rows = new ArrayList<>();
        materials.forEach(m -> rows.add(StockRow.written(rows.size() + 2, m.toSpec(), atLeastNothing(m.onHand()))));
        return new Table(StockRow.COLUMNS, rows);
    }

    /** A shelf can't be found to hold less than nothing. */
    private static Quantity atLeastNothing(Quantity amount) {
        return amount.signum() < 0 ? Quantity.zero(amount.unit()) : amount;
    }

    /** What is missing for a table to be a stock list; nothing where it is one. */
    static Optional<String> missing(Table table) {
        return ImportColumns.missing(table, List.of("material", "on the shelf"));
    }
}
