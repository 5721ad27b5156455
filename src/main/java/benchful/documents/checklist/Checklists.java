package benchful.documents.checklist;

import benchful.documents.lists.PlanTable;
import benchful.documents.lists.PlanTableWriter;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;

/** Fills the tutor's checklist from its parts. */
public final class Checklists {
    private Checklists() {}

    public static ChecklistContent sheet(PrintSource source, PrintOptions options, PictureBag bag) {
        ToolNeeds tools = new ToolNeeds(source.file());
        List<ChecklistContent.Section> sections = new ArrayList<>();
        if (!source.notes().isEmpty()) {
            sections.add(new ChecklistContent.Section("From earlier classes", "", source.notes().stream().map(ChecklistContent.Item::of).toList()));
        }
        sections.add(new DaysBefore(source, options).section());
        sections.add(new Bringing(source, tools).section());
        sections.add(new SettingOut(source, tools).section());
        sections.add(SafetyItems.briefing(source, new PrintedSigns(bag)));
        if (!SafetyItems.hazards(source).isEmpty()) {
            sections.add(SafetyItems.firstResponse(source));
        }
        if (source.lesson() != null) {
            sections.add(During.section(source));
        }
        sections.add(Closing.section(source, tools));
        sections.addAll(AfterMeetings.sections(source));
        List<PrintHead.Bookmark> bookmarks = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            bookmarks.add(new PrintHead.Bookmark(sections.get(i).title(), "section" + (i + 1)));
        }
        PlanTable plan = source.lesson() == null ? null : new PlanTableWriter(source).upright(bag, options.version());
        if (plan != null) {
            bookmarks.add(new PrintHead.Bookmark("Timed plan", "timed"));
        }
        PrintHead head = PrintHead.of(source, "Tutor's checklist: " + source.title(), Stylesheet.tables(options.paper(), options.version()),
                options.paper(), options.version(), bookmarks);
        return new ChecklistContent(head, summary(source), sections, plan);
    }

    private static String summary(PrintSource source) {
        String helpers = source.file().setup().helpers() == 0 ? "" : ", " + Formats.counted(source.file().setup().helpers(), "helper");
        return "%s, %s%s. Project: %s.".formatted(Formats.counted(source.file().setup().headcount(), "student"),
                Formats.word(source.file().setup().level()), helpers, source.file().project().name());
    }
}
