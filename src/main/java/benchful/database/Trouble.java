package benchful.database;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;

/** What the system said when a file could not be read or written, in words for a person. */
final class Trouble {
    private static final String FULL = "No space left on device";

    private Trouble() {}

    static String words(IOException e) {
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be read or written by " + System.getProperty("user.name");
        }
        if (isFull(String.valueOf(e.getMessage()))) {
            return "the disk is full; make room on it";
        }
        return e instanceof FileSystemException file && file.getReason() != null ? file.getFile() + ": " + file.getReason() : e.getMessage();
    }

    /** @param said by the system or a program */
    static boolean isFull(String said) {
        return said.contains(FULL);
    }
}
