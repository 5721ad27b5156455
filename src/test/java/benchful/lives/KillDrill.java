package benchful.lives;

import benchful.web.Visitor;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jsoup.nodes.Element;

/**
 * Kills the program or its database in the middle of writing, again and again, and compares what was acknowledged with what is
 * there: movements of stock by their notes, ticks on a packing list one by one, and the ledger with the ticks.
 * Run after {@code mvn -q -DskipTests package}; takes the number of kills and of writes.
 */
public final class KillDrill {
    private static final Duration MOST = Duration.ofMinutes(40);

    private final Path data;
    private final int port;
    private final int writes;
    private final Random random = new Random(7);
    private final AtomicInteger asked = new AtomicInteger();
    private final Set<String> acknowledged = new TreeSet<>();
    private final Set<String> unanswered = new TreeSet<>();
    /** By kit and material: whether it is ticked; left out while its last press was not answered. */
    private final Map<List<String>, Boolean> ticks = new HashMap<>();
    private volatile boolean over;
    private Process program;

    private KillDrill(Path data, int port, int writes) {
        this.data = data;
        this.port = port;
        this.writes = writes;
    }

    public static void main(String[] arguments) throws Exception {
        int kills = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 50;
        int writes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2000;
        try (ServerSocket free = new ServerSocket(0)) {
            int port = free.getLocalPort();
            free.close();
            new KillDrill(Files.createTempDirectory("benchful-kills"), port, writes).run(kills, System.out);
        }
    }

    private void run(int kills, PrintStream out) throws Exception {
        start();
        new Visitor(url()).open("/").press("Load the sample classes");
        long material = Long.parseLong(new Visitor(url()).open("/materials").page().selectFirst("main a[href~=^/materials/\\d+$]").attr("href").replaceAll("\\D", ""));
        Thread movements = writer(() -> move(material));
        Thread packing = writer(this::tick);
        long end = System.nanoTime() + MOST.toNanos();
        int done = 0;
        while (done < kills && System.nanoTime() < end) {
            TimeUnit.MILLISECONDS.sleep(800 + random.nextInt(4000));
            if (done++ % 2 == 0) {
                killProgram();
            } else {
                killDatabase();
            }
        }
        while (asked.get() < writes && System.nanoTime() < end) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
        over = true;
        movements.join();
        packing.join();
        TimeUnit.SECONDS.sleep(2);
        report(done, material, out);
        program.destroy();
        program.waitFor(30, TimeUnit.SECONDS);
    }

    private Thread writer(Runnable write) {
        Thread thread = new Thread(() -> {
            while (!over) {
                try {
                    write.run();
                } catch (UncheckedIOException | AssertionError | NullPointerException gone) {
                    pause();
                }
            }
        });
        thread.start();
        return thread;
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(200);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void move(long material) {
        if (asked.get() >= writes) {
            pause();
            return;
        }
        Visitor tutor = new Visitor(url()).open("/materials/" + material);
        String note = "movement " + asked.incrementAndGet();
        tutor.type("/kind", "received").type("/amount", "1").type("/note", note);
        boolean kept = false;
        try {
            kept = tutor.press("Write it down").status() == 200;
        } finally {
            (kept ? acknowledged : unanswered).add(note);
        }
    }

    private void tick() {
        if (asked.get() >= writes) {
            pause();
            return;
        }
        Visitor tutor = new Visitor(url()).open("/classes/2/packing");
        List<Element> boxes = tutor.page().select("input[type=checkbox][name^=ticked-]");
        if (boxes.isEmpty()) {
            // The database is just being started again.
            pause();
            return;
        }
        Element box = boxes.get(random.nextInt(boxes.size()));
        Element section = box.closest("section");
        List<String> what = List.of(section.selectFirst("input[name=kit]").val(), box.val());
        boolean ticked = !box.hasAttr("checked");
        if (ticked) {
            box.attr("checked", true);
        } else {
            box.removeAttr("checked");
        }
        asked.incrementAndGet();
        ticks.remove(what);
        if (tutor.press(section.selectFirst("button[name=place]")).status() == 200) {
            ticks.put(what, ticked);
        }
    }

    private void start() throws IOException, InterruptedException {
        program = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx600m",
                "-Dquarkus.http.port=" + port, "-Dbenchful.data=" + data, "-jar", "target/quarkus-app/quarkus-run.jar")
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.appendTo(data.resolve("console.log").toFile())).start();
        for (int tries = 0; tries < 1200; tries++) {
            try {
                if (new Visitor(url()).open("/hazards").status() == 200) {
                    return;
                }
            } catch (UncheckedIOException | AssertionError notYet) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
        }
        throw new IllegalStateException("The program did not come back; see " + data.resolve("console.log"));
    }

    private void killProgram() throws IOException, InterruptedException {
        program.destroyForcibly().waitFor();
        start();
    }

    /** The server and all its workers at once, as a power cut would. */
    private void killDatabase() throws IOException {
        ProcessHandle.of(Long.parseLong(postmaster().get(0))).ifPresent(server -> {
            server.descendants().forEach(ProcessHandle::destroyForcibly);
            server.destroyForcibly();
        });
    }

    private List<String> postmaster() throws IOException {
        return Files.readAllLines(files("postgres-\\d+").resolve("postmaster.pid"));
    }

    private Path files(String name) throws IOException {
        try (var all = Files.list(data)) {
            return all.filter(p -> p.getFileName().toString().matches(name)).findFirst().orElseThrow();
        }
    }

    private void report(int kills, long material, PrintStream out) throws IOException, SQLException {
        String password = Files.readString(files("postgres-\\d+\\.password")).strip();
        String url = "jdbc:postgresql://127.0.0.1:%s/benchful".formatted(postmaster().get(3));
        try (Connection database = DriverManager.getConnection(url, "benchful", password); Statement ask = database.createStatement()) {
            Map<String, Integer> notes = new TreeMap<>();
            ResultSet rows = ask.executeQuery("select note, count(*) from stock_movement where note like 'movement %' and material_id = " + material + " group by note");
            while (rows.next()) {
                notes.put(rows.getString(1), rows.getInt(2));
            }
            long lost = acknowledged.stream().filter(n -> !notes.containsKey(n)).count();
            long doubled = notes.values().stream().filter(n -> n > 1).count();
            long strange = notes.keySet().stream().filter(n -> !acknowledged.contains(n) && !unanswered.contains(n)).count();
            Set<List<String>> packed = new java.util.HashSet<>();
            ResultSet contents = ask.executeQuery("select kit, material from packed_content where class_id = 2");
            while (contents.next()) {
                packed.add(List.of(contents.getString(1), contents.getString(2)));
            }
            long wrong = ticks.entrySet().stream().filter(t -> packed.contains(t.getKey()) != t.getValue()).count();
            ResultSet unbalanced = ask.executeQuery("""
                    select count(*) from (select material_id, sum(amount) moved from stock_movement where class_id = 2 group by material_id) m
                    full join (select material_id, count(*) ticked from packed_content where class_id = 2 group by material_id) p using (material_id)
                    where material_id is not null and (coalesce(moved, 0) = 0) <> (coalesce(ticked, 0) = 0)""");
            unbalanced.next();
            out.printf("%d kills during %d writes, %d answered movements and %d known ticks compared: %d lost, %d doubled, %d unknown movements; %d wrong ticks, %d materials whose ledger contradicts their ticks%n",
                    kills, asked.get(), acknowledged.size(), ticks.size(), lost, doubled, strange, wrong, unbalanced.getInt(1));
            if (lost + doubled + strange + wrong + unbalanced.getInt(1) > 0) {
                throw new IllegalStateException("Something was lost or doubled.");
            }
        }
    }

    private URL url() {
        try {
            return URI.create("http://127.0.0.1:" + port).toURL();
        } catch (java.net.MalformedURLException e) {
            throw new UncheckedIOException(e);
        }
    }
}
