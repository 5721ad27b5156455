package benchful.backups.tables;

import benchful.backups.archive.ArchiveWriter;
import benchful.backups.archive.Manifest;
import benchful.backups.archive.Manifest.Part;
import benchful.database.TableMap.Column;
import benchful.database.TableMap.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Packs a snapshot: one CSV file for each table, its sheets and pictures as files of their own, a README.txt that says what is
 * what, and the manifest.
 */
public final class BackupWriter {
    private static final int ROWS_AT_ONCE = 20;

    private final Snapshot snapshot;
    private final ArchiveWriter archive;

    private BackupWriter(Snapshot snapshot, ArchiveWriter archive) {
        this.snapshot = snapshot;
        this.archive = archive;
    }

    /**
     * @param migrations the versions of the schema
     * @param out stays open
     */
    public static Manifest write(Snapshot snapshot, List<String> migrations, Instant moment, OutputStream out) throws SQLException {
        ArchiveWriter archive = new ArchiveWriter(out, moment);
        archive.add("README.txt", readme -> readme.write(readme(snapshot).getBytes(StandardCharsets.UTF_8)));
        List<Part> parts = new ArrayList<>();
        BackupWriter writer = new BackupWriter(snapshot, archive);
        for (Table table : snapshot.tables()) {
            parts.add(writer.part(table));
        }
        Manifest manifest = new Manifest(Manifest.FORMAT, moment.toString(), migrations, parts, archive.items());
        archive.finish(manifest);
        return manifest;
    }

    private Part part(Table table) throws SQLException {
        List<Layout> apart = table.columns().stream().flatMap(c -> Layout.of(table, c).stream()).toList();
        String file = "tables/" + table.name() + ".csv";
        long[] rows = new long[1];
        archive.add(file, out -> rows[0] = snapshot.write(table, table.columns().stream().map(c -> cell(table, c)).toList(), out));
        for (Layout layout : apart) {
            addFiles(table, layout);
        }
        return new Part(table.name(), file, table.columnNames(), apart.stream().map(Layout::column).toList(), rows[0], snapshot.next(table), snapshot.sha256(table));
    }

    private static String cell(Table table, Column column) {
        String name = Snapshot.quoted(column.name());
        return Layout.of(table, column).map(l -> l.path() + " as " + name).orElse(name);
    }

    private void addFiles(Table table, Layout layout) throws SQLException {
        String sql = "select %s, %s from %s where %s is not null order by id".formatted(layout.path(), layout.content(), snapshot.name(table), layout.column());
        try (Statement statement = snapshot.connection().createStatement()) {
            statement.setFetchSize(ROWS_AT_ONCE);
            try (ResultSet rows = statement.executeQuery(sql)) {
                while (rows.next()) {
                    byte[] content = rows.getBytes(2);
                    archive.add(rows.getString(1), out -> out.write(content));
                }
            }
        }
    }

    private static String readme(Snapshot snapshot) {
        String tables = snapshot.tables().stream()
                .map(t -> "  tables/%-24s %s".formatted(t.name() + ".csv", Layout.words(t.name())))
                .sorted().collect(Collectors.joining("\n"));
        try (InputStream in = BackupWriter.class.getResourceAsStream("/backups/README.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).formatted(tables);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
