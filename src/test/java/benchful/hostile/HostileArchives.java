package benchful.hostile;

import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Place;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Backups that somebody has tampered with, without the help of the program that wrote them. */
final class HostileArchives {
    private static final int MB = 1 << 20;
    private static final String MANIFEST = "manifest.json";

    private final byte[] good;

    /** @param good a backup as the program writes it, not locked */
    HostileArchives(byte[] good) {
        this.good = good;
    }

    Stream<File> all() {
        return Stream.of(packed(), stated(), locked()).flatMap(s -> s);
    }

    private Stream<File> packed() {
        return Stream.of(
                edited("a path out of the archive", true, files -> files.put("../../../../tmp/evil.sh", bytes("rm"))),
                edited("a path from the root", true, files -> files.put("/etc/passwd", bytes("root"))),
                edited("a path of another system", true, files -> files.put("..\\..\\evil.bat", bytes("del"))),
                edited("a path of NUL", true, files -> files.put("tables/a\0.csv", bytes("a"))),
                edited("a file more, that unpacks to 200 MB", true, files -> files.put("tables/more.csv", new byte[200 * MB])),
                edited("a table that unpacks to 200 MB", true, files -> files.put("tables/project.csv", new byte[200 * MB])),
                edited("ten thousand files more", true, files -> IntStream.range(0, 10_000).forEach(i -> files.put("projects/x" + i, new byte[0]))),
                edited("a table less", true, files -> files.remove("tables/project.csv")),
                edited("a table of another text", true, files -> files.put("tables/project.csv", bytes("id\n1\n"))),
                file("the list of contents twice", false, twice(MANIFEST, bytes("{}"))),
                file("a table twice", false, twice("tables/project.csv", bytes("id\n1\n"))),
                file("an archive within", true, new Zipped().with("backup.zip", good).bytes()),
                file("an archive of nothing", true, new Zipped().bytes()),
                file("cut short", true, Arrays.copyOf(good, good.length / 2)),
                file("without its last bytes", true, Arrays.copyOf(good, good.length - 10)),
                file("something before it", false, Damage.joined(bytes("PK at your service "), good)),
                file("something behind it", false, Damage.joined(good, bytes("more"))),
                file("its first bytes", true, Arrays.copyOf(good, 3)),
                file("a workbook", true, HostileWorkbooks.good()));
    }

    private Stream<File> stated() {
        return Stream.of(
                restated("no list of contents", true, text -> null),
                restated("a list that is no text", true, text -> "\0\1\2"),
                restated("a list of nothing", true, text -> "{}"),
                restated("a list that is a list", true, text -> "[]"),
                restated("a list that is null", true, text -> "null"),
                restated("nothing where files are listed", true, text -> text.replaceFirst("\"files\" ?: ?\\[", "\"files\": null, \"others\": [")),
                restated("null among the files", true, text -> text.replaceFirst("\"files\" ?: ?\\[", "\"files\": [null, ")),
                restated("null among the tables", true, text -> text.replaceFirst("\"tables\" ?: ?\\[", "\"tables\": [null, ")),
                restated("no migrations", true, text -> text.replaceFirst("\"migrations\" ?: ?\\[[^\\]]*]", "\"migrations\": []")),
                restated("migrations that are null", true, text -> text.replaceFirst("\"migrations\" ?: ?\\[[^\\]]*]", "\"migrations\": null")),
                restated("a migration out of the folder", true, text -> text.replaceFirst("\"migrations\" ?: ?\\[", "\"migrations\": [\"../../x\", ")),
                restated("a migration of a command", true, text -> text.replaceFirst("\"migrations\" ?: ?\\[", "\"migrations\": [\"1'; drop table project; --\", ")),
                restated("files within files", true, text -> "{\"files\":" + "[".repeat(50_000)),
                restated("a list of 40 MB", true, text -> text + " ".repeat(40 * MB)),
                restated("lengths below nothing", true, text -> text.replaceAll("\"bytes\" ?: ?\\d+", "\"bytes\": -1")),
                restated("lengths beyond all numbers", true, text -> text.replaceAll("\"bytes\" ?: ?\\d+", "\"bytes\": 99999999999999999999")),
                restated("rows that aren't there", false, text -> text.replaceAll("\"rows\" ?: ?\\d+", "\"rows\": 9223372036854775807")),
                restated("other sums", true, text -> text.replaceAll("\"sha256\" ?: ?\"\\w", "\"sha256\": \"_")),
                restated("no sums", true, text -> text.replaceAll("\"sha256\" ?: ?\"\\w+\"", "\"sha256\": null")),
                restated("a day that is none", true, text -> text.replaceAll("\"taken\" ?: ?\"[^\"]+\"", "\"taken\": \"2027-02-30T99:00Z\"")),
                restated("a day beyond all days", false, text -> text.replaceAll("\"taken\" ?: ?\"[^\"]+\"", "\"taken\": \"+999999999-12-31T23:59:59Z\"")),
                restated("a table of a command", true, text -> text.replaceFirst("\"table\" ?: ?\"\\w+\"", "\"table\": \"x; drop table project\"")));
    }

    private Stream<File> locked() {
        return Stream.of(
                file("nothing", true, new byte[0]),
                file("a text", true, bytes("not an archive")),
                file("a lock that locks nothing", true, new byte[] {(byte) 0xC3, 4, 9, 0, 8, 0}),
                file("a lock of noise", true, Damage.joined(new byte[] {(byte) 0xC3, 0x0D, 4, 9, 3, 8}, Damage.of(good, 5))),
                file("a lock as a letter", true, bytes("-----BEGIN PGP MESSAGE-----\n\nAAAA\n=AAAA\n-----END PGP MESSAGE-----\n")),
                file("a lock as a letter without end", true, bytes("-----BEGIN PGP MESSAGE-----\n\n" + "A".repeat(MB))));
    }

    private byte[] twice(String path, byte[] other) {
        Zipped zipped = new Zipped().with(path, other);
        unpacked().forEach(zipped::with);
        return zipped.bytes();
    }

    private interface Restatement {
        /** @return null where there is to be none */
        String of(String manifest);
    }

    private File restated(String name, boolean refused, Restatement change) {
        return edited(name, refused, files -> {
            String after = change.of(new String(files.remove(MANIFEST), StandardCharsets.UTF_8));
            if (after != null) {
                files.put(MANIFEST, bytes(after));
            }
        });
    }

    private File edited(String name, boolean refused, Consumer<Map<String, byte[]>> edit) {
        Map<String, byte[]> files = unpacked();
        edit.accept(files);
        return file(name, refused, Zipped.of(files));
    }

    private Map<String, byte[]> unpacked() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(good))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static File file(String name, boolean refused, byte[] content) {
        return new File("backup: " + name, Place.BACKUP, content, refused);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
