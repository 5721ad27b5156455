package benchful.documents.checklist;

import benchful.core.lesson.LessonPlan;
import benchful.documents.parts.PrintSource;
import benchful.venues.VenueSpec;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** In the room before the first student comes: places, tools, air, power, water, exits and the venue's rules. */
final class SettingOut {
    private final PrintSource source;
    private final ToolNeeds tools;

    SettingOut(PrintSource source, ToolNeeds tools) {
        this.source = source;
        this.tools = tools;
    }

    ChecklistContent.Section section() {
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(places());
        LessonPlan lesson = source.lesson();
        if (lesson == null || lesson.meetings().size() < 2) {
            tools(items, "", tools.all());
        } else {
            lesson.meetings().forEach(meeting -> tools(items, Formats.words(meeting.start().toLocalDate()) + ":", tools.of(lesson, meeting)));
        }
        items.addAll(SafetyItems.air(source));
        venue(items);
        items.add(ChecklistContent.Item.of("Exits clear, extinguisher and alarm found, address of the room written by the telephone."));
        return new ChecklistContent.Section("Setting out", "", items);
    }

    /** @param at the day, where there are more */
    private void tools(List<ChecklistContent.Item> items, String at, List<ToolNeeds.Need> needs) {
        int headcount = source.file().setup().headcount();
        String each = names(needs.stream().filter(need -> need.wanted() >= headcount && !need.shared()).toList());
        if (!each.isEmpty()) {
            items.add(new ChecklistContent.Item(at, "at each place: " + each + ".", ""));
        }
        needs.stream().filter(need -> need.wanted() < headcount && !need.shared())
                .forEach(need -> items.add(new ChecklistContent.Item(at, "for the room: %d × %s".formatted(need.wanted(), need.tool()), need.note())));
        needs.stream().filter(need -> need.shared() && need.there() > 0).forEach(need -> items.add(new ChecklistContent.Item(at,
                "within reach of all: %s, %d for %d.".formatted(need.tool(), need.there(), need.wanted()), need.note())));
    }

    private ChecklistContent.Item places() {
        VenueSpec venue = source.file().venue();
        int headcount = source.file().setup().headcount();
        String note = venue == null || venue.seats() == null ? "" : "The room seats %d.".formatted(venue.seats());
        return ChecklistContent.Item.noted("%s laid, kits by seat, the tutor's place where all can see it.".formatted(Formats.counted(headcount, "place")), note);
    }

    private static String names(List<ToolNeeds.Need> needs) {
        return needs.stream().map(ToolNeeds.Need::tool).collect(Collectors.joining(", "));
    }

    private void venue(List<ChecklistContent.Item> items) {
        VenueSpec venue = source.file().venue();
        if (venue == null) {
            return;
        }
        if (venue.sockets() != null) {
            items.add(ChecklistContent.Item.of("Lamps and appliances on the %s by the bench, leads out of the way.".formatted(Formats.counted(venue.sockets(), "socket"))));
        }
        if (Boolean.TRUE.equals(venue.water())) {
            items.add(ChecklistContent.Item.of("Water runs; soap and towels are there."));
        }
        if (Boolean.TRUE.equals(venue.firstAid())) {
            items.add(ChecklistContent.Item.of("The venue's first aid kit is found and complete."));
        }
        venue.rules().forEach(rule -> items.add(new ChecklistContent.Item("Venue rule:", rule, "")));
    }
}
