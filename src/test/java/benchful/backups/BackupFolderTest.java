package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.archive.BackupFault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupFolderTest {
    @TempDir
    Path path;

    @Test
    void writesWholeFilesAndNeverOverOthers() {
        BackupFolder folder = new BackupFolder(path);
        Kept first = folder.write("benchful-a", ".zip", out -> out.write(new byte[3]));
        Kept second = folder.write("benchful-a", ".zip", out -> out.write(new byte[4]));
        assertThat(first.name()).isEqualTo("benchful-a.zip");
        assertThat(second).extracting(Kept::name, Kept::bytes).containsExactly("benchful-a-2.zip", 4L);
        assertThat(folder.files()).extracting(Kept::name).containsExactlyInAnyOrder("benchful-a.zip", "benchful-a-2.zip");
    }

    @Test
    void leavesNothingBehindWhereItFailsAndSaysWhy() {
        assertThat(failing(new IOException("No space left on device"))).isEqualTo(
                "The disk of the folder %s is full. Make room on it, keep fewer backups, or choose another folder.".formatted(path));
        assertThat(failing(new AccessDeniedException("x"))).startsWith("Benchful may not write into the folder " + path);
        assertThat(failing(new IOException("x"))).isEqualTo("The folder %s could not be used (its disk failed). Look at its disk, or choose another folder.".formatted(path));
        assertThat(path).isEmptyDirectory();
    }

    @Test
    void sweepsUpDraftsThatAPowerCutLeft() throws IOException {
        Path left = Files.createFile(path.resolve(".benchful-123.part"));
        Path fresh = Files.createFile(path.resolve(".benchful-456.part"));
        Files.setLastModifiedTime(left, FileTime.from(Instant.now().minusSeconds(3 * 86_400)));
        new BackupFolder(path).write("benchful-a", ".zip", out -> out.write(1));
        assertThat(left).doesNotExist();
        assertThat(fresh).exists();
    }

    @Test
    void knowsOnlyFilesThatAreCalledAsBackups() throws IOException {
        BackupFolder folder = new BackupFolder(path.resolve("in"));
        Files.createDirectory(folder.path());
        Files.writeString(path.resolve("benchful-out.zip"), "x");
        Files.createSymbolicLink(folder.path().resolve("benchful-link.zip"), path.resolve("benchful-out.zip"));
        Files.writeString(folder.path().resolve("other.zip"), "x");
        assertThat(folder.files()).isEmpty();
        for (String name : new String[] {"../benchful-out.zip", "benchful-link.zip", "other.zip", "benchful-../x.zip", "", "benchful-none.zip", "benchful-\0.zip"}) {
            assertThat(folder.file(name)).as(name).isEmpty();
        }
    }

    @Test
    void removesOnlyWhatIsStillAsItWasWritten() throws IOException {
        BackupFolder folder = new BackupFolder(path);
        Kept kept = folder.write("benchful-a", ".zip", out -> out.write(new byte[3]));
        folder.remove(kept.name(), 4);
        assertThat(path.resolve(kept.name())).exists();
        folder.remove(kept.name(), 3);
        assertThat(path).isEmptyDirectory();
    }

    private String failing(IOException failure) {
        BackupFolder folder = new BackupFolder(path);
        Throwable[] fault = new Throwable[1];
        assertThatThrownBy(() -> folder.write("benchful-a", ".zip", out -> {
            out.write(1);
            throw failure;
        })).isInstanceOf(BackupFault.class).satisfies(t -> fault[0] = t);
        return fault[0].getMessage();
    }
}
