package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SolverFilesTest {
    @TempDir
    Path temporary;

    private SolverFiles files;
    private Path folder;

    @BeforeEach
    void unpack() throws IOException {
        files = new SolverFiles(temporary);
        folder = Files.createDirectories(temporary.resolve("ortools-java1/natives")).getParent();
        Files.writeString(folder.resolve("natives/library.so"), "many bytes");
    }

    @Test
    void keepsWhatALivingProgramUsesAndRemovesItOnceThatIsDead() throws IOException {
        FileChannel claim = files.claim(Instant.EPOCH).orElseThrow();
        files.sweep();
        assertThat(folder).exists();

        claim.close();
        files.sweep();
        assertThat(folder).doesNotExist();
    }

    @Test
    void leavesAloneWhatIsNotOurs() throws IOException {
        Path other = Files.createDirectory(temporary.resolve("other"));
        files.sweep();
        assertThat(folder).exists();
        assertThat(other).exists();
    }

    @Test
    void claimsNoFolderOfAnotherProgram() throws IOException {
        try (FileChannel claim = files.claim(Instant.EPOCH).orElseThrow()) {
            assertThat(files.claim(Instant.EPOCH)).isEmpty();
            assertThat(claim.isOpen()).isTrue();
        }
        Files.createDirectory(temporary.resolve("ortools-java2"));
        assertThat(files.claim(Instant.now().plusSeconds(60))).as("unpacked before this program began").isEqualTo(Optional.empty());
    }
}
