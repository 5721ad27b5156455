package benchful.documents.checklist;

import benchful.core.lesson.StepKind;
import benchful.documents.parts.HazardNote;
import benchful.documents.parts.HazardUse;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.venues.VenueSpec;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a tutor's checklist says about hazards: gear to bring, air to provide, and what to tell the class. */
final class SafetyItems {
    /** As people speak to a group; common practice, no source. */
    private static final int WORDS_A_MINUTE = 130;
    /** Where no step of the class is about safety [min]. */
    private static final long PLANNED = 5;

    private SafetyItems() {}

    static List<HazardNote> hazards(PrintSource source) {
        return new HazardUse(source.file()).all().stream().map(source::hazard).flatMap(Optional::stream).toList();
    }

    /** For each student and the tutor; "no gloves" is advice and no gear, and what is named twice is taken along once. */
    static List<ChecklistContent.Item> gear(PrintSource source) {
        List<String> named = hazards(source).stream().flatMap(hazard -> hazard.gear().stream()).filter(gear -> !gear.toLowerCase(Locale.ROOT).startsWith("no ")).distinct().toList();
        String gear = named.stream().filter(one -> named.stream().noneMatch(other -> !other.equals(one) && one.startsWith(other))).collect(Collectors.joining("; "));
        int people = source.file().setup().headcount() + source.file().setup().helpers() + 1;
        return gear.isEmpty() ? List.of() : List.of(ChecklistContent.Item.noted("Protective gear for %d, you included, as far as the room has none:".formatted(people), gear + "."));
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

    /** What is said aloud: as many cautions as the planned minutes bear, the first of each hazard. */
    static ChecklistContent.Section briefing(PrintSource source, PrintedSigns signs) {
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(ChecklistContent.Item.of("Exits, meeting point, first aid, who is trained; the emergency number that is valid here."));
        items.add(ChecklistContent.Item.of("Ask about allergies, skin, eyes, pregnancy, pacemakers and medicine, in private."));
        long minutes = spoken(source);
        long words = minutes * WORDS_A_MINUTE;
        for (HazardNote hazard : hazards(source)) {
            String told = hazard.cautions().get(0);
            words -= (hazard.name() + " " + told).split(" ").length;
            if (words >= 0) {
                items.add(new ChecklistContent.Item(hazard.name() + ".", told, "", signs.of(hazard)));
            }
        }
        return new ChecklistContent.Section("Safety briefing", "Say this at the start, in about %s; each handout repeats a caution before its step.".formatted(Formats.counted((int) minutes, "minute")), items);
    }

    /** To be read before the class. */
    static ChecklistContent.Section firstResponse(PrintSource source) {
        List<ChecklistContent.Item> items = hazards(source).stream().filter(hazard -> !hazard.firstResponse().isEmpty())
                .map(hazard -> new ChecklistContent.Item(hazard.name() + ".", String.join(" ", hazard.firstResponse()), "")).toList();
        return new ChecklistContent.Section("If it happens", "Read this before the class. These are usual cautions, no legal or medical advice.", items);
    }

    /** One minute for each five that are planned for it: the rest goes to showing and to questions. */
    private static long spoken(PrintSource source) {
        long planned = source.file().project().steps().stream().filter(step -> step.kind() == StepKind.TOGETHER && !step.hazards().isEmpty()).findFirst()
                .map(step -> step.lasts().toMinutes()).orElse(PLANNED);
        return Math.max(1, Math.round(planned / 5.0));
    }

    static List<ChecklistContent.Item> disposal(PrintSource source) {
        return hazards(source).stream().filter(hazard -> !hazard.disposal().isBlank())
                .map(hazard -> new ChecklistContent.Item(hazard.name() + ":", hazard.disposal(), "")).toList();
    }
}
