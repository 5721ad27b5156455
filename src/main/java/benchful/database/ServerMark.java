package benchful.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The mark a server leaves in its files while it runs: {@code postmaster.pid}, whose first line is its process number. After a
 * power cut the mark stays, and its number may by then belong to any other process; that one must not be stopped.
 */
record ServerMark(Path file) {

    static ServerMark in(Path files) {
        return new ServerMark(files.resolve("postmaster.pid"));
    }

    /** The server that runs on the files, if one does. */
    Optional<ProcessHandle> server() throws IOException {
        return process().filter(ServerMark::isPostgres);
    }

    /** Removes a mark whose number belongs to a process that is no server; PostgreSQL would take it for one and give up. */
    void clearIfStrange() throws IOException {
        Optional<ProcessHandle> process = process();
        if (process.isPresent() && !isPostgres(process.get())) {
            Files.delete(file);
        }
    }

    private Optional<ProcessHandle> process() throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        String number = Files.readString(file).lines().findFirst().orElse("").strip();
        return number.matches("\\d{1,10}") ? ProcessHandle.of(Long.parseLong(number)) : Optional.empty();
    }

    private static boolean isPostgres(ProcessHandle process) {
        // Where the system does not tell the command, caution says that it may be the server.
        return process.info().command().map(ServerMark::isNamedPostgres).orElse(process.isAlive());
    }

    private static boolean isNamedPostgres(String command) {
        return Path.of(command).getFileName().toString().startsWith("postgres");
    }
}
