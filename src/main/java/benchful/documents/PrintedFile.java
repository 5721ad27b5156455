package benchful.documents;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.ref.Cleaner;
import java.nio.file.Files;
import java.nio.file.Path;

/** A finished print-out on the disk; its file goes when nothing holds this any more, at the latest when the program ends. */
final class PrintedFile {
    private static final Cleaner CLEANER = Cleaner.create();

    private final Path file;

    private PrintedFile(Path file) {
        this.file = file;
    }

    static PrintedFile at(Path file) {
        PrintedFile printed = new PrintedFile(file);
        file.toFile().deleteOnExit();
        CLEANER.register(printed, () -> remove(file));
        return printed;
    }

    void copyTo(OutputStream out) throws IOException {
        Files.copy(file, out);
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException("A finished print-out can't be removed.", e);
        }
    }
}
