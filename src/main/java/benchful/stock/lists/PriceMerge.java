package benchful.stock.lists;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Lays the rows of one material over its sheet. An offer that is listed takes the listed price, and the listed lower
 * prices for more packs where there are any; offers that are not listed stay.
 */
final class PriceMerge {
    private final MaterialSpec before;
    private final Map<String, List<PriceRow>> listed = new LinkedHashMap<>();

    /**
     * @param before the stored sheet; null for a material that is not in the catalogue yet
     * @param rows without faults, all of one material
     */
    PriceMerge(MaterialSpec before, List<PriceRow> rows) {
        this.before = before == null ? fresh(rows) : before;
        rows.stream().map(r -> r.sized(this.before.unit())).forEach(r -> listed.computeIfAbsent(r.offerKey(), k -> new ArrayList<>()).add(r));
        listed.values().forEach(group -> group.sort(Comparator.comparingInt(PriceRow::fromPacks)));
    }

    private static MaterialSpec fresh(List<PriceRow> rows) {
        PriceRow first = rows.get(0);
        Unit unit = first.unit() == null ? first.pack().unit() : first.unit();
        return MaterialSpec.of(first.material(), unit).withVariantOf(first.variantOf());
    }

    MaterialSpec after() {
        List<Offer> offers = new ArrayList<>();
        Map<String, List<PriceRow>> left = new LinkedHashMap<>(listed);
        for (Offer offer : before.offers()) {
            List<PriceRow> rows = left.remove(key(offer));
            offers.add(rows == null ? offer : merged(offer, rows));
        }
        left.values().forEach(rows -> offers.add(merged(null, rows)));
        return before.withOffers(offers);
    }

    private static Offer merged(Offer stored, List<PriceRow> rows) {
        PriceRow first = rows.get(0);
        BigDecimal single = first.fromPacks() == 1 || stored == null ? first.price() : stored.price();
        List<Offer.PriceBreak> breaks = breaks(rows);
        return stored == null
                ? Offer.of(first.supplier(), first.pack(), single).withLengths(first.lengths()).withArticle(article(rows)).withBreaks(breaks)
                : stored.withPrice(single).withArticle(article(rows) == null ? stored.article() : article(rows)).withBreaks(breaks.isEmpty() ? stored.breaks() : breaks);
    }

    /** Of the first row that tells it; null where none does. */
    private static String article(List<PriceRow> rows) {
        return rows.stream().map(PriceRow::article).filter(Objects::nonNull).findFirst().orElse(null);
    }

    private static List<Offer.PriceBreak> breaks(List<PriceRow> rows) {
        return rows.stream().filter(r -> r.fromPacks() > 1).map(r -> new Offer.PriceBreak(r.fromPacks(), r.price())).toList();
    }

    /** The numbers of packs whose lower price would go because others are listed; told once, with the first row of an offer. */
    List<Integer> dropped(PriceRow row) {
        List<PriceRow> rows = listed.get(key(row));
        Offer stored = before(row);
        if (stored == null || rows.get(0).number() != row.number() || breaks(rows).isEmpty()) {
            return List.of();
        }
        return stored.breaks().stream().map(Offer.PriceBreak::packs).filter(p -> rows.stream().noneMatch(r -> r.fromPacks() == p)).toList();
    }

    /** The offer as it was before; null for one that is new. */
    Offer before(PriceRow row) {
        return before.offers().stream().filter(o -> key(o).equals(key(row))).findFirst().orElse(null);
    }

    /** True where a new offer has no price of a single pack among its rows. */
    boolean lacksSinglePrice(PriceRow row) {
        return before(row) == null && listed.get(key(row)).get(0).fromPacks() > 1;
    }

    /** True where the same price stands twice in the list. */
    boolean twice(PriceRow row) {
        return listed.get(key(row)).stream().filter(r -> r.fromPacks() == row.fromPacks()).count() > 1;
    }

    /** The number of the first row that tells the price of an offer; 0 where none does. */
    int rowOf(Offer offer) {
        return listed.getOrDefault(key(offer), List.of()).stream().mapToInt(PriceRow::number).min().orElse(0);
    }

    private String key(PriceRow row) {
        return row.sized(before.unit()).offerKey();
    }

    private static String key(Offer offer) {
        return PriceRow.key(offer.supplier(), offer.holds(), offer.lengths());
    }
}
