package benchful.backups;

import benchful.backups.archive.Archive;
import benchful.backups.archive.Manifest;
import benchful.backups.archive.Manifest.Item;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A backup that somebody has tampered with. */
final class EditedArchive {
    private EditedArchive() {}

    /** Changes files and lists them anew, so that all lengths and fingerprints fit. */
    static void relisted(Path from, Path to, Consumer<Map<String, byte[]>> edit) throws IOException {
        edited(from, to, edit, EditedArchive::listed);
    }

    /** Changes files and what the manifest says of them, given by what it would say truly. */
    static void edited(Path from, Path to, Consumer<Map<String, byte[]>> edit, Listing listing) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(from))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        Manifest manifest = Manifest.read(files.remove(Manifest.PATH));
        edit.accept(files);
        files.put(Manifest.PATH, listing.of(manifest, files).written());
        write(to, files);
    }

    interface Listing {
        Manifest of(Manifest before, Map<String, byte[]> files);
    }

    static Manifest listed(Manifest m, Map<String, byte[]> files) {
        return withFiles(m, files.entrySet().stream().map(e -> new Item(e.getKey(), e.getValue().length, sha256(e.getValue()))).toList());
    }

    static Manifest withFiles(Manifest m, List<Item> items) {
        return new Manifest(m.benchful(), m.taken(), m.migrations(), m.tables(), items);
    }

    static Manifest withMigrations(Manifest m, UnaryOperator<List<String>> change) {
        return new Manifest(m.benchful(), m.taken(), change.apply(m.migrations()), m.tables(), m.files());
    }

    private static void write(Path to, Map<String, byte[]> files) throws IOException {
        try (OutputStream out = Files.newOutputStream(to); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                new ByteArrayInputStream(file.getValue()).transferTo(zip);
            }
        }
    }

    private static String sha256(byte[] bytes) {
        MessageDigest digest = Archive.sha256();
        digest.update(bytes);
        return Archive.hex(digest);
    }
}
