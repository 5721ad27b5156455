package benchful.backups;

import benchful.backups.archive.BackupFault;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder with backups. A file gets its name only when all of it has reached the disk, so a crash leaves none that looks whole.
 * Only files that are called as backups are listed, read or removed.
 */
public final class BackupFolder {
    private static final Pattern NAME = Pattern.compile("benchful-[A-Za-z0-9-]{1,80}\\.zip(\\.gpg)?");
    private static final String DRAFT = ".benchful-";
    private static final String PART = ".part";
    private static final Duration LEFT = Duration.ofDays(1);
    private static final long HARDLY_ANY = 4L << 20;
    private static final int PIECE = 1 << 16;

    private final Path path;

    BackupFolder(Path path) {
        this.path = path;
    }

    /** Where nobody chose another folder, this one is made. */
    static BackupFolder made(Path path) {
        try {
            Files.createDirectories(path);
            return new BackupFolder(path);
        } catch (IOException e) {
            throw new BackupFolder(path).fault(e);
        }
    }

    /** A backup that lies there. */
    public record Kept(String name, Instant at, long bytes) {
        boolean locked() {
            return name.endsWith(".gpg");
        }
    }

    /** What is written. */
    interface Content {
        void write(OutputStream out) throws IOException;
    }

    public Path path() {
        return path;
    }

    /** Newest first. */
    List<Kept> files() {
        requireThere();
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(BackupFolder::isBackup).map(BackupFolder::kept).sorted(Comparator.comparing(Kept::at).reversed()).toList();
        } catch (IOException | UncheckedIOException e) {
            throw fault(e);
        }
    }

    Optional<Kept> file(String name) {
        return NAME.matcher(name).matches() ? Optional.of(path.resolve(name)).filter(BackupFolder::isBackup).map(BackupFolder::kept) : Optional.empty();
    }

    private static boolean isBackup(Path file) {
        return NAME.matcher(file.getFileName().toString()).matches() && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    private static Kept kept(Path file) {
        try {
            return new Kept(file.getFileName().toString(), Files.getLastModifiedTime(file).toInstant(), Files.size(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws BackupFault where the folder is gone or may not be written to */
    void requireThere() {
        if (!Files.isDirectory(path)) {
            throw new BackupFault("The folder %s is not there. Plug in its disk, make the folder anew, or choose another one.".formatted(path));
        }
        if (!Files.isWritable(path)) {
            throw new BackupFault("Benchful may not write into the folder %s. Give your account the right to, or choose another folder.".formatted(path));
        }
    }

    /**
     * Writes a whole file or none.
     *
     * @param stem of its name; a number is added where the name is taken
     */
    Kept write(String stem, String ending, Content content) {
        requireThere();
        sweep(path, DRAFT);
        Path draft = null;
        try {
            draft = Files.createTempFile(path, DRAFT, PART);
            fill(draft, content);
            Path file = free(stem, ending);
            Files.move(draft, file);
            settle();
            return kept(file);
        } catch (IOException | UncheckedIOException e) {
            throw fault(e);
        } finally {
            deleteQuietly(draft);
        }
    }

    private static void fill(Path draft, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), PIECE);
            content.write(out);
            out.flush();
            channel.force(true);
        }
    }

    private Path free(String stem, String ending) {
        Path file = path.resolve(stem + ending);
        for (int number = 2; Files.exists(file, LinkOption.NOFOLLOW_LINKS); number++) {
            file = path.resolve(stem + "-" + number + ending);
        }
        return file;
    }

    /** Writes the folder's list through, where the system can; else a power cut could lose the new name. */
    private void settle() {
        try (FileChannel folder = FileChannel.open(path, StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            // Windows opens no folders; its file system keeps names safe by itself.
        }
    }

    /** Removes drafts that were left by a power cut: nobody writes on one for so long. */
    static void sweep(Path folder, String start) {
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, start + "*" + PART)) {
            for (Path draft : drafts) {
                if (Files.getLastModifiedTime(draft).toInstant().isBefore(Instant.now().minus(LEFT))) {
                    deleteQuietly(draft);
                }
            }
        } catch (IOException e) {
            // They are swept up another day.
        }
    }

    /** Removes a file that is still as long as it was when it was written; another of that name stays. */
    void remove(String name, long bytes) {
        file(name).filter(f -> f.bytes() == bytes).ifPresent(f -> deleteQuietly(path.resolve(f.name())));
    }

    private static void deleteQuietly(Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // What cannot be removed stays, and is removed another day.
        }
    }

    BackupFault fault(Exception e) {
        Throwable cause = e instanceof UncheckedIOException u ? u.getCause() : e;
        if (cause instanceof AccessDeniedException) {
            return new BackupFault("Benchful may not write into the folder %s. Give your account the right to, or choose another folder.".formatted(path), e);
        }
        if (cause instanceof NoSuchFileException) {
            return new BackupFault("The folder %s went away while the backup was written. Plug in its disk and try again.".formatted(path), e);
        }
        return isFull(cause)
                ? new BackupFault("The disk of the folder %s is full. Make room on it, keep fewer backups, or choose another folder.".formatted(path), e)
                : new BackupFault("The folder %s could not be used (%s). Look at its disk, or choose another folder.".formatted(path, reason(cause)), e);
    }

    private boolean isFull(Throwable cause) {
        try {
            return String.valueOf(cause.getMessage()).contains("No space left") || Files.getFileStore(path).getUsableSpace() < HARDLY_ANY;
        } catch (IOException e) {
            return false;
        }
    }

    private static String reason(Throwable cause) {
        return cause instanceof FileSystemException f && f.getReason() != null ? f.getReason() : "its disk failed";
    }
}
