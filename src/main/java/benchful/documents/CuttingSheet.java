package benchful.documents;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingPlan;
import benchful.plans.CuttingPicture;
import benchful.plans.MaterialsPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Which length is cut into which pieces, as pictures and as rows to tick. */
public record CuttingSheet(SheetHead head, List<Material> materials) {

    /** @param proof whether fewer lengths could do */
    public record Material(String name, HandoutSheet.Figure picture, List<Row> rows, String lengths, String proof) {}

    /** @param count how many such lengths, "3 ×" */
    public record Row(String count, String length, String from, String cuts, String offcut) {}

    static CuttingSheet of(PrintSource source, PrintOptions options, PictureBag bag) {
        SheetHead head = SheetHead.of(source, "Cutting sheet: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), List.of(new SheetHead.Bookmark("Cutting sheet", "top")));
        List<Material> materials = new ArrayList<>();
        for (MaterialsPlan.MaterialPlan material : source.materials().materials()) {
            if (material.cutting() != null) {
                materials.add(material(material, Amounts.briefly(options.paper()), bag, materials.size() + 1));
            }
        }
        return new CuttingSheet(head, materials);
    }

    private static Material material(MaterialsPlan.MaterialPlan material, Amounts amounts, PictureBag bag, int number) {
        CuttingPlan plan = material.cutting();
        CuttingPicture picture = new CuttingPicture(plan, 800, 13, amounts::words);
        String svg = picture.svg("cutting" + number, "How " + material.name() + " is cut");
        List<Row> rows = picture.groups().stream().map(group -> row(group, amounts)).toList();
        long onHand = plan.lengths().stream().filter(length -> !length.bought()).count();
        String lengths = onHand == 0 ? plan.bought() + " new" : "%d on hand, %d new".formatted(onHand, plan.bought());
        return new Material(material.name(), new HandoutSheet.Figure(bag.drawing("cutting-" + number, svg), "Bars to scale; the table below says the same."),
                rows, lengths, plan.proof());
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
