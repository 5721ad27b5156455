package benchful.bin;

import benchful.bin.RestorationOutcome.NameTaken;
import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The rows of one table in one entry of the bin. All is done by the database, so that a ledger of thousands of lines and pictures
 * of megabytes never pass through the program.
 */
final class BinTable {
    private static final String REMOVED = " r.entry_id = :entry and r.table_name = :table and r.after is null ";

    private final EntityManager database;
    private final long entry;
    private final Table table;

    BinTable(EntityManager database, long entry, Table table) {
        this.database = database;
        this.entry = entry;
        this.table = table;
    }

    Table table() {
        return table;
    }

    boolean isConcerned() {
        return is("select exists (select 1 from bin_row r where r.entry_id = :entry and r.table_name = :table)");
    }

    /** Things whose name somebody gave to another one meanwhile. Names count whatever the case of their letters. */
    @SuppressWarnings("unchecked")
    List<NameTaken> namesTaken() {
        if (!isNamed()) {
            return List.of();
        }
        List<Object[]> taken = on("""
                select cast(r.before ->> 'id' as bigint), r.before ->> 'name' from bin_row r where %s
                    and exists (select 1 from %s t where lower(t.name) = lower(r.before ->> 'name')) order by 2""".formatted(REMOVED, name())).getResultList();
        return taken.stream().map(t -> new NameTaken(table.name(), (Long) t[0], (String) t[1])).toList();
    }

    /** Gives things in the bin the names that somebody chose for them; a sheet says its name too. */
    void rename(Map<String, String> newNames) {
        if (newNames.isEmpty() || !isNamed()) {
            return;
        }
        newNames.forEach((field, name) -> on("""
                update bin_row r set before = jsonb_set(case when r.before -> 'sheet' -> 'name' is null then r.before
                    else jsonb_set(r.before, '{sheet,name}', to_jsonb(cast(:name as text))) end, '{name}', to_jsonb(cast(:name as text)))
                where %s and 'name-' || r.table_name || '-' || (r.before ->> 'id') = :field""".formatted(REMOVED))
                .setParameter("name", name).setParameter("field", field).executeUpdate());
    }

    /** True where the database knows the table's rows by a name of their own. */
    private boolean isNamed() {
        return (Boolean) database.createNativeQuery("""
                select exists (select 1 from pg_indexes where schemaname = current_schema() and tablename = :table
                    and indexdef like 'CREATE UNIQUE%(lower(name))')""", Boolean.class).setParameter("table", table.name()).getSingleResult();
    }

    /** True where a row with the key of one in the bin was written meanwhile. */
    boolean isOccupied() {
        return is("select exists (select 1 from bin_row r, %s t, %s b where %s and %s)".formatted(name(), record("r.before"), REMOVED, sameKey()));
    }

    /** A row from before a later change to the tables: columns made since take their default, columns that went are passed over. */
    void insert() {
        @SuppressWarnings("unchecked")
        List<String> known = on("select distinct k from bin_row r, jsonb_object_keys(r.before) k where " + REMOVED, String.class).getResultList();
        String columns = table.columnNames().stream().filter(known::contains).map(BinTable::quoted).collect(Collectors.joining(", "));
        if (!columns.isEmpty()) {
            on("insert into %s (%s) select %s from (select b.* from bin_row r, %s b where %s) rows"
                    .formatted(name(), columns, columns, record("r.before"), REMOVED)).executeUpdate();
        }
    }

    /** Columns that the removal changed get their value again, unless somebody changed them since. */
    void relink() {
        if (is("select exists (select 1 from bin_row r where r.entry_id = :entry and r.table_name = :table and r.before is not null and r.after is not null)")) {
            table.columns().stream().filter(c -> !table.key().contains(c.name())).forEach(this::relink);
        }
    }

    private void relink(Column column) {
        String c = quoted(column.name());
        // A counter of saves never goes back, or an old form would pass for a fresh one.
        String value = column.name().equals("version") ? "t.version + 1" : "b." + c;
        String unchanged = "coalesce(to_jsonb(t.%s), 'null') = u.after".formatted(c);
        on("update %s t set %s = %s from %s, %s b where %s and %s".formatted(name(), c, value, changed(), record("u.before"), sameKey(), unchanged))
                .setParameter("column", column.name()).executeUpdate();
        on("""
                update bin_row d set before = jsonb_set(d.before, array[cast(:column as text)], u.before -> :column) from %s
                where d.entry_id <> :entry and d.table_name = :table and d.after is null and %s and d.before -> :column = u.after"""
                .formatted(changed(), sameKey("d.before", "u.before"))).setParameter("column", column.name()).executeUpdate();
    }

    /** For each row whose column the removal changed: the row as it was first, and the column's last value. */
    private static String changed() {
        return """
                (select (array_agg(r.before order by r.id))[1] as before, (array_agg(r.after -> :column order by r.id desc))[1] as after
                from bin_row r where r.entry_id = :entry and r.table_name = :table and r.before is not null and r.after is not null
                    and r.before -> :column is distinct from r.after -> :column
                group by (select jsonb_object_agg(k.key, k.value) from jsonb_each(r.before) k where k.key = any (cast(:keys as text[])))) u""";
    }

    /** What the removal wrote, such as that a reservation was released, is true no more. */
    void takeOutWritten() {
        String written = " r.entry_id = :entry and r.table_name = :table and r.before is null ";
        on("delete from %s t using bin_row r, %s b where %s and %s".formatted(name(), record("r.after"), written, sameKey())).executeUpdate();
        on("delete from bin_row d using bin_row r where d.table_name = :table and d.after is null and %s and %s"
                .formatted(written, sameKey("d.before", "r.after"))).executeUpdate();
    }

    String name() {
        return quoted(table.name());
    }

    /** A row in the bin, read as one of the table. */
    String record(String json) {
        return "jsonb_populate_record(cast(null as %s), %s)".formatted(name(), json);
    }

    private String sameKey() {
        return table.key().stream().map(k -> "t.%s = b.%s".formatted(quoted(k), quoted(k))).collect(Collectors.joining(" and "));
    }

    private String sameKey(String one, String other) {
        return table.key().stream().map(k -> "%s -> '%s' = %s -> '%s'".formatted(one, k, other, k)).collect(Collectors.joining(" and "));
    }

    private boolean is(String sql) {
        return (Boolean) on(sql, Boolean.class).getSingleResult();
    }

    private Query on(String sql) {
        return bound(database.createNativeQuery(sql), sql);
    }

    private Query on(String sql, Class<?> type) {
        return bound(database.createNativeQuery(sql, type), sql);
    }

    private Query bound(Query query, String sql) {
        query.setParameter("table", table.name());
        if (sql.contains(":keys")) {
            query.setParameter("keys", "{" + String.join(",", table.key()) + "}");
        }
        return query.setParameter("entry", entry);
    }

    static String quoted(String name) {
        return '"' + name + '"';
    }
}
