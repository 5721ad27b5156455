package benchful.start;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The packaged program, started as a person starts it, with settings as variables of the system. */
final class Program implements AutoCloseable {
    private static final Path JAR = Path.of("target", "quarkus-app", "quarkus-run.jar").toAbsolutePath();
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private final Process process;
    private final Path output;
    private final int port;

    private Program(Process process, Path output, int port) {
        this.process = process;
        this.output = output;
        this.port = port;
    }

    /**
     * @param folder   where it may leave what it writes for the moment
     * @param settings of the person; its port and its folder of data are among them
     */
    static Program start(Path folder, Map<String, String> settings) throws IOException {
        return start(List.of(ProcessHandle.current().info().command().orElseThrow(), "-Xmx512m", "-Djava.io.tmpdir=" + folder, "-jar", JAR.toString()), settings);
    }

    /** By another command, given in the folder of the project. */
    static Program start(List<String> command, Map<String, String> settings) throws IOException {
        Path output = Files.createTempFile("program", ".out");
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().keySet().removeIf(name -> name.startsWith("QUARKUS_") || name.startsWith("BENCHFUL_"));
        builder.environment().putAll(settings);
        Process process = builder.redirectErrorStream(true).redirectOutput(output.toFile()).start();
        return new Program(process, output, Integer.parseInt(settings.getOrDefault("QUARKUS_HTTP_PORT", "0").replaceAll("\\D+", "0")));
    }

    Program whenReady() throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!answers()) {
            if (!process.isAlive() || System.nanoTime() > end) {
                throw new AssertionError("The program did not start: " + said());
            }
            Thread.sleep(200);
        }
        return this;
    }

    private boolean answers() throws InterruptedException {
        try {
            return get("q/health/ready").statusCode() == 200;
        } catch (IOException notYet) {
            return false;
        }
    }

    /** Waits for its end. */
    int code() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("The program still runs");
        }
        return process.exitValue();
    }

    String said() throws IOException {
        return Files.readString(output, Charset.defaultCharset());
    }

    URI address() {
        return URI.create("http://127.0.0.1:" + port + "/");
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(address().resolve(path)).timeout(PATIENCE).build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** As Ctrl+C does, which reaches what it started too. */
    @Override
    public void close() {
        process.descendants().forEach(ProcessHandle::destroy);
        process.destroy();
        process.onExit().join();
    }
}
