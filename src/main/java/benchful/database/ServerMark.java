package benchful.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The mark a server leaves in its files while it runs: {@code postmaster.pid}, whose first line is its process number and whose
 * second names the files. After a power cut the mark stays, and its number may by then belong to any other process; in a copy of
 * the files it speaks of the server of the original. Neither may be stopped.
 */
record ServerMark(Path file) {

    static ServerMark in(Path files) {
        return new ServerMark(files.resolve("postmaster.pid"));
    }

    /** The server that runs on these files, if one does. */
    Optional<ProcessHandle> server() throws IOException {
        return process().filter(ServerMark::isPostgres).filter(this::runsHere);
    }

    /** Removes a mark that names no server on these files, or nothing: PostgreSQL would take it for one, or give up over it. */
    void clearIfStrange() throws IOException {
        boolean namesNothing = Files.exists(file) && number().isEmpty();
        if (namesNothing || process().isPresent() && server().isEmpty()) {
            Files.delete(file);
        }
    }

    private Optional<ProcessHandle> process() throws IOException {
        return number().flatMap(ProcessHandle::of);
    }

    private Optional<Long> number() throws IOException {
        return line(0).filter(text -> text.matches("\\d{1,10}")).map(Long::valueOf);
    }

    private Optional<String> line(int index) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        // What a power cut left may be no text at all; as Latin-1, anything can be read.
        List<String> lines = Files.readString(file, StandardCharsets.ISO_8859_1).lines().toList();
        return lines.stream().skip(index).findFirst().map(String::strip);
    }

    private static boolean isPostgres(ProcessHandle process) {
        // Where the system does not tell the command, caution says that it may be the server.
        return process.info().command().map(ServerMark::isNamedPostgres).orElse(process.isAlive());
    }

    private static boolean isNamedPostgres(String command) {
        return Path.of(command).getFileName().toString().startsWith("postgres");
    }

    /** A server works in the folder of its files; Linux shows that, also where the folder was renamed since. */
    private boolean runsHere(ProcessHandle process) {
        Path files = file.getParent();
        try {
            Path workplace = Path.of("/proc", Long.toString(process.pid()), "cwd");
            return Files.isSameFile(Files.exists(workplace) ? workplace : Path.of(line(1).orElse("")), files);
        } catch (IOException | InvalidPathException e) {
            return false; // the folder that it names is gone
        }
    }
}
