package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.backups.archive.Manifest;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages on which backups are taken, looked into and put back. */
@QuarkusTest
class BackupsPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @TempDir
    Path stick;

    private Visitor tutor;

    @BeforeEach
    void fill() throws SQLException {
        stored.fill(address);
        tutor = new Visitor(address);
    }

    @AfterEach
    void unlock() {
        tutor.open("/backups").press(tutor.page().selectFirst("form[action=/backups/passphrase] button"));
    }

    @Test
    void downloadsEverythingAsOpenFiles() throws IOException {
        tutor.open("/backups").press("Download a backup");

        assertThat(tutor.answer().header("Content-Disposition")).matches("attachment; filename=\"benchful-2027-02-10-\\d{6}\\.zip\"");
        Map<String, String> files = unpacked(tutor.bytes());
        assertThat(files.get("README.txt")).contains("tables/stock_movement.csv").contains("stock movements");
        assertThat(files.get("tables/supplier.csv")).startsWith("id,version,name,currency,").contains("Ninepin Bead Loft");
        assertThat(files.keySet()).filteredOn(f -> f.startsWith("projects/")).hasSizeGreaterThanOrEqualTo(6).anyMatch(f -> f.matches("projects/\\d+-knotted-strand-[a-z-]+\\.json"));
        assertThat(files.entrySet()).filteredOn(e -> e.getKey().startsWith("pictures/")).isNotEmpty()
                .allSatisfy(e -> assertThat(e.getKey()).matches("pictures/\\d+-[a-z0-9-]+\\.svg")).allSatisfy(e -> assertThat(e.getValue()).contains("<svg"));
        assertThat(files.get("hazards/grinding-dust.json")).contains("\"note\": \"=1+1, \\\"quoted\\\"\"");
        assertThat(files).containsKey(Manifest.PATH);
    }

    @Test
    void bringsADownloadedFileAndPutsItBackAfterTheQuestion() throws SQLException {
        Map<String, String> before = stored.everything();
        tutor.open("/backups").press("Download a backup");
        byte[] file = tutor.bytes();
        stored.nothing();

        tutor.open("/").open(tutor.page().selectFirst("a:contains(Put it back)").attr("href")).pick("file", "My copy (1).zip", "application/zip", file).press("Look into it");
        assertThat(tutor.page().text()).contains("Nothing is stored here yet").contains("taken Wed 10 Feb 2027");
        assertThat(tutor.rows("main table")).anyMatch(r -> r.matches("projects \\| 0 \\| \\d+"));
        tutor.press("Put it back");

        assertThat(tutor.page().text()).contains("The backup is put back").containsPattern("Put back and read out again: [\\d,]+ rows of \\d+ tables are equal to the backup");
        assertThat(stored.everything()).isEqualTo(before);
    }

    @Test
    void locksBackupsWithAPassphraseAndAsksForItElsewhere() throws SQLException {
        tutor.open("/backups").type("passphrase", "short").type("again", "short").press("Set it");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().text()).contains("A passphrase needs 8 letters at least");
        tutor.open("/backups").type("passphrase", "four short words here").type("again", "four short words hare").press("Set it");
        assertThat(tutor.page().text()).contains("The two passphrases differ");
        tutor.open("/backups").type("passphrase", "four short words here").type("again", "four short words here").press("Set it");
        Map<String, String> before = stored.everything();
        tutor.open("/backups").press("Back up into the folder now");
        String name = tutor.page().selectFirst("main th.name").ownText();
        assertThat(name).endsWith(".zip.gpg");
        assertThat(tutor.open("/backups/files/" + name).page().text()).contains("Replace everything with it");

        tutor.open("/backups").type("passphrase", "").type("again", "").press("Change it; leave both empty for none");
        assertThat(tutor.page().text()).contains("Backups are not locked");
        stored.nothing();
        tutor.open("/backups/files/" + name).type("passphrase", "four short words").press("Open it");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().text()).contains("This passphrase does not open the file");
        tutor.type("passphrase", "four short words here").press("Open it").press("Put it back");
        assertThat(tutor.page().text()).contains("The backup is put back");
        assertThat(stored.everything()).isEqualTo(before);
    }

    @Test
    void keepsWhatWasTypedOfAScheduleThatCannotBe() throws IOException, SQLException {
        tutor.open("/backups").type("/folder", "/no/such/folder").type("/kept", "5").press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).first().asString().startsWith("The folder /no/such/folder is not there.");
        assertThat(tutor.field("/kept")).isEqualTo("5");
        tutor.type("/folder", stick.toString()).type("/kept", "0").press("Save");
        assertThat(tutor.faults()).first().asString().startsWith("Give how many to keep, from 1 to 1,000.");
        tutor.type("/kept", "5").press("Save").press("Back up into the folder now");
        assertThat(tutor.page().select("main th.name").eachText()).hasSize(1);
        assertThat(Files.list(stick).map(p -> p.getFileName().toString())).hasSize(1).allMatch(n -> n.matches("benchful-2027-02-10-\\d{6}\\.zip"));
    }

    @Test
    void saysThatTheFolderIsGoneAndTellsTheFirstPage() throws IOException, SQLException {
        Path folder = Files.createDirectory(stick.resolve("backups"));
        tutor.open("/backups").type("/folder", folder.toString()).press("Save");
        Files.delete(folder);

        tutor.open("/backups").press("Back up into the folder now");
        assertThat(tutor.status()).isEqualTo(422);
        String words = "The folder %s is not there. Plug in its disk, make the folder anew, or choose another one.".formatted(folder);
        assertThat(tutor.page().text()).contains(words);
        assertThat(tutor.open("/").page().text()).contains("The last backup was not taken. " + words);
        Files.createDirectory(folder);
        assertThat(tutor.open("/backups").press("Back up into the folder now").open("/").page().text()).doesNotContain("was not taken");
    }

    @Test
    void remindsWhereNoBackupLeftTheMachineForLong() throws SQLException {
        assertThat(tutor.open("/").page().text()).doesNotContain("has left this machine");
        stored.execute("update backup_schedule set since = '2027-01-27'");
        assertThat(tutor.open("/").page().text()).contains("No backup has left this machine for 14 days.");
        assertThat(tutor.press("Remind me in a week").page().text()).doesNotContain("has left this machine");
        stored.execute("update backup_schedule set quiet_until = null");
        tutor.open("/").press("Download a backup");
        assertThat(unpackedQuietly(tutor.bytes())).isNotEmpty();
        assertThat(tutor.open("/").page().text()).doesNotContain("has left this machine");
    }

    @Test
    void refusesInWordsWhatIsNoBackup() {
        for (String content : List.of("PK but no archive", "neither", "")) {
            tutor.open("/backups/files").pick("file", "x.zip", "application/zip", content.getBytes(StandardCharsets.UTF_8)).press("Look into it");
            assertThat(tutor.page().text()).doesNotContain("Replace everything").containsAnyOf("This file is no backup", "Choose a backup file first", "Passphrase");
        }
        assertThat(tutor.open("/backups/files/..%2F..%2Fetc%2Fpasswd").status()).isEqualTo(404);
        assertThat(tutor.open("/backups/files/benchful-not-there.zip").status()).isEqualTo(404);
    }

    private static Map<String, String> unpackedQuietly(byte[] zip) {
        try {
            return unpacked(zip);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Map<String, String> unpacked(byte[] zip) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }
}
