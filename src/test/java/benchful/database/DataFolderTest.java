package benchful.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {
    @TempDir
    Path home;

    @Test
    void drawsAPasswordOnceAndKeepsIt() throws IOException {
        DataFolder folder = DataFolder.open(home.resolve("data"));
        assertThat(folder.password(17)).isEmpty();

        String password = folder.newPassword(17);

        assertThat(password).hasSize(48).isNotEqualTo(folder.newPassword(18));
        assertThat(folder.password(17)).hasValue(password);
    }

    @Test
    void takesATornPasswordFileForNone() throws IOException {
        DataFolder folder = DataFolder.open(home.resolve("data"));
        for (String torn : new String[] {"", "0a1b", "\0\0\0\0", "\u00ff".repeat(48)}) {
            Files.writeString(folder.passwordFile(17), torn, StandardCharsets.ISO_8859_1);

            assertThat(folder.password(17)).as(torn).isEmpty();
        }
    }

    @Test
    void refusesAFileInItsPlace() throws IOException {
        Path file = Files.createFile(home.resolve("data"));

        assertThatThrownBy(() -> DataFolder.open(file))
                .isInstanceOf(DatabaseProblem.class)
                .hasMessage("The data folder %s is a file. Choose a folder of your own with the setting benchful.data.", file);
    }

    @Test
    void refusesAFolderItMayNotWriteTo() throws IOException {
        assumeFalse(ServerAccount.isRoot(), "root may write everywhere");
        Path folder = Files.createDirectory(home.resolve("data"));
        assumeFalse(PostgresPrograms.isWindows() || !folder.toFile().setWritable(false), "no file modes here");

        assertThatThrownBy(() -> DataFolder.open(folder))
                .isInstanceOf(DatabaseProblem.class)
                .hasMessageContaining("may not be written to");
    }

    @Test
    void refusesToBeginAnewBesideDataOfAnotherVersion() throws IOException {
        DataFolder folder = DataFolder.open(home.resolve("data"));
        Files.createDirectory(folder.cluster(16));

        assertThatThrownBy(() -> folder.refuseOtherVersions(17))
                .isInstanceOf(DatabaseProblem.class)
                .hasMessageContaining(folder.cluster(16) + " are from another version of PostgreSQL than the 17");
        Files.createDirectory(folder.cluster(17));
        assertThatCode(() -> folder.refuseOtherVersions(17)).doesNotThrowAnyException();
    }

    @Test
    void readsItsSettingsByName() {
        Map<String, String> set = Map.of(
                "benchful.data", home.toString(), "benchful.database.durable", "false", "benchful.database.recreated", "true");

        assertThat(DatabaseSettings.from(name -> Optional.ofNullable(set.get(name))))
                .isEqualTo(new DatabaseSettings(home, false, true));
    }

    @Test
    void livesBelowHomeAndIsDurableUnlessToldOtherwise() {
        DatabaseSettings settings = DatabaseSettings.from(name -> Optional.empty());

        assertThat(settings.folder().getFileName()).hasToString(".benchful");
        assertThat(settings.durable()).isTrue();
        assertThat(settings.recreated()).isFalse();
    }
}
