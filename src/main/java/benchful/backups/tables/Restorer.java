package benchful.backups.tables;

import benchful.backups.archive.Archive;
import benchful.backups.archive.BackupFault;
import benchful.backups.archive.Manifest.Part;
import benchful.backups.tables.AdvisoryLock.Purpose;
import benchful.database.TableMap.Table;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts a backup back, all of it or nothing. The archive is checked file by file; its tables are filled in a schema of their own, of
 * the version that the backup is from, and compared with it; they are brought to the version of today; then, in one transaction that
 * nobody can write between, what is stored is kept as a backup, replaced, and compared once more. Until that transaction ends, pages
 * show what was stored before.
 */
@ApplicationScoped
public class Restorer {
    private static final String SCHEMA = "benchful_restoring";
    /** Lock not available, deadlock; see the PostgreSQL manual, appendix A. */
    private static final Set<String> BUSY = Set.of("55P03", "40P01");
    private static final String DISK_FULL = "53100";

    private final AgroalDataSource database;
    private final Migrations migrations;
    private final RestoreWatch watch;

    Restorer(AgroalDataSource database, Migrations migrations, RestoreWatch watch) {
        this.database = database;
        this.migrations = migrations;
        this.watch = watch;
    }

    /** @param keepWhatIsThere takes a backup of what is about to be replaced, while nobody can write */
    public void restore(Archive archive, Runnable keepWhatIsThere) {
        migrations.requireKnown(archive.manifest().migrations());
        archive.verify();
        try {
            Optional<AdvisoryLock> lock = AdvisoryLock.take(database, Purpose.RESTORE);
            if (lock.isEmpty()) {
                throw new BackupFault("A backup is being put back already. Wait until that is done.");
            }
            try (AdvisoryLock held = lock.get()) {
                watch.forget();
                alone(archive, keepWhatIsThere);
            }
        } catch (SQLException e) {
            throw fault(e);
        } finally {
            watch.forget();
        }
    }

    private void alone(Archive archive, Runnable keepWhatIsThere) throws SQLException {
        try {
            prepare(archive);
            replace(keepWhatIsThere);
        } finally {
            drop();
        }
    }

    private void prepare(Archive archive) throws SQLException {
        drop();
        migrations.build(SCHEMA, archive.manifest().migrations());
        inTransaction(connection -> {
            Snapshot beside = Snapshot.within(connection, SCHEMA);
            empty(beside);
            new Loader(archive, beside).load();
            for (Part part : archive.manifest().tables()) {
                Table table = beside.table(part.table()).orElseThrow();
                number(beside, table, part.next());
                requireEqual(part.sha256(), beside, table);
            }
        });
        migrations.bringUpToDate(SCHEMA);
    }

    private void replace(Runnable keepWhatIsThere) throws SQLException {
        inTransaction(connection -> {
            Snapshot stored = Snapshot.within(connection, connection.getSchema());
            Snapshot beside = Snapshot.within(connection, SCHEMA);
            closeForWriting(stored);
            keepWhatIsThere.run();
            empty(stored);
            for (Table table : stored.tables()) {
                Table source = beside.table(table.name()).orElseThrow();
                String columns = table.columnNames().stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
                run(connection, "insert into %s (%s) overriding system value select %s from %s".formatted(stored.name(table), columns, columns, beside.name(source)));
                number(stored, table, beside.next(source));
                requireEqual(beside.sha256(source), stored, table);
            }
        });
    }

    /** Readers go on; writers wait, as do we for those who write just now. */
    private static void closeForWriting(Snapshot stored) throws SQLException {
        run(stored.connection(), "set local lock_timeout = '30s'");
        run(stored.connection(), "lock table %s in exclusive mode".formatted(stored.tables().stream().map(stored::name).collect(Collectors.joining(", "))));
    }

    private static void empty(Snapshot snapshot) throws SQLException {
        List<Table> lastFirst = new ArrayList<>(snapshot.tables());
        Collections.reverse(lastFirst);
        for (Table table : lastFirst) {
            run(snapshot.connection(), "delete from " + snapshot.name(table));
        }
    }

    private static void number(Snapshot snapshot, Table table, Long next) throws SQLException {
        Optional<String> sequence = snapshot.sequence(table);
        if (sequence.isPresent() && next != null) {
            run(snapshot.connection(), "alter sequence %s restart with %d".formatted(sequence.get(), next));
        }
    }

    private static void requireEqual(String sha256, Snapshot snapshot, Table table) throws SQLException {
        if (!snapshot.sha256(table).equals(sha256)) {
            throw new BackupFault("What was put back of “%s” was not equal to the backup, so nothing was changed. Take another backup.".formatted(Layout.words(table.name())));
        }
    }

    private void drop() throws SQLException {
        inTransaction(connection -> run(connection, "drop schema if exists " + SCHEMA + " cascade"));
    }

    private interface Work {
        void on(Connection connection) throws SQLException;
    }

    private void inTransaction(Work work) throws SQLException {
        try (Connection connection = database.getConnection()) {
            connection.setAutoCommit(false);
            try {
                work.on(connection);
                connection.commit();
            } finally {
                connection.rollback();
            }
        }
    }

    private static void run(Connection connection, String command) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(command);
        }
    }

    private static RuntimeException fault(SQLException e) {
        if (BUSY.contains(e.getSQLState())) {
            return new BackupFault("Somebody is saving at this moment, so nothing was put back yet. Try again in a minute.", e);
        }
        if (DISK_FULL.equals(e.getSQLState())) {
            return new BackupFault("The disk of the database is full, so nothing was put back. Make room on it and try again.", e);
        }
        return new IllegalStateException("The database failed while a backup was put back; nothing was changed", e);
    }
}
