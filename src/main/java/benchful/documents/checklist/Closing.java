package benchful.documents.checklist;

import benchful.documents.parts.PrintSource;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The end: what goes home and how, tools counted back, leftovers, the room as it was. */
final class Closing {
    private Closing() {}

    static ChecklistSheet.Section section(PrintSource source, ToolNeeds tools) {
        List<ChecklistSheet.Item> items = new ArrayList<>();
        items.add(ChecklistSheet.Item.of("Each piece goes home with its handout; say how to wear it and what still hardens."));
        String counted = tools.all().stream().filter(need -> need.laidOut() > 0).map(need -> need.laidOut() + " " + need.tool()).collect(Collectors.joining(", "));
        if (!counted.isEmpty()) {
            items.add(ChecklistSheet.Item.noted("Tools counted back.", counted));
        }
        items.add(ChecklistSheet.Item.of("Materials left, broken and short written on the review sheet."));
        items.addAll(SafetyItems.disposal(source));
        items.add(ChecklistSheet.Item.of("Floor and benches swept, lamps and appliances off and unplugged, windows shut, taps closed."));
        items.add(ChecklistSheet.Item.of("Everybody has left: the register says so. Register put away or destroyed."));
        return new ChecklistSheet.Section("Closing", "", items);
    }
}
