package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchful.web.Visitor;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The package for a tutor's own machine, made and started where there is no Java on the path, in a home folder with nothing in it. */
class DeskPackageIT {
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    @TempDir
    static Path place;

    private static Path starter;
    private static Path shown;

    @BeforeAll
    static void make() throws IOException {
        assumeTrue(System.getProperty("os.name").startsWith("Linux"), "the package of this system is tried by hand");
        assumeTrue(ToolProvider.findFirst("jpackage").isPresent(), "this Java has no jpackage");
        Path folder = DeskPackage.folder(place, "1.0.0");
        starter = DeskPackage.starter(folder).toAbsolutePath();
        System.out.printf("The package: %d MB%n", DeskPackage.bytes(folder) >> 20);
        shown = browser();
    }

    @AfterAll
    static void end() {
        ProcessHandle.allProcesses().filter(p -> p.info().command().filter(c -> c.startsWith(place.toString())).isPresent()).forEach(ProcessHandle::destroyForcibly);
    }

    /** A browser that writes down what it is asked to show. */
    private static Path browser() throws IOException {
        Path folder = Files.createDirectory(place.resolve("path"));
        Path asked = folder.resolve("asked");
        Path opener = Files.writeString(folder.resolve("xdg-open"), "#!/bin/sh\necho \"$1\" >> " + asked + "\n");
        assertThat(opener.toFile().setExecutable(true)).isTrue();
        return asked;
    }

    private static Process press(String home) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(starter.toString());
        builder.environment().clear();
        builder.environment().putAll(Map.of("PATH", shown.getParent() + ":/bin", "HOME", Files.createDirectories(place.resolve(home)).toString(), "LANG", "C.UTF-8"));
        return builder.redirectErrorStream(true).redirectOutput(place.resolve(home + ".out").toFile()).start();
    }

    /** How often something was shown. */
    private static int times() throws IOException {
        return Files.exists(shown) ? Files.readAllLines(shown).size() : 0;
    }

    /** What was shown for the so many-th time. */
    private static String shown(int times) throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            List<String> asked = Files.exists(shown) ? Files.readAllLines(shown) : List.of();
            if (asked.size() >= times) {
                return asked.get(times - 1);
            }
            Thread.sleep(100);
        }
        throw new AssertionError("No browser was opened: " + Files.readString(place.resolve("home.out")));
    }

    @Test
    void opensTheBrowserPlansPrintsIsFoundAgainAndStops() throws Exception {
        int before = times();
        long begun = System.nanoTime();
        Process program = press("home");
        String address = shown(before + 1);
        System.out.printf("The package's first start, to the browser: %.1f s%n", (System.nanoTime() - begun) / 1e9);

        Visitor tutor = new Visitor(URI.create(address).toURL()).open("/").press("Load the sample classes").open("/classes");
        String planned = tutor.page().selectFirst("main a[href~=^/classes/\\d+$]").attr("href");
        assertThat(tutor.open(planned).status()).isEqualTo(200);
        for (String print : List.of("plan", "checklist", "labels")) {
            assertThat(new String(tutor.open(planned + "/documents/" + print + ".pdf").bytes(), StandardCharsets.ISO_8859_1)).as(print).startsWith("%PDF-");
        }
        long resident = resident(program);
        System.out.printf("The package in memory, without its database: %d MB%n", resident);
        assertThat(resident).as("MB").isLessThan(600);

        assertThat(press("home").waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).as("a second start ends").isTrue();
        assertThat(shown(before + 2)).as("and shows the first").isEqualTo(address);

        assertThat(tutor.open("/").page().select("footer a[href=/stop]").eachText()).containsExactly("Stop Benchful");
        assertThat(tutor.open("/stop").press("Stop it").page().select("h1").text()).isEqualTo("Benchful has stopped");
        assertThat(program.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
        assertThat(program.exitValue()).isZero();
        assertThat(place.resolve("home/.benchful/address")).doesNotExist();
        assertThat(place.resolve("home/.benchful/benchful.log")).content().contains("Benchful is ready");
    }

    @Test
    void showsAPageWhereItCantStart() throws Exception {
        Path home = Files.createDirectories(place.resolve("spoilt"));
        Files.writeString(home.resolve(".benchful"), "not a folder");
        int before = times();
        assertThat(press("spoilt").waitFor()).isNotZero();
        assertThat(Path.of(URI.create(shown(before + 1)))).content().contains("Benchful does not start", "is a file");
    }

    /** Of the process and of those below it that run the program, as a starter may stand above it [MB]. */
    private static long resident(Process program) throws IOException {
        long most = 0;
        for (ProcessHandle one : Stream.concat(Stream.of(program.toHandle()), program.toHandle().descendants()).toList()) {
            if (one.info().command().filter(c -> c.startsWith(starter.getParent().getParent().toString())).isPresent()) {
                String kb = Files.readAllLines(Path.of("/proc/" + one.pid() + "/status")).stream().filter(line -> line.startsWith("VmRSS")).findFirst().orElse("0").replaceAll("\\D", "");
                most = Math.max(most, Long.parseLong(kb) >> 10);
            }
        }
        return most;
    }
}
