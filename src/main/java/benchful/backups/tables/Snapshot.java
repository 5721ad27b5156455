package benchful.backups.tables;

import benchful.backups.archive.Archive;
import benchful.database.TableMap;
import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.postgresql.PGConnection;

/**
 * What a schema holds, read within one transaction, so that all tables are of the same moment however much is written
 * meanwhile. Rows come in the order of their keys and in one notation: equal contents are equal bytes.
 */
public final class Snapshot {
    /** What tells about this machine and not about the work is neither carried nor replaced. */
    private static final Set<String> OF_THIS_MACHINE = Set.of("backup", "backup_schedule");

    private static final String MOMENT = "set transaction isolation level repeatable read, read only";
    private static final List<String> NOTATION = List.of(
            "set local timezone = 'UTC'", "set local datestyle = 'ISO'", "set local intervalstyle = 'iso_8601'",
            "set local bytea_output = 'hex'", "set local extra_float_digits = 1");

    private final Connection connection;
    private final String schema;
    private final List<Table> tables;

    private Snapshot(Connection connection, String schema) throws SQLException {
        this.connection = connection;
        this.schema = schema;
        this.tables = TableMap.of(connection, schema).tables().stream().filter(t -> !OF_THIS_MACHINE.contains(t.name())).toList();
    }

    /** Fixes the moment: begins a transaction that only reads, which the caller ends. */
    public static Snapshot taken(Connection connection, String schema) throws SQLException {
        connection.setAutoCommit(false);
        run(connection, List.of(MOMENT));
        return within(connection, schema);
    }

    /** What the caller's transaction sees. */
    static Snapshot within(Connection connection, String schema) throws SQLException {
        run(connection, NOTATION);
        return new Snapshot(connection, schema);
    }

    private static void run(Connection connection, List<String> commands) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String command : commands) {
                statement.execute(command);
            }
        }
    }

    /** Each after those that its foreign keys name. */
    public List<Table> tables() {
        return tables;
    }

    Optional<Table> table(String name) {
        return tables.stream().filter(t -> t.name().equals(name)).findFirst();
    }

    Connection connection() {
        return connection;
    }

    String name(Table table) {
        return quoted(schema) + "." + quoted(table.name());
    }

    /**
     * Writes a table's rows as CSV under its columns' names.
     *
     * @param cells SQL for each column
     * @return how many rows
     */
    long write(Table table, List<String> cells, OutputStream out) throws SQLException {
        String order = table.key().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
        String rows = "select %s from %s order by %s".formatted(String.join(", ", cells), name(table), order);
        try {
            return connection.unwrap(PGConnection.class).getCopyAPI().copyOut("copy (%s) to stdout (format csv, header true)".formatted(rows), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A fingerprint of all that a table holds; two tables with the same columns have the same one only where they are equal. */
    public String sha256(Table table) throws SQLException {
        MessageDigest digest = Archive.sha256();
        write(table, table.columns().stream().map(Column::name).sorted().map(Snapshot::quoted).toList(),
                new DigestOutputStream(OutputStream.nullOutputStream(), digest));
        return Archive.hex(digest);
    }

    public long rows(Table table) throws SQLException {
        return number("select count(*) from " + name(table));
    }

    /** The number that its next row gets; null where the database numbers none. */
    public Long next(Table table) throws SQLException {
        Optional<String> sequence = sequence(table);
        return sequence.isEmpty() ? null : Long.valueOf(number("select last_value + is_called::int from " + sequence.get()));
    }

    /** The quoted name of the sequence behind the numbered column. */
    Optional<String> sequence(Table table) throws SQLException {
        if (table.numbered().isEmpty()) {
            return Optional.empty();
        }
        try (var query = connection.prepareStatement("select pg_get_serial_sequence(?, ?)")) {
            query.setString(1, name(table));
            query.setString(2, table.numbered().get());
            try (ResultSet row = query.executeQuery()) {
                row.next();
                return Optional.ofNullable(row.getString(1));
            }
        }
    }

    private long number(String sql) throws SQLException {
        try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
        }
    }

    static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
