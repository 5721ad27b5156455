package benchful.documents.checklist;

import benchful.documents.parts.PrintSource;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The end: what goes home and how, tools counted back, leftovers, the room as it was. */
final class Closing {
    private Closing() {}

    static ChecklistContent.Section section(PrintSource source, ToolNeeds tools) {
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(ChecklistContent.Item.of("Each piece goes home with its handout; say how to look after it and what still has to dry or set."));
        String counted = tools.all().stream().filter(need -> need.laidOut() > 0).map(need -> need.laidOut() + " " + need.tool()).collect(Collectors.joining(", "));
        if (!counted.isEmpty()) {
            items.add(ChecklistContent.Item.noted("Tools counted back.", counted));
        }
        String lent = source.needs().bench().stream().filter(content -> source.needs().lends(content.material()))
                .map(content -> Formats.words(content.amount()) + " " + content.material()).collect(Collectors.joining(", "));
        if (!lent.isEmpty()) {
            items.add(ChecklistContent.Item.noted("What was lent is back.", lent));
        }
        items.add(ChecklistContent.Item.of("Materials left, broken and short written on the review sheet."));
        items.addAll(SafetyItems.disposal(source));
        items.add(ChecklistContent.Item.of("Floor and benches swept, lamps and appliances off and unplugged, windows shut, taps closed."));
        items.add(ChecklistContent.Item.of("Everybody has left: the register says so. Register put away or destroyed."));
        return new ChecklistContent.Section("Closing", "", items);
    }
}
