package benchful.projects.lines;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** A row of the sheet as it is read from a line, with what each word of the line was taken for. */
final class LineRow {
    final ObjectNode row = JsonNodeFactory.instance.objectNode();
    final List<Part> parts = new ArrayList<>();

    void put(String key, String label, String value, String words) {
        row.put(key, value);
        parts.add(Part.of("/" + key, label, words));
    }

    /** More words for a place that has some. */
    void append(String key, String label, String value, String between, String words) {
        String before = row.path(key).asText();
        put(key, label, before.isEmpty() ? value : before + between + value, words);
    }

    void doubt(String pointer, String label, String words, String sentence) {
        parts.add(new Part(pointer, label, words, sentence));
    }

    boolean has(String key) {
        return row.has(key);
    }
}
