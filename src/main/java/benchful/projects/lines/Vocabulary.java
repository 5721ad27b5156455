package benchful.projects.lines;

import benchful.core.quantity.Container;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;

/** The names that the lines of a sheet may use: its measures and what is worked out from them, its tools, and the hazards of the library. */
final class Vocabulary {
    private final JsonNode sheet;
    private final Map<String, String> hazards;

    /** @param hazards of the library: their names by the short names that sheets write */
    Vocabulary(JsonNode sheet, Map<String, String> hazards) {
        this.sheet = sheet;
        this.hazards = hazards;
    }

    /** A measure of the sheet. */
    record Named(String name, String label, String unit) {}

    List<Named> measures() {
        List<Named> measures = new ArrayList<>();
        sheet.path("measures").forEach(m -> measures.add(new Named(m.path("name").asText(), m.path("label").asText(m.path("name").asText()), m.path("unit").asText())));
        return measures;
    }

    Optional<Named> measure(String words) {
        String lower = words.toLowerCase(Locale.ROOT);
        return measures().stream().filter(m -> m.label.toLowerCase(Locale.ROOT).equals(lower)).findFirst()
                .or(() -> measures().stream().filter(m -> m.name.equals(lower)).findFirst());
    }

    /** By the words for each measure, its name; longer words first. */
    Map<String, String> spoken() {
        Map<String, String> spoken = new LinkedHashMap<>();
        measures().stream().sorted(Comparator.comparing((Named m) -> -m.label.length())).forEach(m -> spoken.putIfAbsent(m.label, m.name));
        return spoken;
    }

    /** Whether formulas may use all of these names. */
    boolean knows(Set<String> names) {
        Set<String> known = new TreeSet<>(Container.words());
        measures().forEach(m -> known.add(m.name));
        List<String> workings = new ArrayList<>();
        sheet.path("sizing").forEach(s -> workings.add(s.path("name").asText() + "_"));
        return names.stream().allMatch(n -> known.contains(n) || workings.stream().anyMatch(n::startsWith));
    }

    boolean names(String word) {
        return measures().stream().anyMatch(m -> m.name.equals(word));
    }

    /** The tool that is called so, in one or in many, whatever the case. */
    Optional<String> tool(String words) {
        List<String> tools = new ArrayList<>();
        sheet.path("tools").forEach(t -> tools.add(t.path("name").asText()));
        return tools.stream().filter(words::equals).findFirst().or(() -> tools.stream().filter(t -> !t.isEmpty() && singular(t).equals(singular(words))).findFirst());
    }

    static String singular(String words) {
        String lower = words.strip().toLowerCase(Locale.ROOT);
        return lower.length() > 3 && lower.endsWith("s") && !lower.endsWith("ss") ? lower.substring(0, lower.length() - 1) : lower;
    }

    /** Whether each hazard of a row is known by its short name. */
    boolean knowsHazards(JsonNode row) {
        return StreamSupport.stream(row.path("hazards").spliterator(), false).allMatch(h -> hazard(h.asText()).filter(h.asText()::equals).isPresent());
    }

    /** The short name of a hazard. */
    Optional<String> hazard(String words) {
        String id = words.toLowerCase(Locale.ROOT).strip().replaceAll("[\\s_]+", "-");
        return hazards.entrySet().stream().filter(h -> h.getKey().equals(id) || h.getValue().equalsIgnoreCase(words.strip())).map(Map.Entry::getKey).findFirst()
                .or(() -> Optional.of(words).filter(w -> w.matches("[a-z][a-z0-9]*(-[a-z0-9]+)+")));
    }
}
