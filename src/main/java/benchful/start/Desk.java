package benchful.start;

import benchful.database.OwnFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * A start by a double press, where nobody sees a console: the browser is opened, a second start opens the one that runs, what is
 * told goes to a file, and where it can't start a page says why. The package for a tutor's own machine sets {@code benchful.desk}.
 */
public final class Desk {
    private static final int USUAL_PORT = 8080;
    private static final int PORTS = 20;
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final Path folder;
    private final Function<String, Optional<String>> settings;

    private Desk(Path folder, Function<String, Optional<String>> settings) {
        this.folder = folder;
        this.settings = settings;
    }

    /** Nothing where the program is started otherwise. */
    public static Optional<Desk> one() {
        return Boolean.getBoolean("benchful.desk") ? Optional.of(of(Desk::setting)) : Optional.empty();
    }

    static Desk of(Function<String, Optional<String>> settings) {
        return new Desk(OwnFolder.of(settings), settings);
    }

    /** A property of the start, or a variable of the system. */
    private static Optional<String> setting(String name) {
        return Optional.ofNullable(System.getProperty(name)).or(() -> Optional.ofNullable(System.getenv(StartFailure.variable(name))));
    }

    /** Where a program answers that was started on the same folder. */
    Optional<String> running() {
        try {
            String address = Files.readString(addressFile()).strip();
            HttpRequest request = HttpRequest.newBuilder(URI.create(address + "/q/health/ready")).timeout(PATIENCE).build();
            boolean answers = HttpClient.newBuilder().connectTimeout(PATIENCE).build().send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
            return answers ? Optional.of(address) : Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** What the platform is told: to write what it tells to a file, and a port that is free where none is set. */
    Map<String, String> platform() {
        OwnFolder.make(folder);
        Map<String, String> all = new HashMap<>(Map.of("quarkus.log.file.enabled", "true", "quarkus.log.file.path", logFile().toString(),
                "quarkus.log.file.rotation.max-file-size", "1M", "quarkus.log.file.rotation.max-backup-index", "2"));
        if (settings.apply("quarkus.http.port").isEmpty()) {
            IntStream.range(USUAL_PORT, USUAL_PORT + PORTS).filter(Desk::isFree).findFirst().ifPresent(port -> all.put("quarkus.http.port", String.valueOf(port)));
        }
        return all;
    }

    private static boolean isFree(int port) {
        try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return socket.isBound();
        } catch (IOException taken) {
            return false;
        }
    }

    /** Ready: a second start finds it there. */
    void ready(String address) throws IOException {
        Files.writeString(addressFile(), address);
        Browser.open(address);
    }

    void over() throws IOException {
        Files.deleteIfExists(addressFile());
    }

    /** What nobody foresaw is written down whole, for who can mend it. */
    String unforeseen(Throwable failure) {
        StringWriter trace = new StringWriter();
        failure.printStackTrace(new PrintWriter(trace, true));
        try {
            Path log = Files.writeString(logFile(), trace.toString(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            return "Something went wrong that nobody foresaw. What was saved is safe. The end of the file " + log + " tells more.";
        } catch (IOException e) {
            return "Something went wrong that nobody foresaw: " + failure + ". What was saved is safe.";
        }
    }

    /** Shows why it does not start. */
    void failed(String words) {
        try {
            Path page = Files.createTempFile("benchful-does-not-start", ".html");
            Files.writeString(page, """
                    <!doctype html><html lang="en"><head><meta charset="utf-8"><title>Benchful does not start</title></head>
                    <body><h1>Benchful does not start</h1><p>%s</p></body></html>
                    """.formatted(words.replace("&", "&amp;").replace("<", "&lt;")));
            Browser.open(page.toUri().toString());
        } catch (IOException noRoom) {
            throw new UncheckedIOException(words, noRoom);
        }
    }

    private Path logFile() {
        return folder.resolve("benchful.log");
    }

    private Path addressFile() {
        return folder.resolve("address");
    }
}
