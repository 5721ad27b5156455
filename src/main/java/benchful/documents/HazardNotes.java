package benchful.documents;

import benchful.web.SheetFormat;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

/** What print-outs say of each hazard, by its id, from the library that the program carries. */
final class HazardNotes {
    private static final String LIBRARY = "hazards/library.yaml";
    private static final Map<String, HazardNote> CARRIED = read();

    private HazardNotes() {}

    static Map<String, HazardNote> carried() {
        return CARRIED;
    }

    private static Map<String, HazardNote> read() {
        Map<String, HazardNote> notes = new LinkedHashMap<>();
        try (InputStream in = HazardNotes.class.getClassLoader().getResourceAsStream(LIBRARY)) {
            SheetFormat.yaml().readTree(in).path("hazards").forEach(hazard -> notes.put(hazard.path("id").asText(), note(hazard)));
            return Collections.unmodifiableMap(notes);
        } catch (IOException e) {
            throw new UncheckedIOException("The library of hazards can't be read.", e);
        }
    }

    private static HazardNote note(JsonNode hazard) {
        List<String> signs = StreamSupport.stream(hazard.path("signs").spliterator(), false)
                .map(sign -> sign.path("code").asText() + " " + sign.path("name").asText()).toList();
        return new HazardNote(hazard.path("id").asText(), hazard.path("name").asText(), hazard.path("harm").asText(), texts(hazard.path("cautions")),
                texts(hazard.path("first_response")), texts(hazard.path("protective_gear")), hazard.path("ventilation").asText(), signs,
                hazard.path("disposal").asText());
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
    }
}
