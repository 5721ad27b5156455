package benchful.backups.tables;

import benchful.backups.archive.Archive;
import benchful.backups.archive.BackupFault;
import benchful.backups.archive.Manifest.Part;
import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import java.io.IOException;
import java.io.InputStream;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.postgresql.PGConnection;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;

/** Fills the empty tables of a schema from an archive. The database checks each cell's type and every rule of its tables. */
final class Loader {
    private static final int FILES_AT_ONCE = 50;

    private final Archive archive;
    private final Snapshot target;

    Loader(Archive archive, Snapshot target) {
        this.archive = archive;
        this.target = target;
    }

    void load() throws SQLException {
        requireSameTables();
        for (Table table : target.tables()) {
            Part part = part(table);
            requireSameColumns(table, part);
            try {
                load(table, part);
            } catch (PSQLException e) {
                if (isContent(e)) {
                    throw refused(part, e);
                }
                throw e;
            }
        }
    }

    private Part part(Table table) {
        return archive.manifest().tables().stream().filter(p -> p.table().equals(table.name())).findFirst().orElseThrow();
    }

    private void requireSameTables() {
        Set<String> here = target.tables().stream().map(Table::name).collect(Collectors.toSet());
        List<String> there = archive.manifest().tables().stream().map(Part::table).toList();
        if (there.size() != here.size() || !here.equals(Set.copyOf(new HashSet<>(there)))) {
            throw new BackupFault("The tables in the archive are not those of the version that it says it is from. Take another backup.");
        }
    }

    private static void requireSameColumns(Table table, Part part) {
        boolean same = part.columns().size() == table.columns().size() && Set.copyOf(table.columnNames()).equals(new HashSet<>(part.columns()));
        boolean apart = table.columns().stream().filter(c -> part.apart().contains(c.name())).allMatch(c -> Set.of("jsonb", "bytea").contains(c.type()));
        if (!same || !apart) {
            throw new BackupFault("The columns of “%s” in the archive are not those of the version that it says it is from. Take another backup.".formatted(part.file()));
        }
    }

    private void load(Table table, Part part) throws SQLException {
        try (Statement statement = target.connection().createStatement()) {
            statement.execute("create temporary table incoming as select %s from %s limit 0".formatted(cells(table, part, "null::text as %1$s"), target.name(table)));
            statement.execute("create temporary table apart (path text primary key, content bytea)");
            copy(part);
            for (String column : part.apart()) {
                addFiles(column);
            }
            statement.execute("insert into %s (%s) overriding system value select %s from pg_temp.incoming i".formatted(
                    target.name(table), cells(table, part, "%1$s"), sources(table, part)));
            statement.execute("drop table pg_temp.incoming, pg_temp.apart");
        }
    }

    private static String cells(Table table, Part part, String apart) {
        return table.columnNames().stream()
                .map(c -> (part.apart().contains(c) ? apart : "%1$s").formatted(Snapshot.quoted(c))).collect(Collectors.joining(", "));
    }

    private static String sources(Table table, Part part) {
        return table.columns().stream().map(c -> part.apart().contains(c.name()) ? content(c) : "i." + Snapshot.quoted(c.name())).collect(Collectors.joining(", "));
    }

    private static String content(Column column) {
        String content = "(select a.content from pg_temp.apart a where a.path = i.%s)".formatted(Snapshot.quoted(column.name()));
        return column.type().equals("jsonb") ? "convert_from(%s, 'UTF8')::jsonb".formatted(content) : content;
    }

    private void copy(Part part) throws SQLException {
        String columns = part.columns().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
        try (InputStream in = archive.file(part.file())) {
            target.connection().unwrap(PGConnection.class).getCopyAPI()
                    .copyIn("copy pg_temp.incoming (%s) from stdin (format csv, header true)".formatted(columns), in);
        } catch (IOException e) {
            throw BackupFault.damaged(e);
        }
    }

    private void addFiles(String column) throws SQLException {
        List<String> paths = paths(column);
        try (PreparedStatement insert = target.connection().prepareStatement("insert into pg_temp.apart values (?, ?) on conflict do nothing")) {
            for (int i = 0; i < paths.size(); i++) {
                insert.setString(1, paths.get(i));
                insert.setBytes(2, archive.bytes(paths.get(i)));
                insert.addBatch();
                if (i % FILES_AT_ONCE == FILES_AT_ONCE - 1 || i == paths.size() - 1) {
                    insert.executeBatch();
                }
            }
        }
    }

    private List<String> paths(String column) throws SQLException {
        List<String> paths = new ArrayList<>();
        String name = Snapshot.quoted(column);
        try (Statement statement = target.connection().createStatement();
                ResultSet rows = statement.executeQuery("select distinct %s from pg_temp.incoming where %s is not null".formatted(name, name))) {
            while (rows.next()) {
                paths.add(rows.getString(1));
            }
        }
        return paths;
    }

    /** Classes of errors of the PostgreSQL manual, appendix A: data exceptions, and rules of the tables. */
    private static boolean isContent(PSQLException e) {
        return e.getSQLState() != null && (e.getSQLState().startsWith("22") || e.getSQLState().startsWith("23"));
    }

    /** The database says which line and which rule; its own words are for its operators. */
    private static BackupFault refused(Part part, PSQLException e) {
        ServerErrorMessage message = e.getServerErrorMessage();
        String where = message == null || message.getWhere() == null ? "" : message.getWhere().replaceAll("(?s)^COPY incoming, (line \\d+(, column \\w+)?).*", ", $1");
        String rule = message == null || message.getConstraint() == null ? "" : " (rule “%s”)".formatted(message.getConstraint());
        boolean placed = where.startsWith(", line");
        return new BackupFault("The file “%s” in the archive%s does not hold what such a table can hold%s. Nothing was put back; take another backup."
                .formatted(part.file(), placed ? where : "", rule), e);
    }
}
