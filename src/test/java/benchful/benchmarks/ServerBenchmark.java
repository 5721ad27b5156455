package benchful.benchmarks;

import benchful.classes.ClassFile;
import benchful.core.lesson.StepKind;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.samples.SampleFiles;
import benchful.web.forms.SpecFormat;
import java.io.IOException;
import java.io.PrintStream;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Starts the packaged program on an empty data folder and again on the same one, and prints the time to the first page; then
 * the median and 95th percentile of {@code POST /api/plan} for a class of 12 with 25 steps, one caller, after a warm-up, first
 * without suggestions and then with them.
 * Run after {@code mvn -q -DskipTests package}.
 */
public final class ServerBenchmark {
    private static final int CALLS = 300;
    private static final int CALLS_WITH_SUGGESTIONS = 40;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private ServerBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        PrintStream out = System.out;
        Path data = Files.createTempDirectory("benchful-benchmark");
        for (String start : List.of("first start, empty data folder", "later start")) {
            int port = freePort();
            long begun = System.nanoTime();
            Process program = program(port, data);
            try {
                awaitFirstPage(port);
                out.printf("%s: first page after %.1f s%n", start, (System.nanoTime() - begun) / 1e9);
                if (start.startsWith("later")) {
                    calls(port, "order and chance", "", CALLS, out);
                    calls(port, "all of it, with suggestions", "?suggestions=true", CALLS_WITH_SUGGESTIONS, out);
                }
            } finally {
                program.destroy();
                program.waitFor(30, TimeUnit.SECONDS);
            }
        }
    }

    private static void calls(int port, String what, String query, int number, PrintStream out) throws Exception {
        byte[] file = SpecFormat.json().writeValueAsBytes(classOfTwelve());
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d/api/plan%s".formatted(port, query)))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofByteArray(file)).build();
        long[] times = new long[number];
        for (int i = -number / 5; i < number; i++) {
            long begun = System.nanoTime();
            HttpResponse<String> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException("The plan was answered with " + answer.statusCode() + ": " + answer.body());
            }
            if (i >= 0) {
                times[i] = System.nanoTime() - begun;
            }
        }
        Arrays.sort(times);
        out.printf("POST /api/plan, %s, 12 students, 25 steps, %d calls: median %.0f ms, p95 %.0f ms, greatest %.0f ms%n",
                what, number, times[number / 2] / 1e6, times[number * 95 / 100] / 1e6, times[number - 1] / 1e6);
    }

    /** The knotted strand for twelve, filled up to 25 steps. */
    private static ClassFile classOfTwelve() {
        SampleFiles files = SampleFiles.read();
        SampleFiles.SampleClass c = files.classes().stream().filter(x -> x.setup().title() != null && x.setup().title().startsWith("Knotted strand, Saturday")).findFirst().orElseThrow();
        ProjectSpec project = files.projects().stream().filter(p -> p.name().equals(c.project())).findFirst().orElseThrow();
        return new ClassFile(filled(project), c.setup().withHeadcount(12),
                files.venues().stream().filter(v -> v.name().equals(c.venue())).findFirst().orElseThrow(),
                files.catalogue().materials(), files.catalogue().suppliers());
    }

    private static ProjectSpec filled(ProjectSpec p) {
        List<Step> steps = new ArrayList<>(p.steps());
        while (steps.size() < 25) {
            int n = steps.size();
            steps.add(Step.of("extra_" + n, "Extra " + n, StepKind.MAKE)
                    .withStudent(new Step.StudentTime(Duration.ofMinutes(2), Duration.ofMinutes(3), Duration.ofMinutes(5)))
                    .withAfter(List.of(new Step.After("welcome", null, null))));
        }
        return p.withSteps(steps);
    }

    private static Process program(int port, Path data) throws IOException {
        return new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"),
                        "-Dquarkus.http.port=" + port, "-Dbenchful.data=" + data, "-jar", "target/quarkus-app/quarkus-run.jar")
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    }

    private static void awaitFirstPage(int port) throws InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d/".formatted(port))).build();
        for (int tries = 0; tries < 3000; tries++) {
            try {
                if (CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200) {
                    return;
                }
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(50);
            }
        }
        throw new IllegalStateException("The program did not answer.");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
