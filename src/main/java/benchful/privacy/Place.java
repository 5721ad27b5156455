package benchful.privacy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.util.Map;

/**
 * Where something is written, for a person to look it up.
 *
 * @param words such as "review of a class"
 * @param address of the page that shows it
 */
@TemplateData
record Place(String words, String address) {
    /** By table: what a row of it is, and its page, with the columns that its address names. */
    private static final Map<String, Place> OF_TABLES = Map.ofEntries(
            Map.entry("craft_class", new Place("class", "/classes/{id}")),
            Map.entry("kept_plan", new Place("plan of a class as it was printed or reviewed", "/classes/{class_id}")),
            Map.entry("review", new Place("review of a class", "/classes/{class_id}/review")),
            Map.entry("class_photo", new Place("photograph of a class", "/classes/{class_id}/photos")),
            Map.entry("assessment", new Place("risk assessment of a class", "/classes/{class_id}/assessment")),
            Map.entry("printed_assessment", new Place("printed risk assessment of a class", "/classes/{class_id}/assessment")),
            Map.entry("packed_content", new Place("packing list of a class", "/classes/{class_id}/packing")),
            Map.entry("stock_movement", new Place("movement of stock", "/materials/{material_id}")),
            Map.entry("offer", new Place("offer of a material", "/materials/{material_id}")),
            Map.entry("kit_batch", new Place("kits for sale", "/batches/{id}")),
            Map.entry("purchase_order", new Place("order", "/orders/{id}")),
            Map.entry("order_line", new Place("line of an order", "/orders/{order_id}")),
            Map.entry("project", new Place("project", "/projects/{id}")),
            Map.entry("project_picture", new Place("picture of a project", "/projects/{project_id}")),
            Map.entry("material", new Place("material", "/materials/{id}")),
            Map.entry("supplier", new Place("supplier", "/suppliers/{id}/edit")),
            Map.entry("venue", new Place("venue", "/venues/{id}")),
            Map.entry("hazard", new Place("hazard", "/hazards/{id}")),
            Map.entry("bin_entry", new Place("bin", "/bin")),
            Map.entry("bin_row", new Place("bin", "/bin")));

    static Place of(String table, ObjectNode row) {
        if (table.equals("earlier_version")) {
            ObjectNode thing = row.objectNode().put("id", row.path("thing").asText()).put("class_id", row.path("thing").asText());
            Place now = of(row.path("kind").asText(), thing);
            return new Place("earlier version: " + now.words, now.address);
        }
        Place place = OF_TABLES.getOrDefault(table, new Place(table.replace('_', ' '), "/privacy"));
        String address = place.address;
        for (var column : row.properties()) {
            address = address.replace("{" + column.getKey() + "}", column.getValue().asText());
        }
        return new Place(place.words, address);
    }
}
