package benchful.stock.lists;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import benchful.web.tables.Table;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A row of a price list: what one pack costs from so many packs on.
 *
 * @param unit what the material is counted in, for one that is not in the catalogue yet; null where not said
 * @param fromPacks 1 for the price of a single pack
 * @param variantOf the material that one which is not in the catalogue yet is a variant of; null for none
 * @param article its number with the supplier; null where not said
 * @param faults what is wrong with it; then other parts may be null
 */
record PriceRow(int number, String material, String variantOf, Unit unit, String supplier, Quantity pack, Integer lengths, String article, int fromPacks, BigDecimal price,
        List<String> faults) {
    private static final int LONGEST_ARTICLE = 60;

    static final List<String> COLUMNS = List.of("material", "variant of", "unit", "supplier", "pack", "lengths", "article", "from packs", "price");

    /**
     * @param supplier of all rows that name none; null where each has to name its own
     * @param currencies of suppliers by name; null for one that there is not
     */
    static PriceRow read(Table.Row row, String supplier, UnaryOperator<String> currencies) {
        RowReader cells = new RowReader(row);
        String material = cells.name("material");
        String seller = row.get("supplier").isEmpty() && supplier != null ? supplier : cells.name("supplier");
        Unit unit = cells.unit("unit");
        Quantity pack = required(cells, "pack", cells.amount("pack", unit));
        Integer packs = cells.whole("from packs");
        BigDecimal price = required(cells, "price", cells.price("price", currencies.apply(seller)));
        Integer lengths = cells.whole("lengths");
        String article = cells.text("article");
        if (article != null && article.length() > LONGEST_ARTICLE) {
            cells.faulty("article", "give at most %d characters.".formatted(LONGEST_ARTICLE));
        }
        return new PriceRow(row.number(), material, cells.text("variant of"), unit, seller, pack, lengths, article, packs == null ? 1 : Math.max(1, packs), price, cells.faults());
    }

    private static <T> T required(RowReader cells, String column, T value) {
        return value == null && cells.faults().stream().noneMatch(f -> f.startsWith(column + ":")) ? cells.faulty(column, "this is missing.") : value;
    }

    static Table.Row written(int number, MaterialSpec material, Offer offer, int fromPacks, BigDecimal price) {
        Map<String, String> cells = new HashMap<>();
        cells.put("material", material.name());
        cells.put("variant of", material.variantOf() == null ? "" : material.variantOf());
        cells.put("unit", material.unit().symbol());
        cells.put("supplier", offer.supplier());
        cells.put("pack", offer.holds().toString());
        cells.put("lengths", offer.lengths() == null ? "" : offer.lengths().toString());
        cells.put("article", offer.article() == null ? "" : offer.article());
        cells.put("from packs", fromPacks == 1 ? "" : String.valueOf(fromPacks));
        cells.put("price", price.toPlainString());
        return new Table.Row(number, cells);
    }

    /** The same with "10 sheets" as sheets of the size that the material is counted in. */
    PriceRow sized(Unit way) {
        return pack == null ? this : new PriceRow(number, material, variantOf, unit, supplier, pack.sized(way), lengths, article, fromPacks, price, faults);
    }

    /** Rows of the same key tell the prices of one offer. */
    String offerKey() {
        return key(supplier, pack, lengths);
    }

    static String key(String supplier, Quantity pack, Integer lengths) {
        Quantity held = pack.in(Unit.held(pack.dimension()).orElse(pack.unit()));
        return supplier.toLowerCase(Locale.ROOT) + "|" + held + "|" + Objects.requireNonNullElse(lengths, 1);
    }

    String materialKey() {
        return material.toLowerCase(Locale.ROOT);
    }

    String words() {
        String many = fromPacks == 1 ? "" : " from %d packs".formatted(fromPacks);
        return pack == null ? material : "%s, %s from %s%s".formatted(material, Formats.withUnit(pack), supplier, many);
    }
}
