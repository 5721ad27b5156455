package benchful.projects.writing;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Carries a name that was changed in a project's form to every place of the form that uses it: a measure into sizes and
 * formulas, a tool, a step or a picture into steps. The form says what a name was in a field {@code was:} and its row.
 */
final class Renames {
    private static final Pattern SIZE = Pattern.compile("(/sizes/\\d+/measures/)(.+)");
    private static final Pattern FORMULA = Pattern.compile(
            "/materials/\\d+/(amount|width|pieces)|/sizing/\\d+/values/.+|/sizing/\\d+/beads/\\d+/size|/steps/\\d+/repeats");
    private static final Pattern TOOL = Pattern.compile("/steps/\\d+/tools/\\d+/tool");
    private static final Pattern STEP = Pattern.compile("/steps/\\d+/after/\\d+/step");
    private static final Pattern PICTURE = Pattern.compile("/steps/\\d+/pictures/\\d+");
    private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");

    private final MultivaluedMap<String, String> fields;
    private final Map<String, String> measures;
    private final Map<String, String> workings;
    private final Map<String, String> tools;
    private final Map<String, String> steps;
    private final Map<String, String> pictures;

    private Renames(MultivaluedMap<String, String> fields) {
        this.fields = fields;
        this.measures = renamed("/measures/", "/name");
        this.workings = renamed("/sizing/", "/name");
        this.tools = renamed("/tools/", "/name");
        this.steps = renamed("/steps/", "/id");
        this.pictures = renamed("/pictures/", "/name");
    }

    /** The fields with every changed name carried on. */
    static MultivaluedMap<String, String> carried(MultivaluedMap<String, String> fields) {
        Renames renames = new Renames(fields);
        MultivaluedMap<String, String> carried = new MultivaluedHashMap<>();
        fields.forEach((field, values) -> values.forEach(value -> carried.add(renames.field(field), renames.value(field, value))));
        return carried;
    }

    /** By the old name, the new one, of the rows whose name was changed to another. */
    private Map<String, String> renamed(String list, String key) {
        Map<String, String> renamed = new HashMap<>();
        fields.forEach((field, values) -> {
            String now = field.startsWith("was:" + list) ? fields.getFirst(field.substring("was:".length()) + key) : null;
            String was = values.get(0);
            if (now != null && !now.isBlank() && !was.isBlank() && !now.strip().equals(was)) {
                renamed.put(was, now.strip());
            }
        });
        return renamed;
    }

    private String field(String field) {
        Matcher size = SIZE.matcher(field);
        return size.matches() ? size.group(1) + measures.getOrDefault(size.group(2), size.group(2)) : field;
    }

    private String value(String field, String value) {
        if (TOOL.matcher(field).matches()) {
            return tools.getOrDefault(value.strip(), value);
        }
        if (STEP.matcher(field).matches()) {
            return steps.getOrDefault(value.strip(), value);
        }
        if (PICTURE.matcher(field).matches()) {
            return pictures.getOrDefault(value.strip(), value);
        }
        return FORMULA.matcher(field).matches() ? words(value, this::word) : value;
    }

    private String word(String word) {
        return workings.entrySet().stream()
                .filter(w -> word.startsWith(w.getKey() + "_"))
                .map(w -> w.getValue() + word.substring(w.getKey().length()))
                .findFirst()
                .orElse(measures.getOrDefault(word, word));
    }

    private static String words(String formula, UnaryOperator<String> change) {
        return WORD.matcher(formula).replaceAll(m -> Matcher.quoteReplacement(change.apply(m.group())));
    }
}
