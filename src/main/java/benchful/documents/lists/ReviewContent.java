package benchful.documents.lists;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.MaterialsPlan;
import java.util.List;

/** A sheet to write on during and after the class: when each step really ended, what broke, ran short or was left. */
public record ReviewContent(PrintHead head, List<PlanTable.Day> days, List<Brought> materials, List<String> questions) {

    /** A material and how much of it was brought. */
    public record Brought(String material, String amount) {}

    public static ReviewContent of(PrintSource source, PrintOptions options) {
        Taken taken = new Taken(Amounts.briefly(options));
        List<Brought> brought = source.materials().materials().stream()
                .map((MaterialsPlan.MaterialPlan material) -> new Brought(material.name(), taken.brought(material))).toList();
        PrintHead head = PrintHead.of(source, "Review sheet: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), List.of(new PrintHead.Bookmark("Times", "top"), new PrintHead.Bookmark("Materials", "materials"),
                        new PrintHead.Bookmark("Notes", "notes")));
        return new ReviewContent(head, new PlanTableWriter(source).days(false), brought, List.of(
                "How many came, how many finished?", "Where did they wait for me, or for a tool?", "What did I explain twice?", "What I change next time:"));
    }
}
