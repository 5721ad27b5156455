package benchful.documents.checklist;

import benchful.classes.ClassSetup;
import benchful.core.buying.SupplierOrder;
import benchful.core.lesson.Preparation;
import benchful.documents.paper.PrintOptions;
import benchful.documents.parts.PrintSource;
import benchful.plans.Advice;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The days before: orders, cutting, preparation, packing, printing, and what still needs a decision. */
final class DaysBefore {
    private final PrintSource source;
    private final PrintOptions options;

    DaysBefore(PrintSource source, PrintOptions options) {
        this.source = source;
        this.options = options;
    }

    ChecklistContent.Section section() {
        List<ChecklistContent.Item> items = new ArrayList<>();
        if (source.lesson() != null && !source.plan().timing().verdict().fits()) {
            items.add(new ChecklistContent.Item("Decide:", source.plan().timing().verdict().sentence(), "Its page says under “What would help?” what could be done otherwise."));
        }
        for (Advice advice : source.plan().advice()) {
            items.add(new ChecklistContent.Item("Decide:", Formats.words(advice.sentence()), ""));
        }
        source.materials().orders().stream().sorted(Comparator.comparing(SupplierOrder::orderBy, Comparator.nullsLast(Comparator.naturalOrder())))
                .forEach(order -> items.add(order(order)));
        long cut = source.materials().materials().stream().filter(material -> material.cutting() != null || material.sheets() != null).count();
        if (cut > 0) {
            items.add(ChecklistContent.Item.of("Cut %s to size by the cutting sheet.".formatted(Formats.counted((int) cut, "material"))));
        }
        if (source.lesson() != null) {
            source.lesson().preparation().items().forEach(item -> items.add(prepared(item)));
        }
        items.add(ChecklistContent.Item.of("Pack %s by the packing list, label them, and check each once more.".formatted(
                Formats.counted(source.needs().kits().size(), "kit"))));
        items.add(printing());
        items.add(ChecklistContent.Item.noted("Know whom to call for each student, and what each needs.", "On the register, which stays with you."));
        items.add(ChecklistContent.Item.noted("Have the safety data sheets of what you bring at hand.", "They, the venue's rules, local codes and licensed practice come first."));
        return new ChecklistContent.Section("Days before", "", items);
    }

    private static ChecklistContent.Item order(SupplierOrder order) {
        String by = order.orderBy() == null ? "" : "By " + Formats.words(order.orderBy()) + ":";
        String note = order.late() ? "It can't arrive in time by the usual delivery." : "";
        return new ChecklistContent.Item(by, "order from %s, %s, %s.".formatted(order.supplier(), Formats.counted(order.purchases().size(), "line"), Formats.words(order.total())), note);
    }

    private static ChecklistContent.Item prepared(Preparation.Item item) {
        return ChecklistContent.Item.noted("Prepare: %s.".formatted(item.title()), "Takes about %s.".formatted(Formats.words(item.length())));
    }

    /** "9 handouts (5 of 42 cm, 4 of 45 cm)". */
    private String handouts() {
        List<String> sizes = source.needs().sizes().stream().filter(size -> size.students() > 0).map(size -> "%d of %s".formatted(size.students(), size.name())).toList();
        return Formats.counted(source.file().setup().headcount(), "handout") + (sizes.size() < 2 ? "" : " (" + String.join(", ", sizes) + ")");
    }

    private ChecklistContent.Item printing() {
        List<ClassSetup.Student> students = source.file().setup().students();
        long large = students.stream().filter(student -> Boolean.TRUE.equals(student.largePrint())).count();
        boolean mirrored = source.file().project().steps().stream().anyMatch(step -> step.leftHanded() != null);
        long left = mirrored ? students.stream().filter(student -> Boolean.TRUE.equals(student.leftHanded())).count() : 0;
        String note = (large == 0 ? "" : large + " in large print. ") + (left == 0 ? "" : left + " with left-handed texts. ");
        return ChecklistContent.Item.noted("Print %s, labels, register, timed plan and review sheet on %s.".formatted(
                handouts(), options.paper().title()), note.strip());
    }
}
