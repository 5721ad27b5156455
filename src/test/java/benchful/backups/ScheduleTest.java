package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups that nobody presses for. */
@QuarkusTest
class ScheduleTest {
    @TestHTTPResource
    URL address;

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws SQLException {
        stored.fill(address);
        chosen(folder, 1, 2);
    }

    @Test
    void takesOneADayAndOneThatWasMissed() throws SQLException, IOException {
        backups.takeIfDue();
        backups.takeIfDue();
        assertThat(files()).hasSize(1);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(files().get(0))))).isEqualTo("rw-------");
        daysPass(3);
        backups.takeIfDue();
        assertThat(files()).hasSize(2);
    }

    @Test
    void keepsSoManyOfItsOwnAndRemovesNothingElse() throws SQLException, IOException {
        String pressed = backups.press().name();
        Files.writeString(folder.resolve("benchful-2020-01-01-080000.zip"), "of another machine");
        Files.writeString(folder.resolve("holiday.jpg"), "hers");
        backups.takeIfDue();
        String changed = files().stream().filter(f -> !f.equals(pressed) && f.startsWith("benchful-2027")).findFirst().orElseThrow();
        Files.writeString(folder.resolve(changed), "she put something else in its place");
        for (int day = 0; day < 4; day++) {
            daysPass(1);
            backups.takeIfDue();
        }
        assertThat(files()).contains(pressed, changed, "benchful-2020-01-01-080000.zip", "holiday.jpg").hasSize(6);
    }

    @Test
    void takesNoneWhereNoneIsWantedOrNothingIsStored() throws SQLException, IOException {
        chosen(folder, 0, 2);
        backups.takeIfDue();
        stored.nothing();
        chosen(folder, 1, 2);
        backups.takeIfDue();
        assertThat(files()).isEmpty();
    }

    @Test
    void saysOnceThatItFailedAndTriesAgain() throws SQLException, IOException {
        chosen(folder.resolve("stick"), 1, 2);
        backups.takeIfDue();
        backups.takeIfDue();
        assertThat(backups.notice().trouble()).startsWith("The folder %s is not there.".formatted(folder.resolve("stick")));
        assertThat(backups.log()).hasSize(1);
        Files.createDirectory(folder.resolve("stick"));
        backups.takeIfDue();
        assertThat(backups.notice().trouble()).isNull();
        assertThat(backups.folder().files()).hasSize(1);
    }

    @Test
    void countsAFolderElsewhereAsAway() throws SQLException {
        stored.execute("update backup_schedule set since = '2026-01-01'");
        backups.takeIfDue();
        assertThat(backups.notice().days()).isEqualTo(405);
        stored.execute("update backup_schedule set sheet = sheet || '{\"elsewhere\": true}'");
        daysPass(1);
        backups.takeIfDue();
        assertThat(backups.notice().days()).isNull();
    }

    private void chosen(Path where, int everyDays, int kept) throws SQLException {
        stored.execute("delete from backup_schedule", "insert into backup_schedule (id, version, sheet, since) values (1, 0, '{\"folder\": \"%s\", \"every_days\": %d, \"kept\": %d}', '2026-11-25')"
                .formatted(where, everyDays, kept));
    }

    private void daysPass(int days) throws SQLException {
        stored.execute("update backup set happened_at = happened_at - interval '%d days'".formatted(days));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
