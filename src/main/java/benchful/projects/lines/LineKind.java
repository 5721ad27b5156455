package benchful.projects.lines;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** How the rows of one list are written as lines and read back. */
interface LineKind {
    /** Of the sheet, such as {@code /steps}. */
    String list();

    /** The key of a row by which it is called. */
    String name();

    /** The lines of a box, a row each. */
    List<Entry> entries(String box);

    LineRow read(Entry entry, Vocabulary known);

    /** The keys of which a row's line says all; what others hold stays with the row when its line is changed. */
    Set<String> said(ObjectNode row, Vocabulary known);

    /** @param quoted true where every name stands between quotation marks, so that none can be taken for something else */
    String written(JsonNode row, Vocabulary known, boolean quoted);

    /** As it is read back the same. */
    default String written(ObjectNode row, Vocabulary known) {
        String plain = written(spoken(row, known), known, false);
        return readsAs(row, plain, known) ? plain : written(spoken(row, known), known, true);
    }

    /** Whether a line gives back what it says of a row. */
    default boolean readsAs(ObjectNode row, String line, Vocabulary known) {
        List<Entry> entries = entries(line);
        if (entries.size() != 1) {
            return false;
        }
        ObjectNode read = read(entries.get(0), known).row;
        ObjectNode spoken = spoken(row, known);
        return said(row, known).stream().allMatch(key -> alike(spoken.path(key), read.path(key)));
    }

    /** A row as a line reads it. */
    default ObjectNode spoken(ObjectNode row, Vocabulary known) {
        return row;
    }

    /** Forms hold texts, sheets numbers and truth values too; what is not true is left out. */
    private static boolean alike(JsonNode one, JsonNode other) {
        if (!one.isContainerNode() && !other.isContainerNode()) {
            return one.asText().strip().equals(other.asText().strip()) || isNot(one) && isNot(other);
        }
        Set<String> keys = new TreeSet<>();
        one.fieldNames().forEachRemaining(keys::add);
        other.fieldNames().forEachRemaining(keys::add);
        return one.size() == other.size() && keys.stream().allMatch(key -> alike(one.path(key), other.path(key)))
                && IntStream.range(0, one.isArray() ? one.size() : 0).allMatch(i -> alike(one.path(i), other.path(i)));
    }

    private static boolean isNot(JsonNode value) {
        return value.isMissingNode() || value.isBoolean() && !value.booleanValue();
    }
}
