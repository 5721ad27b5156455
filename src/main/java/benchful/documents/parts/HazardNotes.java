package benchful.documents.parts;

import benchful.hazards.HazardSpec;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What print-outs say of each hazard, by its id, in the tutor's own words where she changed the library's. */
public final class HazardNotes {
    private HazardNotes() {}

    public static Map<String, HazardNote> of(Collection<HazardSpec> hazards) {
        Map<String, HazardNote> notes = new LinkedHashMap<>();
        hazards.forEach(h -> notes.put(h.id(), note(h)));
        return notes;
    }

    private static HazardNote note(HazardSpec h) {
        return new HazardNote(h.id(), h.name(), text(h.harm()), h.cautions(), h.firstResponse(), h.protectiveGear(),
                h.ventilation() == null ? "" : h.ventilation().name().toLowerCase(Locale.ROOT),
                Stream.concat(h.signs().stream(), h.pictograms().stream()).toList(), text(h.disposal()));
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
