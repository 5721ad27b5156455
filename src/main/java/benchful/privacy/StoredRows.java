package benchful.privacy;

import benchful.database.TableMap;
import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hibernate.Session;

/** The rows of all tables, whatever tables there are, read and written as trees. Needs a transaction. */
@ApplicationScoped
class StoredRows {
    /** A class's own rows, what hangs on it, its earlier versions, and all that of it which is in the bin. */
    private static final Map<String, String> OF_A_CLASS = Map.of(
            "craft_class", "t.id = cast(:id as bigint)",
            "bin_entry", "t.id in (select b.entry_id from bin_row b where b.table_name = 'craft_class' and b.before ->> 'id' = :id)",
            "bin_row", "coalesce(t.before, t.after) ->> 'class_id' = :id or t.table_name = 'craft_class' and coalesce(t.before, t.after) ->> 'id' = :id"
                    + " or t.table_name = 'earlier_version' and t.before ->> 'thing' = :id and t.before ->> 'kind' in ('craft_class', 'review', 'assessment')",
            "stock_movement", "t.class_id = cast(:id as bigint) or t.id in (select cast(b.before ->> 'id' as bigint) from bin_row b"
                    + " where b.table_name = 'stock_movement' and b.before ->> 'class_id' = :id)",
            "earlier_version", "t.thing = :id and t.kind in ('craft_class', 'review', 'assessment')");

    private final EntityManager database;

    StoredRows(EntityManager database) {
        this.database = database;
    }

    /** A row of a table as a tree, without bytes. */
    record Stored(Table table, ObjectNode row) {}

    /**
     * The rows that hold some letters.
     *
     * @param letters of any case; none for all rows in which anything is written
     * @param locked whether they are kept from everybody else until the transaction ends
     */
    List<Stored> holding(String letters, boolean locked) {
        String like = "%" + letters.replaceAll("([\\\\%_])", "\\\\$1") + "%";
        List<Stored> found = new ArrayList<>();
        tables().tables().stream().filter(t -> !written(t).isEmpty()).forEach(t -> found.addAll(rows(t, "concat_ws(' ', %s) ilike :like".formatted(written(t)), "like", like, locked)));
        return found;
    }

    /** The rows that belong to a class. */
    List<Stored> ofClass(long id, boolean locked) {
        List<Stored> found = new ArrayList<>();
        for (Table table : tables().tables()) {
            String own = OF_A_CLASS.getOrDefault(table.name(), table.columnNames().contains("class_id") ? "t.class_id = cast(:id as bigint)" : null);
            if (own != null) {
                found.addAll(rows(table, own, "id", String.valueOf(id), locked));
            }
        }
        return found;
    }

    /** Writes a changed row back. A form that was opened before is outdated by it. */
    void write(Stored before, ObjectNode after) {
        List<String> changed = before.table().columnNames().stream().filter(c -> after.has(c) && !after.get(c).equals(before.row().get(c))).toList();
        if (changed.isEmpty()) {
            return;
        }
        String sets = changed.stream().map("\"%1$s\" = b.\"%1$s\""::formatted).collect(Collectors.joining(", "));
        String version = before.table().columnNames().contains("version") ? ", version = t.version + 1" : "";
        String key = before.table().key().stream().map("t.\"%1$s\" = b.\"%1$s\""::formatted).collect(Collectors.joining(" and "));
        database.createNativeQuery("update \"%1$s\" t set %2$s%3$s from jsonb_populate_record(cast(null as \"%1$s\"), cast(:row as jsonb)) b where %4$s"
                .formatted(before.table().name(), sets, version, key)).setParameter("row", after.toString()).executeUpdate();
    }

    @SuppressWarnings("unchecked")
    private List<Stored> rows(Table table, String which, String parameter, String value, boolean locked) {
        String bytes = table.columns().stream().filter(c -> c.type().equals("bytea")).map(c -> " - '%s'".formatted(c.name())).collect(Collectors.joining());
        Query query = database.createNativeQuery("select cast(to_jsonb(t)%s as text) from \"%s\" t where %s%s"
                .formatted(bytes, table.name(), which, locked ? " for update" : ""), String.class);
        List<String> rows = query.setParameter(parameter, value).getResultList();
        return rows.stream().map(r -> new Stored(table, tree(r))).toList();
    }

    /** The columns in which words stand. */
    private static String written(Table table) {
        return table.columns().stream().filter(StoredRows::holdsWords).map(c -> "cast(t.\"%s\" as text)".formatted(c.name())).collect(Collectors.joining(", "));
    }

    private static boolean holdsWords(Column column) {
        return List.of("text", "jsonb", "text[]").contains(column.type());
    }

    private TableMap tables() {
        return database.unwrap(Session.class).doReturningWork(c -> TableMap.of(c, c.getSchema()));
    }

    private static ObjectNode tree(String row) {
        try {
            return (ObjectNode) SpecFormat.json().readTree(row);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
