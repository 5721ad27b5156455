package benchful.stock.lists;

import benchful.catalogue.MaterialSpec;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.tables.Table;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A row of a stock list: what was found on the shelf.
 *
 * @param unit what the material is counted in, for one that is not in the catalogue yet; null where not said
 * @param found null where the row says nothing of it
 * @param minimum least that should lie there; null where the row says nothing of it
 * @param faults what is wrong with it; then other parts may be null
 */
record StockRow(int number, String material, Unit unit, Quantity found, Quantity minimum, List<String> faults) {
    static final List<String> COLUMNS = List.of("material", "unit", "on the shelf", "at least");

    /** @param known by name in small letters, the unit a material of the catalogue is counted in */
    static StockRow read(Table.Row row, Map<String, Unit> known) {
        RowReader cells = new RowReader(row);
        String material = cells.name("material");
        Unit named = cells.unit("unit");
        Unit unit = named == null ? known.get(material.toLowerCase(Locale.ROOT)) : named;
        Quantity found = cells.amount("on the shelf", unit);
        Quantity minimum = cells.amount("at least", unit);
        if (found == null && minimum == null && cells.faults().isEmpty()) {
            cells.faulty("on the shelf", "this is missing.");
        }
        return new StockRow(row.number(), material, unit, found, minimum, cells.faults());
    }

    static Table.Row written(int number, MaterialSpec material, Quantity onHand) {
        Map<String, String> cells = new HashMap<>();
        cells.put("material", material.name());
        cells.put("unit", material.unit().symbol());
        cells.put("on the shelf", onHand.toString());
        cells.put("at least", material.minimum() == null ? "" : material.minimum().toString());
        return new Table.Row(number, cells);
    }

    String key() {
        return material.toLowerCase(Locale.ROOT);
    }

    /** The sheet that a material which is not in the catalogue yet begins with. */
    MaterialSpec fresh() {
        Quantity any = found == null ? minimum : found;
        return MaterialSpec.of(material, unit == null ? any.unit() : unit).withMinimum(minimum);
    }
}
