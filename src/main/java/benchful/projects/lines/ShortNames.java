package benchful.projects.lines;

import benchful.core.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Short names made from what people call things: nobody has to think them out. */
public final class ShortNames {
    /** Words that formulas know already. */
    private static final Set<String> TAKEN = Set.of("pi", "percent", "ceil", "floor", "round", "sqrt", "min", "max", "awg", "swg", "us_ring");
    private static final int LONGEST = 40;

    private ShortNames() {}

    /** Gives every step and measure of a form that has a title but no short name one of its own. */
    public static void fill(ObjectNode sheet) {
        fill(sheet.path("steps"), "title", "id", "step");
        fill(sheet.path("measures"), "label", "name", "measure");
        sheet.path("measures").forEach(m -> spell(m, "name", "label"));
    }

    private static void fill(JsonNode rows, String title, String name, String otherwise) {
        for (JsonNode row : rows) {
            if (row instanceof ObjectNode object && !row.path(title).asText().isBlank() && row.path(name).asText().isBlank()) {
                object.put(name, free(row.path(title).asText(), rows, name, otherwise));
            }
        }
    }

    /** A measure of which only the name was given is called so. */
    private static void spell(JsonNode row, String name, String label) {
        String given = row.path(name).asText();
        if (row instanceof ObjectNode object && !given.isBlank() && row.path(label).asText().isBlank()) {
            object.put(label, given.substring(0, 1).toUpperCase(Locale.ROOT) + given.substring(1).replace('_', ' '));
        }
    }

    static String free(String title, JsonNode rows, String key, String otherwise) {
        Set<String> used = new HashSet<>();
        rows.forEach(row -> used.add(row.path(key).asText()));
        String name = of(title, otherwise);
        String free = name;
        for (int i = 2; used.contains(free); i++) {
            String number = "_" + i;
            free = name.substring(0, Math.min(name.length(), LONGEST - number.length())) + number;
        }
        return free;
    }

    /** Small letters, digits and strokes, beginning with a letter. */
    static String of(String title, String otherwise) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFD).toLowerCase(Locale.ROOT).replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^_+|_+$", "");
        String named = plain.isEmpty() ? otherwise : plain.matches("[a-z].*") ? plain : otherwise + "_" + plain;
        String cut = named.length() <= LONGEST ? named : named.substring(0, Math.max(20, named.lastIndexOf('_', LONGEST)));
        String name = cut.substring(0, Math.min(LONGEST, cut.length())).replaceAll("_+$", "");
        return TAKEN.contains(name) || Unit.of(name).isPresent() ? name + "_" + otherwise : name;
    }
}
