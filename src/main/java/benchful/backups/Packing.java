package benchful.backups;

import benchful.backups.archive.Seal;
import benchful.backups.tables.BackupWriter;
import benchful.backups.tables.Migrations;
import benchful.backups.tables.Snapshot;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Writes all that is stored at this moment into a stream, locked where a passphrase is set. */
@ApplicationScoped
class Packing implements BackupFolder.Content {
    private static final String ENDING = ".zip";
    static final String LOCKED = ".gpg";

    private final AgroalDataSource database;
    private final Migrations migrations;
    private final Passphrase passphrase;
    private final Clock clock;

    Packing(AgroalDataSource database, Migrations migrations, Passphrase passphrase, Clock clock) {
        this.database = database;
        this.migrations = migrations;
        this.passphrase = passphrase;
        this.clock = clock;
    }

    String ending() {
        return passphrase.current().isPresent() ? ENDING + LOCKED : ENDING;
    }

    @Override
    public void write(OutputStream out) throws IOException {
        Optional<String> secret = passphrase.current();
        if (secret.isPresent()) {
            Seal.lock(secret.get(), "benchful.zip", out, this::pack);
        } else {
            pack(out);
        }
    }

    private void pack(OutputStream out) {
        read(snapshot -> BackupWriter.write(snapshot, migrations.applied(), clock.instant(), out));
    }

    /** How many rows each table holds now. */
    Map<String, Long> rows() {
        return read(snapshot -> {
            Map<String, Long> rows = new LinkedHashMap<>();
            for (var table : snapshot.tables()) {
                rows.put(table.name(), snapshot.rows(table));
            }
            return rows;
        });
    }

    private interface Reading<R> {
        R of(Snapshot snapshot) throws SQLException;
    }

    private <R> R read(Reading<R> reading) {
        try (Connection connection = database.getConnection()) {
            String schema = connection.getSchema();
            try {
                return reading.of(Snapshot.taken(connection, schema));
            } finally {
                connection.rollback();
            }
        } catch (SQLException e) {
            if (e.getCause() instanceof IOException disk) {
                throw new UncheckedIOException(disk);
            }
            throw new IllegalStateException("The database failed while a backup was taken", e);
        }
    }
}
