package benchful.projects.writing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A number without a unit has the unit that was chosen for its measure. */
final class BareNumbers {
    private static final String BARE = "\\d[\\d.,/ ]*[¼-¾⅐-⅞]?|[¼-¾⅐-⅞]";

    private BareNumbers() {}

    static void unite(ObjectNode sheet) {
        Map<String, String> units = new HashMap<>();
        sheet.path("measures").forEach(m -> units.put(m.path("name").asText(), m.path("unit").asText()));
        for (JsonNode size : sheet.path("sizes")) {
            if (size.path("measures") instanceof ObjectNode values) {
                List.copyOf(values.properties()).stream().filter(m -> m.getValue().asText().strip().matches(BARE) && units.containsKey(m.getKey()))
                        .forEach(m -> values.put(m.getKey(), (m.getValue().asText().strip() + " " + units.get(m.getKey())).strip()));
            }
        }
    }
}
