package benchful.hazards;

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

/** The hazards that come with the program, read once. */
public final class LibraryFile {
    private static final String PLACE = "/hazards/library.yaml";
    private static final Map<String, HazardSpec> ENTRIES = entries();

    private LibraryFile() {}

    @Spec(name = "hazards-1", title = "A library of hazards", file = "a hazard library")
    private record Library(@Required @Length(most = 500) List<HazardSpec> hazards) {}

    /** By short name, in the order of the file. */
    public static Map<String, HazardSpec> byId() {
        return ENTRIES;
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
