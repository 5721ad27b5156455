package benchful.database;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of one PostgreSQL server and the server that runs on them. Every change of the server's state goes through
 * PostgreSQL's own {@code pg_ctl}, which waits until the change is complete.
 */
final class PostgresCluster {
    /** The role that owns the server; it sets up the role and the database of the program and does nothing else. */
    static final String KEEPER = "keeper";

    // Recovery after a crash reads back what was written since the last checkpoint: a minute on a slow disk.
    private static final String START_SECONDS = "180";
    private static final String SMART_STOP_SECONDS = "5";
    private static final String FAST_STOP_SECONDS = "60";
    private static final long LOG_BYTES = 4_000_000;
    private static final int LAST_LINES = 8;

    private final PostgresPrograms programs;
    private final ServerAccount account;
    private final Path files;
    private final Path log;
    private final boolean durable;

    PostgresCluster(PostgresPrograms programs, ServerAccount account, Path files, Path log, boolean durable) {
        this.programs = programs;
        this.account = account;
        this.files = files;
        this.log = log;
        this.durable = durable;
    }

    boolean exists() {
        return Files.isDirectory(files);
    }

    /** Makes the files; if this is broken off, the next attempt begins afresh. */
    void create(Path passwordFile) throws IOException {
        Path draft = files.resolveSibling(files.getFileName() + ".new");
        Trees.delete(draft);
        List<String> command = new ArrayList<>(List.of(
                path("initdb"), "--pgdata=" + draft, "--username=" + KEEPER, "--pwfile=" + passwordFile,
                "--auth=scram-sha-256", "--encoding=UTF8", "--locale=C", "--locale-provider=builtin",
                "--builtin-locale=C.UTF-8", "--no-instructions"));
        if (!durable) {
            command.add("--no-sync");
        }
        Command made = run(command);
        if (!made.succeeded()) {
            throw new DatabaseProblem("PostgreSQL could not make its files in " + files
                    + (Trouble.isFull(made.output()) ? ", as the disk is full. Make room on it and start again." : ":\n" + made.output()));
        }
        Files.move(draft, files, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Starts the server and waits until it answers.
     *
     * @return empty if it runs; else why it does not
     */
    Optional<String> start(int port) throws IOException {
        long logged = Files.exists(log) ? Files.size(log) : 0;
        Files.writeString(files.resolve("postgresql.conf"), ServerConfiguration.text(port, durable));
        if (logged > LOG_BYTES) {
            Files.move(log, log.resolveSibling(log.getFileName() + ".old"), StandardCopyOption.REPLACE_EXISTING);
            logged = 0;
        }
        Command started = control("start", "--log=" + log, "--timeout=" + START_SECONDS);
        return started.succeeded() ? Optional.empty() : Optional.of(started.output() + lastWords(logged));
    }

    /** Stops the server: first it lets its clients finish, then it breaks them off; what was committed is kept either way. */
    void stop() throws IOException {
        if (!control("stop", "--mode=smart", "--timeout=" + SMART_STOP_SECONDS).succeeded()) {
            control("stop", "--mode=fast", "--timeout=" + FAST_STOP_SECONDS);
        }
    }

    /** Stops a server that outlived the program which started it, and clears what may stand in the way of a start. */
    void clearTheWay() throws IOException {
        ServerMark mark = ServerMark.in(files);
        if (mark.server().isPresent()) {
            control("stop", "--mode=fast", "--timeout=" + FAST_STOP_SECONDS);
        } else {
            mark.clearIfStrange();
        }
        account.own(files);
        account.own(log);
    }

    /** The process of the server, while it runs. */
    Optional<ProcessHandle> server() throws IOException {
        return ServerMark.in(files).server();
    }

    private Command control(String action, String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(path("pg_ctl"), action, "--pgdata=" + files, "--wait", "--silent"));
        command.addAll(List.of(options));
        return run(command);
    }

    /**
     * Gives both roles the password; the server must not run.
     *
     * @param password of letters and digits
     */
    void setPassword(String password) throws IOException {
        List<String> command = account.command(List.of(path("postgres"), "--single", "-D", files.toString(), "postgres"));
        Command told = Command.run(command, Stream.of(KEEPER, ProgramDatabase.ROLE)
                .map(role -> "alter role " + role + " password '" + password + "'\n").collect(Collectors.joining()));
        if (!told.succeeded()) {
            throw new DatabaseProblem("PostgreSQL could not take a new password for the data in " + files + ":\n" + told.output());
        }
    }

    /**
     * What this start added to the end of the server's log, for a message.
     *
     * @param before so long was the log when it began [bytes]
     */
    private String lastWords(long before) {
        try (InputStream in = Files.newInputStream(log)) {
            in.skipNBytes(before);
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            List<String> last = lines.subList(Math.max(0, lines.size() - LAST_LINES), lines.size());
            return last.isEmpty() ? "" : "Its log " + log + " ends with:\n" + String.join("\n", last);
        } catch (IOException e) {
            return "Its log " + log + " cannot be read.";
        }
    }

    private Command run(List<String> command) throws IOException {
        return Command.run(account.command(command));
    }

    private String path(String name) {
        return programs.program(name).toString();
    }
}
