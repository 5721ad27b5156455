package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.backups.tables.BackupWriter;
import benchful.backups.tables.Migrations;
import benchful.backups.tables.Snapshot;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A backup of an earlier version, made with tables as they were then, comes back with everything that has changed since. */
@QuarkusTest
class OldBackupsTest {
    private static final String NAME = "benchful-old.zip";
    private static final List<String> THEN = List.of("002", "003", "004", "005", "006", "007", "008", "010", "011", "012");

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @Inject
    Restores restores;

    @Inject
    Migrations migrations;

    @Inject
    AgroalDataSource database;

    @BeforeEach
    void begin() throws SQLException {
        stored.nothing();
        stored.execute("drop schema if exists old cascade");
    }

    @AfterEach
    void tidy() throws Exception {
        stored.execute("drop schema if exists old cascade");
        Files.deleteIfExists(backups.folder().path().resolve(NAME));
    }

    @Test
    void putsBackABackupOfAnEarlierVersion() throws Exception {
        migrations.build("old", THEN);
        stored.execute(
                "insert into old.supplier (id, version, name, currency, lead_days, sample) values (7, 2, 'Ninepin', 'GBP', 3, false)",
                "insert into old.material (id, version, name, unit, hazards, sample) values (9, 1, 'Thread', 'm', '{}', false)",
                "insert into old.project (id, version, name, craft, level, archived, sample, updated_at, sheet) values (5, 1, 'Plait', 'cord', 'BEGINNER', false, false, now(), '{\"name\": \"Plait\"}')",
                "insert into old.kit_batch (version, project_id, sheet) values (4, 5, '{\"kits\": 6}')",
                "insert into old.stock_movement (material_id, kind, amount, happened_at, class_id) values (9, 'COUNTED', 12.50, now(), 999)",
                "alter sequence old.project_id_seq restart with 40");
        write();

        restores.restore(NAME, null);

        assertThat(text("select name || ' ' || weekdays from supplier where id = 7")).isEqualTo("Ninepin false");
        assertThat(text("select sheet ->> 'kits' || ' ' || packed from kit_batch")).isEqualTo("6 {}");
        assertThat(text("select amount || ' ' || coalesce(class_id::text, 'for no class') from stock_movement")).as("a later migration puts this right").isEqualTo("12.50 for no class");
        assertThat(stored.everything().get("project")).startsWith("1 rows, next 40");
        assertThat(text("select count(*) from information_schema.schemata where schema_name like 'benchful_%'")).isEqualTo("0");
    }

    private void write() throws Exception {
        Path file = backups.folder().path().resolve(NAME);
        try (Connection connection = database.getConnection(); OutputStream out = Files.newOutputStream(file)) {
            BackupWriter.write(Snapshot.taken(connection, "old"), THEN, Instant.parse("2026-03-01T09:00:00Z"), out);
            connection.rollback();
        }
    }

    private String text(String query) throws SQLException {
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(query)) {
            assertThat(row.next()).as(query).isTrue();
            return row.getString(1);
        }
    }
}
