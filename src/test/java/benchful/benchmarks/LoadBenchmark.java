package benchful.benchmarks;

import benchful.projects.Step;
import benchful.samples.SampleFiles;
import benchful.web.Visitor;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Asks for the pages that a tutor opens daily, by 1, 8 and 32 clients at once ({@code -Dbenchful.load.clients=1,8,32}), first with the
 * sample classes and then with years of invented work beside them ({@link InventedDatabase}), and prints p50, p95, p99 [ms], how many answers were errors, what an
 * answer took of a processor without the database [ms], and how busy the machine was with all that it did (the load of the last
 * minute). Each figure is of at most {@value #MOST} answers and the seconds of {@code -Dbenchful.load.seconds} (else 30). The program is started from its package, on a data
 * folder of its own and 127.0.0.1. Pages of a class are those of the same sample classes both times, those of the next classes in the
 * second are of invented ones. Run after {@code mvn -q -DskipTests package}.
 */
public final class LoadBenchmark {
    private static final int MOST = 128;
    private static final int MOST_SECONDS = Integer.getInteger("benchful.load.seconds", 30);
    private static final List<Integer> CLIENTS = Stream.of(System.getProperty("benchful.load.clients", "1,8,32").split(",")).map(Integer::valueOf).toList();
    private static final HttpClient CLIENT = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

    private final ProcessHandle program;
    private final int port;
    private final PrintStream out;

    private LoadBenchmark(ProcessHandle program, int port, PrintStream out) {
        this.program = program;
        this.port = port;
        this.out = out;
    }

    public static void main(String[] arguments) throws Exception {
        Path data = Files.createTempDirectory("benchful-load");
        int port = freePort();
        Process program = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx512m", "-Dquarkus.http.port=" + port,
                "-Dbenchful.data=" + data, "-jar", "target/quarkus-app/quarkus-run.jar")
                .redirectErrorStream(true).redirectOutput(data.resolve("program.log").toFile()).start();
        try {
            new LoadBenchmark(program.toHandle(), port, System.out).run(data);
        } finally {
            program.destroy();
            program.waitFor(30, TimeUnit.SECONDS);
        }
    }

    private void run(Path data) throws Exception {
        await();
        new Visitor(URI.create("http://127.0.0.1:" + port + "/").toURL()).open("/").press("Load the sample classes");
        out.println("page | clients | small: p50 p95 p99 [ms], errors, processor [ms], load | big: the same");
        Map<String, String> small = measured(data);
        long begun = System.nanoTime();
        InventedDatabase.fill(data, steps());
        out.printf("filled in %.0f s: %d classes, %d materials, %d movements%n", (System.nanoTime() - begun) / 1e9,
                InventedDatabase.number(data, "select count(*) from craft_class"), InventedDatabase.number(data, "select count(*) from material"),
                InventedDatabase.number(data, "select count(*) from stock_movement"));
        Map<String, String> big = measured(data);
        big.forEach((figure, value) -> out.println(figure + " | " + small.getOrDefault(figure, "") + " | " + value));
    }

    /** Those of a sample project, without what they name of it beside tools. */
    private static List<Step> steps() {
        return SampleFiles.read().projects().stream().filter(p -> p.name().startsWith("Plant hanger") || p.craft().equals("macrame")).findFirst().orElseThrow()
                .steps().stream().map(s -> s.withRepeats(null).withTools(List.of()).withHazards(List.of()).withText(null)
                        .withLeftHanded(null).withPictures(List.of()).withLink(null)).toList();
    }

    /** By page and number of clients. */
    private Map<String, String> measured(Path data) throws Exception {
        Map<String, String> figures = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> page : pages(data).entrySet()) {
            warm(page.getValue());
            for (int clients : CLIENTS) {
                String figure = figure(page.getValue(), clients);
                out.println(page.getKey() + " | " + clients + " | " + figure);
                figures.put(page.getKey() + " | " + clients, figure);
            }
        }
        return figures;
    }

    private static Map<String, List<String>> pages(Path data) throws Exception {
        long material = InventedDatabase.number(data, "select material_id from stock_movement group by 1 order by count(*) desc limit 1");
        List<Long> classes = classes(data, "sample and ends_at > now()");
        List<Long> next = classes(data, "ends_at > now()");
        List<Long> projects = new ArrayList<>();
        for (long id : classes) {
            projects.add(InventedDatabase.number(data, "select project_id from craft_class where id = " + id));
        }
        Map<String, List<String>> pages = new LinkedHashMap<>();
        pages.put("first page", List.of("/"));
        pages.put("classes", List.of("/classes"));
        pages.put("a class", classes.stream().map(id -> "/classes/" + id).toList());
        pages.put("its packing", classes.stream().map(id -> "/classes/" + id + "/packing").toList());
        pages.put("materials", List.of("/materials"));
        pages.put("materials sought", List.of("/materials?find=1"));
        pages.put("a material", List.of("/materials/" + material));
        pages.put("projects", List.of("/projects"));
        pages.put("what to buy", List.of("/orders/new"));
        pages.put("what to buy for the samples", List.of("/orders/new?" + classes.stream().map(id -> "class=" + id).collect(Collectors.joining("&"))));
        pages.put("orders", List.of("/orders"));
        pages.put("suppliers", List.of("/suppliers"));
        pages.put("venues", List.of("/venues"));
        pages.put("kits for sale", List.of("/batches"));
        pages.put("a project", projects.stream().map(id -> "/projects/" + id).toList());
        pages.put("its form", projects.stream().map(id -> "/projects/" + id + "/edit").toList());
        pages.put("a class's form", classes.stream().map(id -> "/classes/" + id + "/setup").toList());
        pages.put("its print-outs", classes.stream().map(id -> "/classes/" + id + "/documents").toList());
        pages.put("its plan, printed", classes.stream().map(id -> "/classes/" + id + "/documents/plan.pdf").toList());
        pages.put("a next class", next.stream().map(id -> "/classes/" + id).toList());
        pages.put("its print-outs (next)", next.stream().map(id -> "/classes/" + id + "/documents").toList());
        pages.put("its plan, printed (next)", next.stream().map(id -> "/classes/" + id + "/documents/plan.pdf").toList());
        return pages;
    }

    /** The next five of them at most. */
    private static List<Long> classes(Path data, String which) throws Exception {
        List<Long> classes = new ArrayList<>();
        for (long n = Math.min(5, InventedDatabase.number(data, "select count(*) from craft_class where " + which)); n > 0; n--) {
            classes.add(InventedDatabase.number(data, "select id from craft_class where " + which + " order by starts_at, id limit 1 offset " + classes.size()));
        }
        return classes;
    }

    private void warm(List<String> paths) throws Exception {
        for (int i = 0; i < 3 * paths.size(); i++) {
            ask(paths.get(i % paths.size()));
        }
    }

    private String figure(List<String> paths, int clients) throws Exception {
        List<Long> times = Collections.synchronizedList(new ArrayList<>());
        AtomicInteger errors = new AtomicInteger();
        AtomicInteger next = new AtomicInteger();
        Duration worked = worked();
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        int most = Math.min(MOST, clients == 1 ? 30 : 4 * clients);
        ExecutorService all = Executors.newFixedThreadPool(clients);
        for (int c = 0; c < clients; c++) {
            all.execute(() -> {
                for (int n = next.getAndIncrement(); n < most && System.nanoTime() < until; n = next.getAndIncrement()) {
                    timed(paths.get(n % paths.size()), times, errors);
                }
            });
        }
        all.shutdown();
        all.awaitTermination(10L * MOST_SECONDS, TimeUnit.SECONDS);
        return words(times, errors.get(), worked().minus(worked));
    }

    /** By all processors together, since the program was started. */
    private Duration worked() {
        return program.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private static String words(List<Long> times, int errors, Duration worked) {
        List<Long> sorted = times.stream().sorted().toList();
        int n = sorted.size();
        return n == 0 ? "none, " + errors + " errors"
                : "%d %d %d, %d of %d, %d, %.0f".formatted(sorted.get(n / 2), sorted.get(Math.min(n - 1, n * 95 / 100)), sorted.get(Math.min(n - 1, n * 99 / 100)), errors, n,
                        worked.toMillis() / n, ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private void timed(String path, List<Long> times, AtomicInteger errors) {
        long begun = System.nanoTime();
        try {
            if (ask(path) != 200) {
                errors.incrementAndGet();
            }
        } catch (IOException e) {
            errors.incrementAndGet();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        times.add((System.nanoTime() - begun) / 1_000_000);
    }

    private int ask(String path) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d%s".formatted(port, path))).timeout(Duration.ofSeconds(120)).build(),
                HttpResponse.BodyHandlers.discarding()).statusCode();
    }

    private void await() throws InterruptedException {
        for (int tries = 0; tries < 1200; tries++) {
            try {
                if (ask("/") == 200) {
                    return;
                }
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(100);
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
