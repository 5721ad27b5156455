package benchful.privacy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Takes people out of stored rows. A student becomes "Student 3" and keeps the size, the seat and what was chosen, so that plans still
 * compute; all else that was asked, needs and whom to call, goes. In whatever else is written freely the name becomes "somebody". Names by which things refer
 * to one another, such as that of a material, are left alone and told.
 */
final class Redaction {
    private static final String SOMEBODY = "somebody";

    /** What refers to something else, in columns and sheets; a changed one would refer to nothing. */
    private static final Set<String> REFERENCES = Set.of("material", "materials", "use", "of", "size", "sizes", "id", "step", "hazard", "hazards", "supplier",
            "suppliers", "tool", "tools", "picture", "demonstration", "alternatives", "prepared_ahead", "homework", "shown_to_groups", "own_order", "found_order", "choices", "craft", "kind", "thing", "table_name",
            "media_type", "content");

    /** What stays of a student, beside what he or she is called; whatever else is asked of one goes. */
    private static final Set<String> COMPUTED_WITH = Set.of("name", "seat", "size", "choices", "instead");

    /** A person's name is written where these are; elsewhere a name is that of a thing. */
    private static final Set<String> OF_PEOPLE = Set.of("students", "emergency", "rows", "bin_entry");

    private final Pattern names;
    private final boolean everyStudent;

    /** By class and kit, as its packing list calls it: how it is called from now on. */
    private final Map<String, String> aliases = new HashMap<>();
    private final List<String> texts = new ArrayList<>();
    private final List<String> things = new ArrayList<>();
    private final List<JsonNode> students = new ArrayList<>();

    private Redaction(Collection<String> names, boolean everyStudent) {
        this.names = pattern(names);
        this.everyStudent = everyStudent;
    }

    /** Takes out one person, by the name as it is written, whatever the case of its letters. */
    static Redaction of(String name) {
        return new Redaction(List.of(name), false);
    }

    /** Takes out every student, and these names where anything is written. */
    static Redaction ofAll(Collection<String> names) {
        return new Redaction(names, true);
    }

    /** Whole words, however they are parted. */
    private static Pattern pattern(Collection<String> names) {
        String any = names.stream().map(n -> Arrays.stream(n.strip().split("\\s+")).map(Pattern::quote).collect(Collectors.joining("\\s+")))
                .collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + (any.isEmpty() ? "(?!)" : any) + ")(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** What was met in the last row: the texts that name the person. */
    List<String> texts() {
        return List.copyOf(texts);
    }

    /** Names of things in the last row that hold the name. */
    List<String> things() {
        return List.copyOf(things);
    }

    /** The person among the students in the last row, with all that is written about them. */
    List<JsonNode> students() {
        return List.copyOf(students);
    }

    /** The row without the person; the same where nothing names them. */
    ObjectNode row(String table, ObjectNode row) {
        texts.clear();
        things.clear();
        students.clear();
        return redacted(table, row);
    }

    /**
     * The row that is being read.
     *
     * @param owner the class that it belongs to
     */
    private record Row(String table, String owner) {
        static Row of(String table, ObjectNode row) {
            return new Row(table, table.equals("craft_class") ? row.path("id").asText() : row.path("class_id").asText());
        }
    }

    /** A row in the bin holds a row of another table, as it was before and after. */
    private ObjectNode redacted(String table, ObjectNode row) {
        Row at = Row.of(table, row);
        ObjectNode redacted = row.objectNode();
        row.fields().forEachRemaining(column -> {
            boolean binned = table.equals("bin_row") && column.getValue().isObject();
            redacted.set(column.getKey(), binned ? redacted(row.path("table_name").asText(), (ObjectNode) column.getValue())
                    : node(column.getKey(), table, column.getValue(), at));
        });
        return redacted;
    }

    /**
     * @param key under which the node stands
     * @param within the key that holds this one; "rows[]" for a part of a list
     */
    private JsonNode node(String key, String within, JsonNode node, Row at) {
        if (key.equals("students") && node instanceof ArrayNode list) {
            return students(list, at);
        }
        if (node instanceof ObjectNode object) {
            return object(key, object, at);
        }
        if (node instanceof ArrayNode list) {
            ArrayNode redacted = list.arrayNode();
            list.forEach(n -> redacted.add(n.isObject() ? node(key + "[]", key, n, at) : node(key, within, n, at)));
            return redacted;
        }
        return node.isTextual() ? text(key, within.replace("[]", ""), node.asText(), at) : node;
    }

    /** In a map of references, such as what was chosen, each value is one. */
    private ObjectNode object(String key, ObjectNode object, Row at) {
        ObjectNode redacted = object.objectNode();
        boolean map = REFERENCES.contains(key);
        object.fields().forEachRemaining(f -> redacted.set(f.getKey(), node(map && f.getValue().isTextual() ? key : f.getKey(), key, f.getValue(), at)));
        return redacted;
    }

    private JsonNode text(String key, String within, String written, Row at) {
        Matcher name = names.matcher(key.equals("content") ? "" : written);
        if (!name.find()) {
            return TextNode.valueOf(written);
        }
        boolean ofAThing = REFERENCES.contains(key) || key.equals("name") && !OF_PEOPLE.contains(within);
        (ofAThing ? things : texts).add(written);
        String anonymous = key.equals("kit") ? aliases.get(at.owner() + "/" + written) : null;
        return TextNode.valueOf(ofAThing ? written : anonymous == null ? name.replaceAll(SOMEBODY) : anonymous);
    }

    private ArrayNode students(ArrayNode list, Row at) {
        ArrayNode redacted = list.arrayNode();
        Map<String, Integer> alike = new HashMap<>();
        for (int i = 0; i < list.size(); i++) {
            JsonNode student = list.get(i);
            String name = student.path("name").asText();
            String kit = name + (alike.merge(name, 1, Integer::sum) == 1 ? "" : "/" + alike.get(name));
            boolean meant = everyStudent || names.matcher(name).find();
            redacted.add(meant && student instanceof ObjectNode s ? nameless(s, i + 1, kit, at) : node("students[]", "students", student, at));
        }
        return redacted;
    }

    /** @param kit as a packing list calls it: a namesake's second kit has a number behind it */
    private ObjectNode nameless(ObjectNode student, int number, String kit, Row at) {
        String anonymous = student.path("name").asText().matches("Student \\d+") ? student.path("name").asText() : "Student " + number;
        ObjectNode left = student.deepCopy();
        left.put("name", anonymous).retain(COMPUTED_WITH);
        if (!left.equals(student)) {
            students.add(student);
        }
        if (at.table().equals("craft_class")) {
            aliases.put(at.owner() + "/kit/" + kit, "kit/" + anonymous);
        }
        return left;
    }
}
