package benchful.documents.lists;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.documents.handout.HandoutContent;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.pictures.CuttingPicture;
import benchful.plans.pictures.SheetPicture;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which length or sheet is cut into which pieces, as pictures and as rows to tick. */
public record CuttingContent(PrintHead head, List<Material> materials) {

    /**
     * One material, with a picture and rows for lengths, or a picture for each row of sheets.
     *
     * @param proof whether fewer lengths could do
     */
    public record Material(String name, List<Pattern> patterns, String lengths, String proof) {}

    /**
     * A picture, and what is cut as it shows.
     *
     * @param tall whether it is higher than wide, so that it would fill a page as wide as that
     */
    public record Pattern(HandoutContent.Figure picture, boolean tall, List<Row> rows) {}

    /** @param count how many such lengths, "3 ×" */
    public record Row(String count, String length, String from, String cuts, String offcut) {}

    /** Whether there is anything to cut. */
    public static boolean isCut(PrintSource source) {
        return source.materials().materials().stream().anyMatch(material -> material.cutting() != null || material.sheets() != null);
    }

    public static CuttingContent of(PrintSource source, PrintOptions options, PictureBag bag) {
        PrintHead head = PrintHead.of(source, "Cutting sheet: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), List.of(new PrintHead.Bookmark("Cutting sheet", "top")));
        List<Material> materials = new ArrayList<>();
        for (MaterialsPlan.MaterialPlan material : source.materials().materials()) {
            Amounts amounts = Amounts.briefly(options);
            if (material.cutting() != null) {
                materials.add(material(material, amounts, bag, materials.size() + 1));
            } else if (material.sheets() != null) {
                materials.add(sheets(material, amounts, bag, materials.size() + 1));
            }
        }
        return new CuttingContent(head, materials);
    }

    private static Material material(MaterialsPlan.MaterialPlan material, Amounts amounts, PictureBag bag, int number) {
        CuttingPlan plan = SamePatterns.alike(material.cutting());
        CuttingPicture picture = new CuttingPicture(plan, 800, 13, amounts::words);
        String svg = picture.svg("cutting" + number, "How " + material.name() + " is cut");
        List<Row> rows = picture.groups().stream().map(group -> row(group, amounts)).toList();
        long onHand = plan.lengths().stream().filter(length -> !length.bought()).count();
        String lengths = onHand == 0 ? plan.bought() + " new" : "%d on hand, %d new".formatted(onHand, plan.bought());
        HandoutContent.Figure figure = new HandoutContent.Figure(bag.drawing("cutting-" + number, svg), "Bars to scale; the table below says the same.");
        return new Material(material.name(), List.of(new Pattern(figure, false, rows)), lengths, plan.proof());
    }

    private static Material sheets(MaterialsPlan.MaterialPlan material, Amounts amounts, PictureBag bag, int number) {
        SheetPlan plan = SamePatterns.alike(material.sheets());
        List<SheetPicture> pictures = SheetPicture.of(plan, 760, 13, amounts::words);
        List<Pattern> patterns = new ArrayList<>();
        for (SheetPicture picture : pictures) {
            String name = "cutting-%d-%d".formatted(number, patterns.size() + 1);
            String drawing = bag.drawing(name, picture.svg(name, "How " + material.name() + " is cut"));
            patterns.add(new Pattern(new HandoutContent.Figure(drawing, "To scale, its cuts numbered in their order."),
                    picture.sheet().size().width().compareTo(picture.sheet().size().length()) > 0, List.of(row(picture, amounts))));
        }
        long onHand = plan.sheets().stream().filter(sheet -> !sheet.bought()).count();
        String sheets = onHand == 0 ? plan.bought() + " new" : "%d on hand, %d new".formatted(onHand, plan.bought());
        return new Material(material.name(), patterns, sheets, plan.proof());
    }

    private static Row row(SheetPicture picture, Amounts amounts) {
        CutSheet sheet = picture.sheet();
        String cuts = counted(sheet.pieces().stream().map(piece -> amounts.words(piece.size()) + " (" + piece.label() + ")"));
        String kept = counted(sheet.offcuts().stream().filter(CutSheet.Offcut::kept).map(offcut -> amounts.words(offcut.size()) + ", keep"));
        return new Row(picture.count() + " ×", amounts.words(sheet.size()), sheet.bought() ? "new" : "on hand", cuts, kept.isEmpty() ? "none to keep" : kept);
    }

    private static String counted(Stream<String> words) {
        return words.collect(Collectors.groupingBy(w -> w, LinkedHashMap::new, Collectors.counting())).entrySet().stream()
                .map(e -> e.getValue() + " × " + e.getKey()).collect(Collectors.joining(", "));
    }

    private static Row row(CuttingPicture.Group group, Amounts amounts) {
        CutLength length = group.length();
        Map<String, Long> pieces = length.cuts().stream().collect(Collectors.groupingBy(
                cut -> amounts.words(cut.length()) + (cut.label() == null ? "" : " (" + cut.label() + ")"), LinkedHashMap::new, Collectors.counting()));
        String cuts = pieces.entrySet().stream().map(entry -> entry.getValue() + " × " + entry.getKey()).collect(Collectors.joining(", "));
        String offcut = length.offcut().signum() == 0 ? "none" : amounts.words(length.offcut()) + (length.kept() ? ", keep" : "");
        return new Row(group.count() + " ×", amounts.words(length.length()), length.bought() ? "new" : "on hand", cuts, offcut);
    }
}
