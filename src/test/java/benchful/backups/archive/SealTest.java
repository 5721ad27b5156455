package benchful.backups.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The envelope of a locked backup. */
class SealTest {
    private static final String WORDS = "mandrel käfer 珠 ninepin";
    private static final byte[] CONTENT = new byte[300_000];

    static {
        new Random(7).nextBytes(CONTENT);
    }

    @TempDir
    Path folder;

    @Test
    void opensWithItsPassphraseOnly() throws IOException {
        byte[] locked = locked();

        assertThat(unlocked(WORDS, locked)).isEqualTo(CONTENT);
        assertThatThrownBy(() -> unlocked("mandrel", locked))
                .isInstanceOf(BackupFault.WrongPassphrase.class)
                .hasMessageStartingWith("This passphrase does not open the file. Type the one that was set when the backup was taken; capitals and blanks count.");
    }

    @Test
    void tellsADamagedFileFromAWrongPassphrase() throws IOException {
        byte[] locked = locked();
        for (int at : new int[] {200, locked.length / 2, locked.length - 1}) {
            byte[] damaged = locked.clone();
            damaged[at] ^= 0x10;
            assertThatThrownBy(() -> unlocked(WORDS, damaged)).as("byte %d", at).isExactlyInstanceOf(BackupFault.class).hasMessageContaining("damaged");
        }
        for (int length : new int[] {150, locked.length / 2, locked.length - 1}) {
            byte[] cut = Arrays.copyOf(locked, length);
            assertThatThrownBy(() -> unlocked(WORDS, cut)).as("%d bytes", length).isExactlyInstanceOf(BackupFault.class).hasMessageContaining("damaged");
        }
    }

    @Test
    void opensNothingThatIsNoEnvelope() {
        assertThatThrownBy(() -> unlocked(WORDS, "not an envelope at all".getBytes())).isExactlyInstanceOf(BackupFault.class);
        assertThatThrownBy(() -> unlocked(WORDS, new byte[0])).isExactlyInstanceOf(BackupFault.class);
    }

    /** The reference implementation of OpenPGP is the judge of what "gpg opens it, too" says. */
    @Test
    void isOpenedByGpgAsWell() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/gpg")), "gpg is not installed here");
        Path file = Files.write(folder.resolve("backup.zip.gpg"), locked());
        Path plain = folder.resolve("backup.zip");
        Path words = Files.writeString(folder.resolve("words"), WORDS);
        Path home = Files.createDirectory(folder.resolve("home"));

        int code = new ProcessBuilder("/usr/bin/gpg", "--homedir", home.toString(), "--batch", "--quiet", "--pinentry-mode", "loopback",
                "--passphrase-file", words.toString(), "--output", plain.toString(), "--decrypt", file.toString())
                .redirectErrorStream(true).redirectOutput(folder.resolve("said").toFile()).start().waitFor();

        assertThat(code).as(Files.readString(folder.resolve("said"))).isZero();
        assertThat(Files.readAllBytes(plain)).isEqualTo(CONTENT);
    }

    private static byte[] locked() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Seal.lock(WORDS, "benchful.zip", out, plain -> {
            try {
                plain.write(CONTENT);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return out.toByteArray();
    }

    private static byte[] unlocked(String words, byte[] locked) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Seal.unlock(words, new ByteArrayInputStream(locked), out);
        return out.toByteArray();
    }
}
