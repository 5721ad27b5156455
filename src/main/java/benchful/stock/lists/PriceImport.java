package benchful.stock.lists;

import benchful.catalogue.CatalogueRules;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialRules;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.MaterialsPages;
import benchful.catalogue.Offer;
import benchful.catalogue.Supplier;
import benchful.core.Fault;
import benchful.web.Formats;
import benchful.web.tables.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Works out what a price list would change, row by row, and does it where no row is at fault. Needs a transaction. */
public final class PriceImport {
    private static final Pattern OFFER = Pattern.compile("/offers/(\\d+).*");

    private final CatalogueRules rules;
    private final LocalDate today;
    private final boolean addsNew;
    private final Map<String, Material> stored =
            Material.all().stream().collect(Collectors.toMap(m -> m.name().toLowerCase(Locale.ROOT), Function.identity()));
    private final List<ImportRow> rows = new ArrayList<>();
    private final List<Runnable> writes = new ArrayList<>();
    private final List<String> unused;

    /**
     * @param supplier of all rows that name none; null where each names its own
     * @param addsNew true where materials that are not in the catalogue are added; else their rows are passed over
     */
    PriceImport(Table table, String supplier, boolean addsNew, CatalogueRules rules, LocalDate today) {
        this.rules = rules;
        this.today = today;
        this.addsNew = addsNew;
        this.unused = table.unknown(PriceRow.COLUMNS);
        Map<String, List<PriceRow>> byMaterial = new LinkedHashMap<>();
        table.rows().stream().map(r -> PriceRow.read(r, supplier, PriceImport::currency)).forEach(r -> byMaterial.computeIfAbsent(r.materialKey(), k -> new ArrayList<>()).add(r));
        byMaterial.values().forEach(this::material);
    }

    public ImportPreview preview() {
        return new ImportPreview(rows.stream().sorted(Comparator.comparingInt(ImportRow::number)).toList(), unused);
    }

    /** Does what the preview says. */
    public void write() {
        writes.forEach(Runnable::run);
    }

    private void material(List<PriceRow> group) {
        group.stream().filter(r -> !r.faults().isEmpty()).forEach(r -> rows.add(ImportRow.faulty(r.number(), r.words(), r.faults())));
        List<PriceRow> sound = group.stream().filter(r -> r.faults().isEmpty()).toList();
        if (sound.isEmpty()) {
            return;
        }
        Material material = stored.get(sound.get(0).materialKey());
        if (material == null && !addsNew) {
            sound.forEach(r -> rows.add(ImportRow.passedOver(r.number(), r.words())));
        } else {
            merge(material, sound);
        }
    }

    private void merge(Material material, List<PriceRow> sound) {
        PriceMerge merge = new PriceMerge(material == null ? null : MaterialsPages.formSheet(material), sound);
        MaterialSpec after = merge.after();
        Map<Integer, List<String>> faults = faults(merge, after, material, sound.get(0).number());
        sound.forEach(r -> rows.add(row(r, merge, material, faults.getOrDefault(r.number(), List.of()))));
        writes.add(() -> write(material, after));
    }

    /** By number of the row that is at fault. */
    private Map<Integer, List<String>> faults(PriceMerge merge, MaterialSpec after, Material material, int first) {
        List<Fault> found = MaterialRules.faults(after);
        Map<Integer, List<String>> faults = new LinkedHashMap<>();
        for (Fault fault : found.isEmpty() ? rules.faults(after, material) : found) {
            Matcher offer = OFFER.matcher(fault.pointer());
            int row = offer.matches() ? merge.rowOf(after.offers().get(Integer.parseInt(offer.group(1)))) : first;
            faults.computeIfAbsent(row == 0 ? first : row, k -> new ArrayList<>()).add(fault.detail());
        }
        return faults;
    }

    private static ImportRow row(PriceRow row, PriceMerge merge, Material material, List<String> faults) {
        List<String> all = new ArrayList<>(faults);
        if (merge.lacksSinglePrice(row)) {
            all.add("from packs: the price of a single pack is missing. Add a row for it.");
        }
        if (merge.twice(row)) {
            all.add("This price stands twice in the list. Take one out.");
        }
        String dropped = merge.dropped(row).stream().map("lower price from %d packs goes"::formatted).collect(Collectors.joining(", "));
        String change = Stream.of(change(row, merge.before(row), material), dropped).filter(s -> !s.isEmpty()).collect(Collectors.joining("; "));
        return all.isEmpty() ? ImportRow.of(row.number(), row.words(), change) : ImportRow.faulty(row.number(), row.words(), all);
    }

    private static String change(PriceRow row, Offer before, Material material) {
        String price = Formats.number(row.price(), 4);
        String article = before == null || row.article() == null || row.article().equals(before.article()) ? "" : "article " + row.article();
        if (before == null) {
            return (material == null ? "new material, new offer at " : "new offer at ") + price;
        }
        BigDecimal old = row.fromPacks() == 1
                ? before.price()
                : before.breaks().stream().filter(b -> b.packs() == row.fromPacks()).map(Offer.PriceBreak::price).findFirst().orElse(null);
        if (old == null) {
            return article.isEmpty() ? "new lower price " + price : "new lower price %s, %s".formatted(price, article);
        }
        return old.compareTo(row.price()) == 0 ? article : Stream.of("%s → %s".formatted(Formats.number(old, 4), price), article).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    }

    private void write(Material material, MaterialSpec after) {
        if (material == null) {
            Material.stored(after, PriceImport::supplier, false, today);
        } else {
            material.replace(after, PriceImport::supplier, today);
        }
    }

    private static String currency(String supplier) {
        return Supplier.byName(supplier).map(Supplier::currency).orElse(null);
    }

    private static Supplier supplier(String name) {
        return Supplier.byName(name).orElseThrow();
    }
}
