package benchful.plans;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folders to which the solver unpacks its natives, some 70 MB each. They go at a clean stop; a killed program leaves its own
 * behind, and the next that starts removes it. Whether a folder's program lives is told by a file in it that is locked for as
 * long; the system frees the lock however the program ends. A folder without that file is not ours, or is still being unpacked.
 */
final class SolverFiles {
    private static final String MARK = ".benchful";

    private final Path temporary;

    /** @param temporary the machine's folder for what passes */
    SolverFiles(Path temporary) {
        this.temporary = temporary;
    }

    static SolverFiles ofThisMachine() {
        return new SolverFiles(Path.of(System.getProperty("java.io.tmpdir")));
    }

    /** Removes what dead programs left. */
    void sweep() {
        folders().stream().filter(SolverFiles::isLeft).forEach(SolverFiles::remove);
    }

    /**
     * Marks the folder that was just unpacked as that of a living program.
     *
     * @param since when the program began to unpack
     * @return what keeps the mark while it is open; empty where there is no such folder
     */
    Optional<FileChannel> claim(Instant since) {
        return folders().stream().filter(folder -> !Files.exists(folder.resolve(MARK)) && isSince(folder, since))
                .flatMap(folder -> marked(folder).stream()).findFirst();
    }

    private List<Path> folders() {
        try (Stream<Path> files = Files.list(temporary)) {
            return files.filter(f -> f.getFileName().toString().startsWith("ortools-java") && Files.isDirectory(f)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static boolean isSince(Path folder, Instant since) {
        try {
            return !Files.getLastModifiedTime(folder).toInstant().isBefore(since);
        } catch (IOException e) {
            return false;
        }
    }

    private static Optional<FileChannel> marked(Path folder) {
        try {
            FileChannel mark = FileChannel.open(folder.resolve(MARK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            mark.lock();
            folder.resolve(MARK).toFile().deleteOnExit();
            return Optional.of(mark);
        } catch (FileAlreadyExistsException another) {
            return Optional.empty();
        } catch (IOException e) {
            // Then the folder stays if the program is killed.
            return Optional.empty();
        }
    }

    private static boolean isLeft(Path folder) {
        Path mark = folder.resolve(MARK);
        if (!Files.exists(mark)) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(mark, StandardOpenOption.WRITE); FileLock lock = channel.tryLock()) {
            return lock != null;
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    /** As far as it may: another account's folder stays. */
    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            // tried again at the next start
        }
    }
}
