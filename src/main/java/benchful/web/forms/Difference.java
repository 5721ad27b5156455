package benchful.web.forms;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One place at which two versions of a sheet differ; an absent value is an empty text. */
@TemplateData
public record Difference(String pointer, String theirs, String mine) {

    /** In words. */
    public String place() {
        return JsonPointers.words(pointer);
    }

    /** In the order of the sheet; whole lists are compared place by place. */
    public static List<Difference> between(JsonNode theirs, JsonNode mine) {
        List<Difference> found = new ArrayList<>();
        collect("", theirs, mine, found);
        return List.copyOf(found);
    }

    private static void collect(String at, JsonNode theirs, JsonNode mine, List<Difference> found) {
        if (theirs.isContainerNode() || mine.isContainerNode()) {
            for (String key : keys(theirs, mine)) {
                collect(JsonPointers.below(at, key), below(theirs, key), below(mine, key), found);
            }
        } else if (!theirs.asText("").equals(mine.asText(""))) {
            found.add(new Difference(at, shown(theirs), shown(mine)));
        }
    }

    private static Set<String> keys(JsonNode a, JsonNode b) {
        Set<String> keys = new LinkedHashSet<>();
        for (JsonNode n : List.of(a, b)) {
            n.fieldNames().forEachRemaining(keys::add);
            for (int i = 0; n.isArray() && i < n.size(); i++) {
                keys.add(String.valueOf(i));
            }
        }
        return keys;
    }

    private static JsonNode below(JsonNode node, String key) {
        return node.isArray() ? node.path(key.matches("\\d+") ? Integer.parseInt(key) : -1) : node.path(key);
    }

    private static String shown(JsonNode node) {
        String text = node.asText("");
        return text.length() > 400 ? text.substring(0, 400) + "…" : text;
    }
}
