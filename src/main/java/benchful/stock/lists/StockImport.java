package benchful.stock.lists;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialRules;
import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.stock.Cause;
import benchful.stock.StockLedger;
import benchful.web.Formats;
import benchful.web.tables.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Works out what a stock list would change, row by row, and writes the counts where no row is at fault. Needs a transaction. */
final class StockImport {
    private static final Cause LIST = Cause.note("Stock list");

    private final StockLedger ledger;
    private final LocalDate today;
    private final boolean addsNew;
    private final Map<String, Material> stored =
            Material.all().stream().collect(Collectors.toMap(m -> m.name().toLowerCase(Locale.ROOT), Function.identity()));
    private final Map<String, Integer> met = new HashMap<>();
    private final List<ImportRow> rows = new ArrayList<>();
    private final List<Runnable> writes = new ArrayList<>();
    private final List<String> unused;

    /** @param addsNew true where materials that are not in the catalogue are added; else their rows are passed over */
    StockImport(Table table, boolean addsNew, StockLedger ledger, LocalDate today) {
        this.ledger = ledger;
        this.today = today;
        this.addsNew = addsNew;
        this.unused = table.unknown(StockRow.COLUMNS);
        Map<String, Unit> units = stored.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().unit()));
        table.rows().stream().map(r -> StockRow.read(r, units)).forEach(this::take);
    }

    ImportPreview preview() {
        return new ImportPreview(rows, unused);
    }

    /** Does what the preview says. */
    void write() {
        writes.forEach(Runnable::run);
    }

    private void take(StockRow row) {
        Integer earlier = met.putIfAbsent(row.key(), row.number());
        Material material = stored.get(row.key());
        if (!row.faults().isEmpty()) {
            rows.add(ImportRow.faulty(row.number(), row.material(), row.faults()));
        } else if (earlier != null) {
            rows.add(ImportRow.faulty(row.number(), row.material(), List.of("This material stands in row %d already. Take one out.".formatted(earlier))));
        } else if (material == null && !addsNew) {
            rows.add(ImportRow.passedOver(row.number(), row.material()));
        } else {
            plan(row, material);
        }
    }

    private void plan(StockRow row, Material material) {
        MaterialSpec sheet = material == null ? row.fresh() : withAmounts(material.toSpec(), row);
        List<String> faults = MaterialRules.faults(sheet).stream().map(Fault::detail).distinct().toList();
        rows.add(faults.isEmpty() ? ImportRow.of(row.number(), row.material(), change(row, material)) : ImportRow.faulty(row.number(), row.material(), faults));
        writes.add(() -> write(row, material));
    }

    /** The sheet with the row's amounts, for the rules to look at. */
    private static MaterialSpec withAmounts(MaterialSpec s, StockRow row) {
        return s.withOnHand(row.found()).withMinimum(row.minimum() == null ? s.minimum() : row.minimum());
    }

    private static String change(StockRow row, Material material) {
        List<String> changes = new ArrayList<>();
        if (material == null) {
            changes.add("new material");
        }
        Quantity before = material == null ? null : material.onHand();
        if (row.found() != null && !row.found().equals(before)) {
            changes.add(before == null ? Formats.withUnit(row.found()) : Formats.withUnit(before) + " → " + Formats.withUnit(row.found()));
        }
        if (row.minimum() != null && (material == null || !row.minimum().equals(material.minimum()))) {
            changes.add("at least " + Formats.withUnit(row.minimum()));
        }
        return String.join(", ", changes);
    }

    private void write(StockRow row, Material material) {
        Material counted = material == null ? Material.stored(row.fresh(), name -> null, false, today) : material;
        if (material != null && row.minimum() != null) {
            material.keepAtLeast(row.minimum());
        }
        Material.flush();
        if (row.found() != null) {
            ledger.count(counted.id(), row.found(), LIST);
        }
    }
}
