package benchful.hazards;

import benchful.web.Writing;
import benchful.web.forms.SpecReader;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The hazards that come with the program, read once. */
public final class LibraryFile {
    private static final String PLACE = "/hazards/library.yaml";
    private static final Map<String, HazardSpec> ENTRIES = entries();
    private static final Map<Writing, Map<String, HazardSpec>> SPELT = new ConcurrentHashMap<>();

    private LibraryFile() {}

    @Spec(name = "hazards-1", title = "A library of hazards", file = "a hazard library")
    private record Library(@Required @Length(most = 500) List<HazardSpec> hazards) {}

    /** By short name, in the order of the file. */
    public static Map<String, HazardSpec> byId() {
        return ENTRIES;
    }

    /** The same as the writing that applies spells them; the statements of labels are official and stay. */
    static Map<String, HazardSpec> spelt() {
        Writing writing = Writing.current();
        return SPELT.computeIfAbsent(writing, w -> {
            Map<String, HazardSpec> entries = new LinkedHashMap<>();
            ENTRIES.forEach((id, entry) -> entries.put(id, spelt(entry, w)));
            return Collections.unmodifiableMap(entries);
        });
    }

    private static HazardSpec spelt(HazardSpec h, Writing writing) {
        return new HazardSpec(h.id(), writing.spelt(h.name()), spelt(h.who(), writing), writing.spelt(h.harm()), spelt(h.cautions(), writing), h.ghs(), h.signal(), h.precautions(),
                h.pictograms(), h.signs(), spelt(h.protectiveGear(), writing), h.ventilation(), spelt(h.firstResponse(), writing), h.minimumAge(), spelt(h.storage(), writing),
                spelt(h.disposal(), writing), h.severity(), h.likelihood(), h.sources());
    }

    private static List<String> spelt(List<String> lines, Writing writing) {
        return lines.stream().map(writing::spelt).toList();
    }

    private static String spelt(String words, Writing writing) {
        return words == null ? null : writing.spelt(words);
    }

    private static Map<String, HazardSpec> entries() {
        SpecReader.Reading<Library> reading = new SpecReader<>(Library.class, l -> List.of()).file(bytes());
        if (reading instanceof SpecReader.Read<Library> good) {
            Map<String, HazardSpec> entries = new LinkedHashMap<>();
            good.sheet().hazards().forEach(h -> entries.put(h.id(), h));
            return Collections.unmodifiableMap(entries);
        }
        throw new IllegalStateException("%s: %s".formatted(PLACE, ((SpecReader.Faulty<Library>) reading).faults().get(0)));
    }

    private static byte[] bytes() {
        try (InputStream in = LibraryFile.class.getResourceAsStream(PLACE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
