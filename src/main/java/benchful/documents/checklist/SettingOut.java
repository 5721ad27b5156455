package benchful.documents.checklist;

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
        String each = names(tools.all().stream().filter(need -> need.wanted() >= source.file().setup().headcount() && !need.shared()).toList());
        if (!each.isEmpty()) {
            items.add(ChecklistContent.Item.of("At each place: " + each + "."));
        }
        tools.all().stream().filter(need -> need.wanted() > 0 && need.wanted() < source.file().setup().headcount() && !need.shared())
                .forEach(need -> items.add(ChecklistContent.Item.noted("For the room: %d × %s".formatted(need.wanted(), need.tool()), need.note())));
        tools.all().stream().filter(need -> need.shared() && need.there() > 0).forEach(need -> items.add(ChecklistContent.Item.noted(
                "Within reach of all: %s, %d for %d.".formatted(need.tool(), need.there(), need.wanted()), need.note())));
        items.addAll(SafetyItems.air(source));
        venue(items);
        items.add(ChecklistContent.Item.of("Exits clear, extinguisher and alarm found, address of the room written by the telephone."));
        return new ChecklistContent.Section("Setting out", "", items);
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
        venue.rules().forEach(rule -> items.add(new ChecklistContent.Item("House rule:", rule, "")));
    }
}
