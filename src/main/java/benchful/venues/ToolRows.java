package benchful.venues;

import benchful.web.forms.JsonPointers;
import benchful.web.forms.SpecForm;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The tools of a room as rows of a form, each a name and a number. In the sheet the names are keys, which no field can be
 * named by before they are typed, so the rows are turned into fields of the sheet when the form is sent.
 */
final class ToolRows {
    private static final int BLANK = 3;

    private ToolRows() {}

    /**
     * A row.
     *
     * @param at where the number stands in the sheet; for a blank row a place of its own
     */
    @TemplateData
    public record Row(String name, String count, String at) {}

    static List<Row> of(SpecForm form) {
        List<Row> rows = new ArrayList<>();
        JsonNode tools = form.tree().path("tools");
        tools.fieldNames().forEachRemaining(name -> rows.add(new Row(name, tools.path(name).asText(), form.below("/tools", name))));
        rows.sort(Comparator.comparing(Row::name, String.CASE_INSENSITIVE_ORDER));
        for (int i = 1; i <= BLANK; i++) {
            rows.add(new Row("", "", "/blank-tool/" + i));
        }
        return rows;
    }

    /** The form with each row as a field of the sheet. A tool without a number is there once; a box not ticked says no. */
    static MultivaluedMap<String, String> asFields(MultivaluedMap<String, String> form) {
        MultivaluedMap<String, String> fields = new MultivaluedHashMap<>();
        fields.putSingle("/water", "false");
        fields.putSingle("/first_aid", "false");
        form.forEach(fields::put);
        List<String> names = form.getOrDefault("tool-name", List.of());
        List<String> counts = form.getOrDefault("tool-count", List.of());
        for (int i = 0; i < Math.min(names.size(), counts.size()); i++) {
            if (!names.get(i).isBlank()) {
                fields.putSingle(JsonPointers.below("/tools", names.get(i).strip()), counts.get(i).isBlank() ? "1" : counts.get(i));
            }
        }
        return fields;
    }
}
