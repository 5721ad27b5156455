package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchful.web.Visitor;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts the packaged program where it can't start, and reads what a person would then read. */
class StartIT {
    @TempDir
    static Path home;

    private static Program running;
    private static int port;

    @BeforeAll
    static void startTheFirst() throws Exception {
        Files.createDirectories(passing());
        port = freePort();
        running = Program.start(passing(), Map.of("BENCHFUL_DATA", data().toString(), "QUARKUS_HTTP_PORT", "" + port)).whenReady();
    }

    @AfterAll
    static void stop() {
        if (running != null) {
            running.close();
        }
    }

    @Test
    void listsTheLicencesOfWhatItIsBuiltFrom() throws Exception {
        assertThat(running.get("/licences").body())
                .contains("org.postgresql:postgresql", "BSD-2-Clause", "com.google.ortools:ortools-java", "Apache-2.0");
    }

    @Test
    void saysThatAPortIsTaken() throws Exception {
        assertThat(refusal(Map.of("QUARKUS_HTTP_PORT", "" + port)))
                .contains("Port " + port + " of 127.0.0.1 is taken", "QUARKUS_HTTP_PORT=" + (port + 1));
    }

    @Test
    void saysThatAPortIsNone() throws Exception {
        assertThat(refusal(Map.of("QUARKUS_HTTP_PORT", "99999"))).contains("QUARKUS_HTTP_PORT", "from 1024 to 65535");
        assertThat(refusal(Map.of("QUARKUS_HTTP_PORT", "eighty"))).contains("quarkus.http.port", "“eighty”", "QUARKUS_HTTP_PORT");
    }

    @Test
    void saysThatItRunsAlreadyOnTheFolder() throws Exception {
        assertThat(refusal(Map.of("BENCHFUL_DATA", data().toString())))
                .contains("already running on the data folder " + data(), "benchful.data");
    }

    @Test
    void saysThatTheFolderOrAnAddressIsNone() throws Exception {
        Path file = Files.createFile(home.resolve("a file"));

        assertThat(refusal(Map.of("BENCHFUL_DATA", file.toString()))).contains("The data folder " + file + " is a file");
        assertThat(refusal(Map.of("BENCHFUL_DATA", file.resolve("below").toString())))
                .contains("The data folder " + file.resolve("below") + " can't be made, as " + file + " is a file");
        assertThat(refusal(Map.of("BENCHFUL_PUBLIC_ADDRESS", "192.0.2.7:8080"))).contains("benchful.public-address", "“192.0.2.7:8080”");
    }

    @Test
    void saysThatTheDiskIsFull() throws Exception {
        Path small = Files.createDirectory(home.resolve("small"));
        assumeTrue(ran("mount", "-t", "tmpfs", "-o", "size=30m", "none", small.toString()), "only root can make a small disk");
        try {
            assertThat(refusal(Map.of("BENCHFUL_DATA", small.resolve("data").toString()))).contains("disk is full", "ake room on it");
        } finally {
            ran("umount", small.toString());
        }
    }

    @Test
    void saysThatTheServerCanNotBeReachedOrLetsNobodyIn() throws Exception {
        Map<String, String> wrongPort = Map.of("QUARKUS_DATASOURCE_JDBC_URL", "jdbc:postgresql://127.0.0.1:" + freePort() + "/benchful");
        Map<String, String> wrongPassword = Map.of("QUARKUS_DATASOURCE_JDBC_URL", url(), "QUARKUS_DATASOURCE_PASSWORD", "guess");

        assertThat(refusal(wrongPort)).contains("can't be reached", "QUARKUS_DATASOURCE_JDBC_URL");
        assertThat(refusal(wrongPassword)).contains("QUARKUS_DATASOURCE_USERNAME and QUARKUS_DATASOURCE_PASSWORD").doesNotContain("guess");
    }

    @Test
    void saysThatTheDataAreNewer() throws Exception {
        Path newer = home.resolve("newer");
        Map<String, String> settings = Map.of("BENCHFUL_DATA", newer.toString(), "QUARKUS_HTTP_PORT", "" + freePort());
        Program first = Program.start(passing(), settings).whenReady();
        try (Connection database = connect(newer); Statement statement = database.createStatement()) {
            statement.execute("""
                    insert into flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, execution_time, success)
                    select max(installed_rank) + 1, '9001', 'later', 'SQL', 'V9001__later.sql', 1, 'benchful', 1, true from flyway_schema_history""");
        } finally {
            first.close();
        }

        assertThat(refusal(settings)).contains("written by another version of Benchful", "BENCHFUL_DATA");
    }

    @Test
    void leavesNoFontsBehindWhenItIsStopped() throws Exception {
        Path passing = Files.createDirectory(home.resolve("passing by"));
        Program program = Program.start(passing, Map.of("BENCHFUL_DATA", home.resolve("stopped").toString(), "QUARKUS_HTTP_PORT", "" + freePort()));
        try (program) {
            planAndPrint(program.whenReady());
            assertThat(names(passing)).anyMatch(name -> name.startsWith("benchful-fonts"));
        }

        assertThat(names(passing)).noneMatch(name -> name.startsWith("benchful-fonts"));
    }

    @Test
    void clearsAwayTheSolverOfAKilledProgram() throws Exception {
        Path passing = Files.createDirectory(home.resolve("killed"));
        Map<String, String> settings = Map.of("BENCHFUL_DATA", home.resolve("killed data").toString(), "QUARKUS_HTTP_PORT", "" + freePort());
        Program killed = Program.start(passing, settings);
        planAndPrint(killed.whenReady());
        killed.kill();
        List<String> left = solvers(passing);
        assertThat(left).hasSize(1);

        try (Program next = Program.start(passing, settings)) {
            assertThat(next.whenReady().get("/").statusCode()).isEqualTo(200);
            assertThat(solvers(passing)).doesNotContainAnyElementsOf(left);
        }
    }

    private static List<String> solvers(Path passing) throws IOException {
        return names(passing).stream().filter(name -> name.startsWith("ortools-java")).toList();
    }

    /** Asks for what the solver and the fonts are needed for. */
    private static void planAndPrint(Program program) throws IOException, InterruptedException {
        Visitor tutor = new Visitor(program.address().toURL());
        tutor.open("/").press("Load the sample classes").open("/classes");
        String planned = tutor.page().selectFirst("main a[href~=^/classes/\\d+$]").attr("href");

        assertThat(program.get(planned).statusCode()).isEqualTo(200);
        assertThat(program.get(planned + "/documents/labels.pdf").body()).startsWith("%PDF");
    }

    /** Starts with the settings, which must not go well. */
    private static String refusal(Map<String, String> settings) throws Exception {
        Map<String, String> all = new TreeMap<>(Map.of("BENCHFUL_DATA", home.resolve("another").toString(), "QUARKUS_HTTP_PORT", "" + freePort()));
        all.putAll(settings);
        try (Program program = Program.start(passing(), all)) {
            assertThat(program.code()).as(program.said()).isNotZero();
            String said = program.said();
            assertThat(said).doesNotContain("\tat ", "Exception", "io.quarkus", "org.", "java.", "kill -9", "Benchful is ready");
            assertThat(said.lines().filter(line -> !line.contains(" INFO "))).as(said).hasSizeLessThan(3);
            return said;
        }
    }

    private static String url() throws IOException {
        return "jdbc:postgresql://127.0.0.1:" + databasePort(data()) + "/benchful";
    }

    private static Connection connect(Path folder) throws IOException, SQLException {
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:" + databasePort(folder) + "/benchful", "benchful",
                Files.readString(folder.resolve("postgres-17.password")));
    }

    private static String databasePort(Path folder) throws IOException {
        return Files.readAllLines(folder.resolve("postgres-17/postmaster.pid")).get(3);
    }

    private static Path data() {
        return home.resolve("data");
    }

    private static Path passing() {
        return home.resolve("passing");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            // What the Java machine itself leaves when it is killed.
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.startsWith("hsperfdata")).toList();
        }
    }

    private static boolean ran(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
    }

    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
