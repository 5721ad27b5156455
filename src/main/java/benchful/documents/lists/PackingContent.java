package benchful.documents.lists;

import benchful.documents.handout.Needed;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.paper.Version;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.kits.Kit;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What goes into each kit, what is brought of each material, and what lies on the bench, with a box to tick for each. */
public record PackingContent(PrintHead head, List<KitRow> kits, List<Material> materials, List<String> bench) {
    private static final int ABREAST = 3;

    /**
     * Kits that stand side by side on the page.
     *
     * @param empty places at its end
     */
    public record KitRow(List<KitCard> cards, int empty) {}

    public record KitCard(String title, String about, List<String> contents) {}

    /**
     * One material.
     *
     * @param total to bring
     * @param kits how it is spread: "5 × 39, 2 × 42"
     * @param spare beyond the kits and the bench
     */
    public record Material(String name, String total, String kits, String spare) {}

    public static PackingContent of(PrintSource source, PrintOptions options) {
        PrintHead head = PrintHead.of(source, "Packing list: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), List.of(new PrintHead.Bookmark("By material", "materials"),
                        new PrintHead.Bookmark("On the bench", "bench"), new PrintHead.Bookmark("By kit", "kits")));
        Amounts amounts = Amounts.briefly(options);
        List<KitCard> cards = source.needs().kits().stream().map(kit -> card(kit, amounts)).toList();
        List<Material> materials = source.materials().materials().stream().map(material -> material(source, material, amounts)).toList();
        List<String> bench = source.needs().bench().stream()
                .map(content -> Amounts.on(options).words(Needed.whole(content)) + " " + content.material()).toList();
        return new PackingContent(head, rows(cards, options.version() == Version.LARGE ? 2 : ABREAST), materials, bench);
    }

    private static KitCard card(Kit kit, Amounts amounts) {
        String seat = kit.seat() == null ? "" : "seat " + kit.seat() + ", ";
        List<String> contents = kit.contents().stream()
                .map(content -> amounts.words(content) + " " + content.material() + chosen(content)).toList();
        return new KitCard(kit.title(), seat + kit.size(), contents);
    }

    private static String chosen(Kit.Content content) {
        return (content.detail() == null ? "" : ", " + content.detail()) + (content.open() == null ? "" : " (" + content.open() + ": ask)");
    }

    private static List<KitRow> rows(List<KitCard> cards, int abreast) {
        List<KitRow> rows = new ArrayList<>();
        for (int from = 0; from < cards.size(); from += abreast) {
            int to = Math.min(cards.size(), from + abreast);
            rows.add(new KitRow(cards.subList(from, to), from + abreast - to));
        }
        return rows;
    }

    private static Material material(PrintSource source, MaterialsPlan.MaterialPlan material, Amounts amounts) {
        String kits = source.needs().kits().stream().flatMap(kit -> kit.contents().stream())
                .filter(content -> content.material().equals(material.name()))
                .collect(Collectors.groupingBy(amounts::words, java.util.LinkedHashMap::new, Collectors.counting()))
                .entrySet().stream().map(entry -> Formats.counted(entry.getValue().intValue(), "kit") + " with " + entry.getKey())
                .collect(Collectors.joining("; "));
        String spare = material.sheets() != null ? spare(source, material) : material.need().waste().signum() > 0 ? amounts.words(material.need().waste()) : "";
        return new Material(material.name(), new Taken(amounts).brought(material), kits.isEmpty() ? "on the bench" : kits, spare);
    }

    /** How many pieces are cut from sheets that no kit and no bench takes. */
    private static String spare(PrintSource source, MaterialsPlan.MaterialPlan material) {
        int cut = material.sheets().sheets().stream().mapToInt(sheet -> sheet.pieces().size()).sum();
        int taken = Stream.concat(source.needs().kits().stream().flatMap(kit -> kit.contents().stream()), source.needs().bench().stream())
                .filter(content -> content.material().equals(material.name()) && content.pieces() != null).mapToInt(Kit.Content::pieces).sum();
        return cut > taken ? Formats.counted(cut - taken, "piece") : "";
    }
}
