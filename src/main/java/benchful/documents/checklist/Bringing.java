package benchful.documents.checklist;

import benchful.core.needs.Take;
import benchful.core.quantity.Quantity;
import benchful.documents.handout.Needed;
import benchful.documents.parts.PrintSource;
import benchful.venues.VenueSpec;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;

/** What leaves the house: kits, bench materials, the tools that the room lacks, papers, and what the venue does not offer. */
final class Bringing {
    private final PrintSource source;
    private final ToolNeeds tools;

    Bringing(PrintSource source, ToolNeeds tools) {
        this.source = source;
        this.tools = tools;
    }

    ChecklistContent.Section section() {
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(kits());
        source.needs().bench().forEach(content -> items.add(ChecklistContent.Item.noted(
                "For the bench: %s %s".formatted(Formats.measured(Needed.whole(content).amount()), content.material()), content.note() == null ? "" : content.note())));
        reserve(items);
        tools.all().stream().filter(need -> need.brought() > 0 || need.there() == 0).forEach(need -> items.add(tool(need)));
        items.add(ChecklistContent.Item.of("A finished piece to show, handouts, labels, register, this list, a clock and pens."));
        items.addAll(SafetyItems.gear(source));
        venue(items);
        return new ChecklistContent.Section("Packing", "", items);
    }

    private ChecklistContent.Item kits() {
        long spares = source.needs().kits().stream().filter(kit -> kit.taker() == Take.Taker.SPARE).count();
        long own = source.needs().kits().stream().filter(kit -> kit.taker() == Take.Taker.DEMONSTRATION).count();
        int students = source.needs().kits().size() - (int) (spares + own);
        return ChecklistContent.Item.of("%s for students%s%s.".formatted(Formats.counted(students, "kit"),
                own == 0 ? "" : ", one for the demonstration", spares == 0 ? "" : ", " + Formats.counted((int) spares, "spare")));
    }

    private void reserve(List<ChecklistContent.Item> items) {
        boolean some = source.materials().materials().stream().map(material -> material.need().waste()).anyMatch((Quantity waste) -> waste.signum() > 0);
        if (some) {
            items.add(ChecklistContent.Item.of("The reserve for spoilt pieces, by the last column of the packing list."));
        }
    }

    private static ChecklistContent.Item tool(ToolNeeds.Need need) {
        int bring = need.brought() > 0 ? need.brought() : Math.max(1, need.wanted());
        String room = need.room() > 0 ? "The room has %d.".formatted(need.room()) : need.brought() > 0 ? "" : "The room has none.";
        return ChecklistContent.Item.noted("%d × %s".formatted(bring, need.tool()), room);
    }

    private void venue(List<ChecklistContent.Item> items) {
        VenueSpec venue = source.file().venue();
        if (venue == null) {
            items.add(ChecklistContent.Item.of("The venue is not chosen yet: ask for sockets, water, ventilation and first aid."));
            return;
        }
        if (!Boolean.TRUE.equals(venue.firstAid())) {
            items.add(ChecklistContent.Item.of("A first aid kit: the venue has none that we know of."));
        }
        if (!Boolean.TRUE.equals(venue.water())) {
            items.add(ChecklistContent.Item.of("Water in a canister and something to wash hands with: the venue has no tap that we know of."));
        }
    }
}
