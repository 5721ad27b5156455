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
    private static final List<String> THEN = List.of("002", "003", "004", "005", "006", "007", "008", "010", "011", "012", "014");

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
        stored.nothing();
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

    /** What was counted by area and sold in sheets is counted in sheets, and a colour that was a word is a variant. */
    @Test
    void countsInSheetsAndByVariantWhatWasNotCountedSoThen() throws Exception {
        migrations.build("old", THEN);
        stored.execute(
                "insert into old.supplier (id, version, name, currency, lead_days, sample) values (7, 2, 'Ninepin', 'GBP', 3, false)",
                "insert into old.material (id, version, name, unit, unit_mass, hazards, sample) values (9, 1, 'Silk', 'm', null, '{}', false), (10, 1, 'Leather', 'cm2', '0.12 g', '{}', false),"
                        + " (11, 1, 'Odd', 'cm2', 'a pinch', '{}', false)",
                "insert into old.offer (material_id, supplier_id, position, holds, price, priced_on, sheet_length, sheet_width) values (10, 7, 0, '600 cm2', 9.90, '2026-01-01', '300 mm', '20 cm'),"
                        + " (10, 7, 1, '1000 cm2', 12, '2026-01-01', '300 mm', '200 mm'), (11, 7, 0, 'some', 1, '2026-01-01', 'long', 'wide')",
                "insert into old.project (id, version, name, craft, level, archived, sample, updated_at, sheet) values (5, 1, 'Plait', 'cord', 'BEGINNER', false, false, now(),"
                        + " '{\"name\": \"Plait\", \"materials\": [{\"material\": \"Silk\", \"amount\": \"1 m\", \"choice\": \"colour\"},"
                        + " {\"material\": \"Leather\", \"amount\": \"1 cm2\", \"choice\": \"kind\", \"alternatives\": [\"Odd\"]}]}')",
                "insert into old.craft_class (project_id, starts_at, ends_at, setup) values (5, '2027-03-06 10:00', '2027-03-06 12:00',"
                        + " '{\"choices\": {\"Silk\": \"ivory\", \"Leather\": \"Odd\"}, \"students\": [{\"name\": \"Ann\", \"choices\": {\"Silk\": \"sea green\"}}, {\"name\": \"Ben\"}]}')");
        write();

        restores.restore(NAME, null);

        assertThat(text("select unit || '; ' || unit_mass from material where id = 10")).isEqualTo("sheet 300 mm x 20 cm; 72 g");
        assertThat(text("select string_agg(holds, '; ' order by position) from offer where material_id = 10")).as("a pack of no whole number of sheets stays as it is")
                .isEqualTo("1 sheets 300 mm x 20 cm; 1000 cm2");
        assertThat(text("select unit || '; ' || unit_mass from material where id = 11")).as("what can't be read stays as it is").isEqualTo("cm2; a pinch");
        assertThat(text("select string_agg(name || ' of ' || variant_of || ' in ' || unit, '; ' order by name) from material where variant_of is not null"))
                .isEqualTo("Silk, ivory of 9 in m; Silk, sea green of 9 in m");
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
