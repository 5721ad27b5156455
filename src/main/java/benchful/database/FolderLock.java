package benchful.database;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second program away from a data folder. The operating system drops the lock when its holder ends, however it ends, so
 * a killed program never leaves the folder locked. The holder's process number stands beside the lock for the message.
 */
final class FolderLock implements AutoCloseable {
    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    static FolderLock take(DataFolder folder) throws IOException {
        FileChannel channel = FileChannel.open(folder.lockFile(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!isFree(channel)) {
            channel.close();
            throw new DatabaseProblem("Benchful is already running on the data folder " + folder.root() + holder(folder)
                    + ". Use the one that runs, stop it first, or choose another folder with the setting benchful.data.");
        }
        Files.writeString(holderFile(folder), Long.toString(ProcessHandle.current().pid()));
        return new FolderLock(channel);
    }

    private static boolean isFree(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false; // held by this very process
        }
    }

    // Beside the lock and not in it: on some systems a locked file cannot be read by others.
    private static Path holderFile(DataFolder folder) {
        return folder.root().resolve("lock.holder");
    }

    private static String holder(DataFolder folder) {
        try {
            return " (process " + Files.readString(holderFile(folder)).strip() + ")";
        } catch (IOException e) {
            return "";
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
