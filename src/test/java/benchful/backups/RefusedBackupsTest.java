package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import benchful.backups.archive.BackupFault;
import benchful.backups.archive.Manifest;
import benchful.backups.archive.Manifest.Item;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Damaged, foreign and hostile files: refused in words, and nothing stored is changed. */
@QuarkusTest
class RefusedBackupsTest {
    private static final String NAME = "benchful-edited.zip";

    @TestHTTPResource
    URL address;

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @Inject
    Restores restores;

    private Path good;
    private Path edited;
    private Map<String, String> before;

    @BeforeEach
    void take() throws SQLException {
        stored.fill(address);
        good = backups.folder().path().resolve(backups.press().name());
        edited = good.resolveSibling(NAME);
        before = stored.everything();
    }

    @AfterEach
    void nothingHasChanged() throws SQLException, IOException {
        Files.deleteIfExists(edited);
        nothingElseHasChanged();
    }

    private void nothingElseHasChanged() throws SQLException {
        assertThat(stored.everything()).isEqualTo(before);
    }

    @Test
    void refusesADamagedFile() throws IOException, SQLException {
        byte[] whole = Files.readAllBytes(good);
        int refused = 0;
        for (int part = 1; part < 20; part++) {
            byte[] damaged = whole.clone();
            damaged[whole.length * part / 20] ^= 0x20;
            Files.write(edited, damaged);
            Throwable refusal = catchThrowable(() -> restores.restore(NAME, null));
            if (refusal == null) {
                // A byte that says no more than when a file was written; all that matters was put back.
                nothingElseHasChanged();
            } else {
                refused++;
                assertThat(refusal).as("byte %d of %d", whole.length * part / 20, whole.length).isInstanceOf(BackupFault.class)
                        .message().matches("(?s).*(damaged|not as it was|is missing|no backup|does not list).*");
            }
        }
        assertThat(refused).isGreaterThan(12);
        Files.write(edited, Arrays.copyOf(whole, whole.length / 2));
        assertThat(refusal()).startsWith("This file is no backup, or it was cut short.");
    }

    @Test
    void refusesABackupOfANewerVersion() throws IOException {
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> EditedArchive.withMigrations(m, v -> {
            List<String> more = new ArrayList<>(v);
            more.add("999");
            return more;
        }));
        assertThat(refusal()).startsWith("This backup was taken by a newer version of Benchful than the one that runs here (its tables are at version 999).");
    }

    @Test
    void refusesAMigrationThatDoesNotStandByItself() throws IOException {
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> EditedArchive.withMigrations(m, v -> List.of("013")));
        assertThat(refusal()).isNotBlank();
    }

    @Test
    void refusesFilesThatWereChangedOrAdded() throws IOException {
        EditedArchive.edited(good, edited, files -> files.computeIfPresent("tables/supplier.csv", (p, c) -> text(new String(c, StandardCharsets.UTF_8).replace("GBP", "EUR"))), (m, files) -> m);
        assertThat(refusal()).startsWith("The file “tables/supplier.csv” in the archive is not as it was when the backup was taken.");
        EditedArchive.edited(good, edited, files -> files.put("../../evil.sh", text("rm")), (m, files) -> m);
        assertThat(refusal()).startsWith("The archive holds the file “../../evil.sh”, which its manifest does not list.");
        EditedArchive.edited(good, edited, files -> files.put("notes\0\33.txt", text("x")), (m, files) -> m);
        assertThat(refusal()).startsWith("The archive holds the file “notes\uFFFD\uFFFD.txt”, which its manifest does not list.");
        EditedArchive.edited(good, edited, files -> files.remove("tables/supplier.csv"), (m, files) -> m);
        assertThat(refusal()).startsWith("The file “tables/supplier.csv” is missing in the archive.");
    }

    @Test
    void writesNothingToTheDiskWhateverAFileIsCalled() throws IOException {
        Path target = good.getParent().getParent().resolve("evil.sh");
        EditedArchive.relisted(good, edited, files -> files.put("../evil.sh", text("rm")));
        restores.restore(NAME, null);
        assertThat(target).doesNotExist();
    }

    @Test
    void refusesContentsThatNoSuchTableCanHold() throws IOException {
        refused(files -> replace(files, "tables/supplier.csv", "GBP,", "GBP,not a number"), "The file “tables/supplier.csv” in the archive, line ");
        refused(files -> files.put("tables/supplier.csv", text("id\n1\n")), "The file “tables/supplier.csv” in the archive, line ");
        refused(files -> replace(files, "tables/price_break.csv", "\n", "\n999999,3,1.00\n"), "The file “tables/price_break.csv” in the archive");
        refused(files -> files.replaceAll((p, c) -> p.startsWith("projects/") ? text("{not json") : c), "The file “tables/project.csv” in the archive does not hold what such a table can hold");
        refused(files -> replace(files, "tables/project.csv", "projects/", "../../projects/"), "The file “../../projects/");
        refused(files -> replace(files, "tables/supplier.csv", "GBP", "EUR"), "What was put back of “suppliers” was not equal to the backup, so nothing was changed.");
    }

    @Test
    void refusesOtherTablesAndColumns() throws IOException {
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> new Manifest(m.benchful(), m.taken(), m.migrations(), m.tables().subList(1, m.tables().size()), m.files()));
        assertThat(refusal()).startsWith("The tables in the archive are not those of the version");
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> new Manifest(m.benchful(), m.taken(), m.migrations(), m.tables().stream()
                .map(p -> p.table().equals("supplier") ? new Manifest.Part(p.table(), p.file(), List.of("id", "name\"; drop table x"), List.of(), p.rows(), p.next(), p.sha256()) : p).toList(), m.files()));
        assertThat(refusal()).startsWith("The columns of “tables/supplier.csv” in the archive are not those");
    }

    @Test
    void refusesAnArchiveThatStatesOrHoldsFarMoreThanItWeighs() throws IOException {
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> EditedArchive.withFiles(m, List.of(new Item("tables/project.csv", Long.MAX_VALUE, "0"))));
        assertThat(refusal()).startsWith("This archive states to hold far more than a backup can");
        EditedArchive.relisted(good, edited, files -> files.put("tables/project.csv", new byte[600 << 20]));
        assertThat(refusal()).startsWith("This archive states to hold far more than a backup can");
        EditedArchive.edited(good, edited, files -> files.put("tables/project.csv", new byte[600 << 20]), (m, files) -> m);
        assertThat(refusal()).startsWith("The file “tables/project.csv” in the archive is not as it was");
    }

    @Test
    void refusesForeignArchivesAndFormats() throws IOException {
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> new Manifest("backup/2", m.taken(), m.migrations(), m.tables(), m.files()));
        assertThat(refusal()).startsWith("This is no backup that this version can read: its contents say “backup/2”");
        EditedArchive.edited(good, edited, files -> {}, (m, files) -> new Manifest(m.benchful(), "yesterday", m.migrations(), m.tables(), m.files()));
        assertThat(refusal()).startsWith("The file is damaged");
        Files.writeString(edited, "not an archive");
        assertThatThrownBy(() -> restores.restore(NAME, null)).isInstanceOf(BackupFault.class).hasMessageStartingWith("This file is no backup");
    }

    private void refused(Consumer<Map<String, byte[]>> edit, String words) throws IOException {
        EditedArchive.relisted(good, edited, edit);
        assertThat(refusal()).startsWith(words);
    }

    private String refusal() {
        Throwable refusal = catchThrowable(() -> restores.restore(NAME, null));
        assertThat(refusal).isInstanceOf(BackupFault.class);
        assertThat(refusal.getMessage()).doesNotContain("Exception", "org.", "java.", "SQL", "COPY");
        return refusal.getMessage();
    }

    private static void replace(Map<String, byte[]> files, String path, String what, String with) {
        String before = new String(files.get(path), StandardCharsets.UTF_8);
        String after = before.replaceFirst(java.util.regex.Pattern.quote(what), java.util.regex.Matcher.quoteReplacement(with));
        assertThat(after).as("%s holds %s", path, what).isNotEqualTo(before);
        files.put(path, text(after));
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
