package benchful.stock.lists;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.web.tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes all offers as a price list that can be read back. */
public final class PriceList {
    private PriceList() {}

    public static Table of(List<MaterialSpec> materials) {
        List<Table.Row> rows = new ArrayList<>();
        for (MaterialSpec material : materials) {
            for (Offer offer : material.offers()) {
                rows.add(PriceRow.written(rows.size() + 2, material, offer, 1, offer.price()));
                offer.breaks().forEach(b -> rows.add(PriceRow.written(rows.size() + 2, material, offer, b.packs(), b.price())));
            }
        }
        return new Table(PriceRow.COLUMNS, rows);
    }

    /** What is missing for a table to be a price list; nothing where it is one. */
    public static Optional<String> missing(Table table) {
        return ImportColumns.missing(table, List.of("material", "pack", "price"));
    }
}
