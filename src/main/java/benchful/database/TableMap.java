package benchful.database;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The tables of a schema as the database itself describes them, each after those that its foreign keys name: rows can be stored
 * in this order and removed in the opposite one. So whoever works on all tables meets a new one without being told of it. Left
 * out is what belongs to the running program and not to what was entered: the migrations done, what forms are signed with, and
 * which were sent.
 */
public record TableMap(List<Table> tables) {
    private static final String COLUMNS = """
            select c.relname, a.attname, format_type(a.atttypid, a.atttypmod), a.attidentity <> '', a.attnotnull,
                a.attnum = any (coalesce((select i.indkey::int2[] from pg_index i where i.indrelid = c.oid and i.indisprimary), '{}'::int2[]))
            from pg_class c join pg_attribute a on a.attrelid = c.oid
            where c.relnamespace = ?::regnamespace and c.relkind in ('r', 'p') and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
                and c.relname not in ('flyway_schema_history', 'form_secret', 'sent_form')
            order by c.relname, a.attnum""";

    private static final String LINKS = """
            select c.relname, t.relname,
                (select string_agg(a.attname, ',' order by k.at) from unnest(con.conkey) with ordinality k (num, at)
                    join pg_attribute a on a.attrelid = con.conrelid and a.attnum = k.num),
                (select string_agg(a.attname, ',' order by k.at) from unnest(con.confkey) with ordinality k (num, at)
                    join pg_attribute a on a.attrelid = con.confrelid and a.attnum = k.num)
            from pg_constraint con join pg_class c on c.oid = con.conrelid join pg_class t on t.oid = con.confrelid
            where con.contype = 'f' and c.relnamespace = ?::regnamespace
            order by c.relname, con.conname""";

    public TableMap {
        tables = List.copyOf(tables);
    }

    /**
     * A table.
     *
     * @param columns in their order, without those that the database computes
     * @param links its foreign keys
     */
    public record Table(String name, List<Column> columns, List<Link> links) {
        public Table {
            columns = List.copyOf(columns);
            links = List.copyOf(links);
        }

        public List<String> columnNames() {
            return columns.stream().map(Column::name).toList();
        }

        /** The columns of its primary key; all columns where it has none. */
        public List<String> key() {
            List<String> key = columns.stream().filter(Column::inKey).map(Column::name).toList();
            return key.isEmpty() ? columnNames() : key;
        }

        /** The column whose numbers the database hands out. */
        public Optional<String> numbered() {
            return columns.stream().filter(Column::numbered).map(Column::name).findFirst();
        }

        private Set<String> others() {
            return links.stream().map(Link::target).filter(t -> !t.equals(name)).collect(Collectors.toSet());
        }
    }

    /**
     * A column.
     *
     * @param type as the database writes it, such as {@code timestamp with time zone}
     * @param numbered true where the database hands out its numbers
     * @param required true where it may not be empty
     * @param inKey true where it is a part of the primary key
     */
    public record Column(String name, String type, boolean numbered, boolean required, boolean inKey) {}

    /** A foreign key: these columns name a row of the target by those. */
    public record Link(List<String> columns, String target, List<String> targetColumns) {
        public Link {
            columns = List.copyOf(columns);
            targetColumns = List.copyOf(targetColumns);
        }
    }

    /** Reads the map of a schema; Flyway's own table is left out. */
    public static TableMap of(Connection connection, String schema) throws SQLException {
        Map<String, List<Column>> columns = columns(connection, schema);
        Map<String, List<Link>> links = links(connection, schema);
        return new TableMap(ordered(columns.entrySet().stream()
                .map(e -> new Table(e.getKey(), e.getValue(), links.getOrDefault(e.getKey(), List.of()))).toList()));
    }

    private static Map<String, List<Column>> columns(Connection connection, String schema) throws SQLException {
        Map<String, List<Column>> columns = new LinkedHashMap<>();
        try (PreparedStatement query = asked(connection, COLUMNS, schema); ResultSet rows = query.executeQuery()) {
            while (rows.next()) {
                columns.computeIfAbsent(rows.getString(1), t -> new ArrayList<>())
                        .add(new Column(rows.getString(2), rows.getString(3), rows.getBoolean(4), rows.getBoolean(5), rows.getBoolean(6)));
            }
        }
        return columns;
    }

    private static Map<String, List<Link>> links(Connection connection, String schema) throws SQLException {
        Map<String, List<Link>> links = new LinkedHashMap<>();
        try (PreparedStatement query = asked(connection, LINKS, schema); ResultSet rows = query.executeQuery()) {
            while (rows.next()) {
                links.computeIfAbsent(rows.getString(1), t -> new ArrayList<>())
                        .add(new Link(List.of(rows.getString(3).split(",")), rows.getString(2), List.of(rows.getString(4).split(","))));
            }
        }
        return links;
    }

    private static PreparedStatement asked(Connection connection, String sql, String schema) throws SQLException {
        PreparedStatement query = connection.prepareStatement(sql);
        query.setString(1, schema);
        return query;
    }

    private static List<Table> ordered(List<Table> all) {
        Map<String, Table> placed = new LinkedHashMap<>();
        List<Table> waiting = new ArrayList<>(all);
        while (!waiting.isEmpty()) {
            List<Table> next = waiting.stream().filter(t -> placed.keySet().containsAll(t.others())).toList();
            if (next.isEmpty()) {
                throw new IllegalStateException("Foreign keys go round in a circle among " + waiting.stream().map(Table::name).toList());
            }
            next.forEach(t -> placed.put(t.name(), t));
            waiting.removeAll(next);
        }
        return List.copyOf(placed.values());
    }
}
