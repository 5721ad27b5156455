package benchful.backups.tables;

import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A column whose contents are files of their own in a backup, in a folder with the trade's word for them: a project's sheet
 * can be read by itself and its picture be looked at. Columns that are not listed stand in the table's own file.
 *
 * @param label SQL for what the file is called beside its number
 * @param ending SQL for the end of its name
 */
public record Layout(String table, String column, String folder, String label, String ending) {
    private static final String JSON = "'.json'";
    private static final String PICTURE =
            "case media_type when 'image/svg+xml' then '.svg' when 'image/png' then '.png' when 'image/jpeg' then '.jpg' else '' end";

    private static final List<Layout> ALL = List.of(
            new Layout("project", "sheet", "projects", "name", JSON),
            new Layout("project_picture", "content", "pictures", "name", PICTURE),
            new Layout("held_picture", "content", "pictures-being-written", "left(digest, 12)", PICTURE),
            new Layout("class_photo", "content", "photographs", "'class ' || class_id", PICTURE),
            new Layout("venue", "sheet", "venues", "name", JSON),
            new Layout("craft_class", "setup", "classes", "setup ->> 'title'", JSON),
            new Layout("kept_plan", "file", "plans", "'class ' || class_id", JSON),
            new Layout("kept_plan", "steps", "plans", "'class ' || class_id || ' steps'", JSON),
            new Layout("review", "sheet", "reviews", "'class ' || class_id", JSON),
            new Layout("assessment", "sheet", "assessments", "'class ' || class_id", JSON),
            new Layout("printed_assessment", "sheet", "assessments", "'class ' || class_id || ' printed'", JSON),
            new Layout("hazard", "sheet", "hazards", "''", JSON),
            new Layout("kit_batch", "sheet", "batches", "''", JSON));

    /** What the tables hold, in the trade's words; others are called by their names. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("project", "projects"), Map.entry("project_picture", "pictures of projects"), Map.entry("project_draft", "projects being written"),
            Map.entry("held_picture", "pictures of projects being written"), Map.entry("venue", "venues"),
            Map.entry("craft_class", "classes"), Map.entry("kept_plan", "plans kept when printed"), Map.entry("review", "reviews"), Map.entry("class_photo", "photographs of finished pieces"),
            Map.entry("assessment", "risk assessments"), Map.entry("printed_assessment", "risk assessments as printed"),
            Map.entry("hazard", "hazards of your own"), Map.entry("kit_batch", "kit batches"), Map.entry("supplier", "suppliers"),
            Map.entry("material", "materials"), Map.entry("offer", "packs and prices"), Map.entry("price_break", "prices for many packs"),
            Map.entry("past_price", "earlier prices"), Map.entry("stock_movement", "stock movements"), Map.entry("offcut", "offcuts"),
            Map.entry("cut_material", "materials cut"), Map.entry("packed_content", "things packed"), Map.entry("purchase_order", "orders"),
            Map.entry("order_line", "order lines"), Map.entry("order_class", "classes that orders are for"),
            Map.entry("bin_entry", "things in the bin"), Map.entry("bin_row", "rows of things in the bin"));

    static Optional<Layout> of(Table table, Column column) {
        return ALL.stream().filter(l -> l.table.equals(table.name()) && l.column.equals(column.name())).findFirst();
    }

    public static String words(String table) {
        return WORDS.getOrDefault(table, table.replace('_', ' '));
    }

    /** SQL for the file's path: letters, digits and hyphens only, so that every system can unpack it. */
    String path() {
        String slug = "left(regexp_replace(lower(coalesce(%s, '')), '[^a-z0-9]+', '-', 'g'), 40)".formatted(label);
        return "case when %s is not null then '%s/' || rtrim(id || '-' || ltrim(%s, '-'), '-') || %s end".formatted(column, folder, slug, ending);
    }

    /** SQL for the file's content: text for a sheet, bytes for a picture. */
    String content() {
        return ending.equals(JSON) ? "convert_to(jsonb_pretty(%s), 'UTF8')".formatted(column) : column;
    }
}
