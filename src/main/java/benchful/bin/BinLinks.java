package benchful.bin;

import benchful.database.TableMap.Column;
import benchful.database.TableMap.Link;
import benchful.database.TableMap.Table;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What the rows of an entry of the bin refer to, where that was removed too. A row that can be without it comes back without it and
 * is linked again when that comes back; a row that does nothing but link the two waits for the other one.
 */
final class BinLinks {
    /** Rows of the entry whose link leads nowhere, now and once the entry is back. */
    private static final String LOST = """
            r.entry_id = :entry and r.table_name = '%1$s' and r.after is null and r.before -> '%2$s' <> 'null'
            and not exists (select 1 from "%3$s" x where to_jsonb(x."%4$s") = r.before -> '%2$s')
            and not exists (select 1 from bin_row o where o.entry_id = r.entry_id and o.table_name = '%3$s' and o.after is null
                and o.before -> '%4$s' = r.before -> '%2$s')""";

    /** The entry that holds what is linked to. */
    private static final String HOLDER = """
            (select min(h.entry_id) from bin_row h where h.table_name = '%3$s' and h.after is null and h.before -> '%4$s' = r.before -> '%2$s')""";

    private final EntityManager database;
    private final long entry;
    private final List<BinTable> held;

    BinLinks(EntityManager database, long entry, List<BinTable> held) {
        this.database = database;
        this.entry = entry;
        this.held = held;
    }

    /** Lets everything wait for the other entry, or go, that can. */
    void handOver() {
        held.forEach(t -> t.table().links().forEach(link -> handOver(t.table(), link)));
    }

    private void handOver(Table table, Link link) {
        if (isMereLink(table)) {
            with("update bin_row r set entry_id = " + HOLDER + " where " + LOST + " and exists " + HOLDER.replace("min(h.entry_id)", "1"), table, link).executeUpdate();
            with("delete from bin_row r where " + LOST, table, link).executeUpdate();
        } else if (!column(table, link).required()) {
            String without = "jsonb_set(r.before, '{%2$s}', 'null')";
            with("insert into bin_row (entry_id, table_name, before, after) select " + HOLDER + ", r.table_name, r.before, " + without
                    + " from bin_row r where " + LOST + " and exists " + HOLDER.replace("min(h.entry_id)", "1"), table, link).executeUpdate();
            with("update bin_row r set before = " + without + " where " + LOST, table, link).executeUpdate();
        }
    }

    /** True where something is missing that a row can't be without. */
    boolean isMissing() {
        return lost().anyMatch(sql -> !query("select 1 from bin_row r where " + sql[0]).setMaxResults(1).getResultList().isEmpty());
    }

    /** The entries that hold what is missing. */
    @SuppressWarnings("unchecked")
    List<Long> holders() {
        return lost().flatMap(sql -> query("select distinct " + sql[1] + " from bin_row r where " + sql[0], Long.class).getResultList().stream())
                .filter(Objects::nonNull).map(Long.class::cast).toList();
    }

    private Stream<String[]> lost() {
        return held.stream().flatMap(t -> t.table().links().stream().map(l -> new String[] {sql(LOST, t.table(), l), sql(HOLDER, t.table(), l)}));
    }

    /** True where a row says no more than that two things belong together. */
    private static boolean isMereLink(Table table) {
        return table.columns().stream().allMatch(c -> table.links().stream().anyMatch(l -> l.columns().contains(c.name())));
    }

    private static Column column(Table table, Link link) {
        return table.columns().stream().filter(c -> c.name().equals(link.columns().get(0))).findFirst().orElseThrow();
    }

    private Query with(String sql, Table table, Link link) {
        return query(sql(sql, table, link));
    }

    private static String sql(String sql, Table table, Link link) {
        return sql.formatted(table.name(), link.columns().get(0), link.target(), link.targetColumns().get(0));
    }

    private Query query(String sql) {
        Query query = database.createNativeQuery(sql);
        return sql.contains(":entry") ? query.setParameter("entry", entry) : query;
    }

    private Query query(String sql, Class<?> type) {
        return database.createNativeQuery(sql, type).setParameter("entry", entry);
    }
}
