package benchful.documents.checklist;

import benchful.documents.parts.HazardNote;
import benchful.documents.parts.HazardUse;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.venues.VenueSpec;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a tutor's checklist says about hazards: gear to bring, air to provide, and what to tell the class. */
final class SafetyItems {
    private static final int TOLD = 2;

    private SafetyItems() {}

    static List<HazardNote> hazards(PrintSource source) {
        return new HazardUse(source.file()).all().stream().map(source::hazard).flatMap(Optional::stream).toList();
    }

    static List<ChecklistContent.Item> gear(PrintSource source) {
        Set<String> gear = new LinkedHashSet<>();
        hazards(source).forEach(hazard -> gear.addAll(hazard.gear()));
        return gear.isEmpty() ? List.of() : List.of(ChecklistContent.Item.of("Protective gear: " + String.join("; ", gear) + "."));
    }

    /** What the hazards ask of the room's air, and whether it has it. */
    static List<ChecklistContent.Item> air(PrintSource source) {
        VenueSpec venue = source.file().venue();
        VenueSpec.Ventilation there = venue == null || venue.ventilation() == null ? VenueSpec.Ventilation.NONE : venue.ventilation();
        List<HazardNote> hazards = hazards(source);
        if (hazards.stream().anyMatch(hazard -> hazard.ventilation().equals("extractor"))) {
            return List.of(there == VenueSpec.Ventilation.EXTRACTOR ? ChecklistContent.Item.of("Extractor runs.")
                    : ChecklistContent.Item.noted("An extractor is needed and the room has none that we know of.", "Bring one, move the work outside, or leave it out."));
        }
        if (hazards.stream().anyMatch(hazard -> hazard.ventilation().equals("windows"))) {
            return List.of(there == VenueSpec.Ventilation.NONE
                    ? ChecklistContent.Item.noted("Windows that open are needed and the room has none that we know of.", "Ask the venue, or leave that work out.")
                    : ChecklistContent.Item.of("Windows open easily; open them before the first tube or bottle."));
        }
        return List.of();
    }

    static ChecklistContent.Section briefing(PrintSource source, PrintedSigns signs) {
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(ChecklistContent.Item.of("Exits, meeting point, first aid, who is trained; the emergency number that is valid here."));
        items.add(ChecklistContent.Item.of("Ask about allergies, skin, eyes, pregnancy, pacemakers and medicine, in private."));
        for (HazardNote hazard : hazards(source)) {
            String told = String.join(" ", hazard.cautions().stream().limit(TOLD).toList());
            String first = hazard.firstResponse().isEmpty() ? "" : "If it happens: " + String.join(" ", hazard.firstResponse());
            items.add(new ChecklistContent.Item(hazard.name() + ".", told, first, signs.of(hazard)));
        }
        return new ChecklistContent.Section("Safety briefing", "Tell the class at the start; repeat each caution when its step comes. These are usual cautions, no legal or medical advice.", items);
    }

    static List<ChecklistContent.Item> disposal(PrintSource source) {
        return hazards(source).stream().filter(hazard -> !hazard.disposal().isBlank())
                .map(hazard -> new ChecklistContent.Item(hazard.name() + ":", hazard.disposal(), "")).toList();
    }
}
