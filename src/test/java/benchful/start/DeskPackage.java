package benchful.start;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;

/**
 * Makes of the packaged program one that a tutor starts by a double press and that needs nothing installed: the program, a Java
 * runtime of the parts it uses, and settings for one person's machine. It makes the package of the system it runs on, by the
 * tools of the JDK: a folder and an archive of it, and on Linux a {@code .deb} where {@code dpkg} is there.
 */
public final class DeskPackage {
    static final String NAME = "Benchful";
    private static final String STARTER = "quarkus-run.jar";
    private static final Path PROGRAM = Path.of("target", "quarkus-app");
    /** Those it was seen to use; the names of places, letters and encryption stand in modules that nothing names. */
    private static final String MODULES = "java.se,jdk.unsupported,jdk.crypto.ec,jdk.localedata,jdk.zipfs,jdk.charsets,jdk.naming.dns,jdk.security.auth,jdk.management,jdk.net,jdk.xml.dom";
    /** So that it stays below 600 MB with its own memory counted in; what the solver and the typesetting gave back goes back to the system. */
    private static final List<String> SETTINGS = List.of("-Dbenchful.desk=true", "-Dfile.encoding=UTF-8", "-Xmx240m", "-Xss512k", "-XX:+UseSerialGC",
            "-XX:+IgnoreUnrecognizedVMOptions", "-XX:TrimNativeHeapInterval=10000", "-XX:ReservedCodeCacheSize=64m", "-XX:MaxHeapFreeRatio=30", "-XX:MinHeapFreeRatio=10", "-Djava.awt.headless=true");

    private final Path into;

    private DeskPackage(Path into) {
        this.into = into;
    }

    /** @param arguments the version of the package; the folder it is made in is {@code target/desk} */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path into = Path.of("target", "desk");
        clear(into);
        DeskPackage made = new DeskPackage(Files.createDirectories(into));
        Path folder = made.folder(arguments[0]);
        System.out.printf("%s, %d MB%n", folder, bytes(folder) >> 20);
        made.archive(folder);
        if (isLinux() && Files.isExecutable(Path.of("/usr/bin/dpkg-deb"))) {
            made.run("jpackage", List.of("--type", "deb", "--app-image", folder.toString(), "--dest", into.toString(), "--name", NAME.toLowerCase(Locale.ROOT), "--app-version", arguments[0],
                    "--linux-shortcut", "--linux-menu-group", "Education", "--linux-deb-maintainer", "benchful@example.org", "--description", "Plans craft classes, kits and lessons"));
        }
    }

    /** The folder in which the program and its runtime lie. */
    static Path folder(Path into, String version) throws IOException {
        return new DeskPackage(into).folder(version);
    }

    /** What is pressed to start it. */
    static Path starter(Path folder) {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        return system.startsWith("windows") ? folder.resolve(NAME + ".exe") : folder.resolve(system.startsWith("mac") ? "Contents/MacOS/" + NAME : "bin/" + NAME);
    }

    private Path folder(String version) throws IOException {
        Path runtime = into.resolve("runtime");
        run("jlink", List.of("--add-modules", MODULES, "--strip-debug", "--no-header-files", "--no-man-pages", "--compress=2", "--output", runtime.toString()));
        Path starting = Files.createDirectory(into.resolve("starting"));
        Files.copy(PROGRAM.resolve(STARTER), starting.resolve(STARTER));
        List<String> parts = new ArrayList<>(List.of("--type", "app-image", "--name", NAME, "--app-version", version, "--input", starting.toString(),
                "--main-jar", STARTER, "--runtime-image", runtime.toString(), "--icon", icon().toString(), "--dest", into.toString()));
        SETTINGS.forEach(setting -> parts.addAll(List.of("--java-options", setting)));
        run("jpackage", parts);
        clear(runtime);
        clear(starting);
        addProgram();
        return into.resolve(System.getProperty("os.name").startsWith("Mac") ? NAME + ".app" : NAME);
    }

    /** The jar that starts it finds all else beside itself; the tool would put every library on the path. */
    private void addProgram() throws IOException {
        Path beside;
        try (Stream<Path> all = Files.walk(into)) {
            beside = all.filter(file -> file.endsWith(STARTER)).findFirst().orElseThrow().getParent();
        }
        try (Stream<Path> all = Files.walk(PROGRAM)) {
            for (Path file : all.filter(Files::isRegularFile).filter(file -> !file.endsWith(STARTER)).toList()) {
                Path copy = beside.resolve(PROGRAM.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    private void run(String tool, List<String> arguments) {
        ToolProvider provider = ToolProvider.findFirst(tool).orElseThrow(() -> new IllegalStateException("This Java has no " + tool + ": take a whole JDK 17 or newer."));
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        if (provider.run(out, out, arguments.toArray(String[]::new)) != 0) {
            throw new IllegalStateException(tool + " failed: see above.");
        }
    }

    /** The program {@code tar} is part of all three systems. */
    private void archive(Path folder) throws IOException, InterruptedException {
        Process tar = new ProcessBuilder("tar", "-czf", into.resolve(NAME.toLowerCase(Locale.ROOT) + ".tar.gz").toString(), "-C", into.toString(), folder.getFileName().toString())
                .inheritIO().start();
        if (tar.waitFor() != 0) {
            throw new IllegalStateException("The archive could not be written.");
        }
    }

    /** The drawing of the pages, in the form in which this system wants it. */
    private Path icon() throws IOException {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        byte[] png = png();
        if (system.startsWith("windows")) {
            // An ICO of one picture of 256 x 256 pixels: https://learn.microsoft.com/windows/win32/menurc/newheader and resdir
            ByteBuffer head = ByteBuffer.allocate(22).order(java.nio.ByteOrder.LITTLE_ENDIAN)
                    .putShort((short) 0).putShort((short) 1).putShort((short) 1).put(new byte[4]).putShort((short) 1).putShort((short) 32).putInt(png.length).putInt(22);
            return Files.write(into.resolve("icon.ico"), joined(head.array(), png));
        }
        if (system.startsWith("mac")) {
            byte[] head = ByteBuffer.allocate(16).put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(png.length + 16).put("ic08".getBytes(StandardCharsets.US_ASCII)).putInt(png.length + 8).array();
            return Files.write(into.resolve("icon.icns"), joined(head, png));
        }
        return Files.write(into.resolve("icon.png"), png);
    }

    private static byte[] joined(byte[] one, byte[] other) {
        return ByteBuffer.allocate(one.length + other.length).put(one).put(other).array();
    }

    private static byte[] png() throws IOException {
        Drawn drawn = new Drawn();
        drawn.addTranscodingHint(ImageTranscoder.KEY_WIDTH, 256f);
        drawn.addTranscodingHint(ImageTranscoder.KEY_HEIGHT, 256f);
        try (InputStream svg = Files.newInputStream(Path.of("src/main/resources/META-INF/resources/icon.svg"))) {
            drawn.transcode(new TranscoderInput(svg), null);
        } catch (org.apache.batik.transcoder.TranscoderException e) {
            throw new IOException(e);
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(drawn.image, "png", png);
        return png.toByteArray();
    }

    private static final class Drawn extends ImageTranscoder {
        private BufferedImage image;

        @Override
        public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        }

        @Override
        public void writeImage(BufferedImage drawn, TranscoderOutput output) {
            image = drawn;
        }
    }

    static long bytes(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
        }
    }

    private static boolean isLinux() {
        return System.getProperty("os.name").startsWith("Linux");
    }

    private static void clear(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(DeskPackage::remove);
            }
        }
    }

    private static void remove(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
