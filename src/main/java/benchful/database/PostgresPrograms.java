package benchful.database;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/**
 * The PostgreSQL programs for this machine, which come as an archive on the class path and are unpacked once: the folder is named
 * after the archive's content, so a new version of the program brings its own folder and an old one is never half replaced.
 */
final class PostgresPrograms {
    private static final int HASH_LENGTH = 16;
    private static final Pattern VERSION = Pattern.compile("\\(PostgreSQL\\) (\\d+)");

    private final Path home;

    private PostgresPrograms(Path home) {
        this.home = home;
    }

    /** Finds the programs below the folder, unpacking them if these have not been unpacked before. */
    static PostgresPrograms in(Path folder) throws IOException {
        String archive = archiveName();
        Path home = folder.resolve(hash(archive));
        if (!Files.isDirectory(home)) {
            Path draft = folder.resolve(home.getFileName() + ".new");
            Trees.delete(draft);
            unpack(archive, draft);
            Files.move(draft, home, StandardCopyOption.ATOMIC_MOVE);
        }
        return new PostgresPrograms(home);
    }

    Path program(String name) {
        return home.resolve("bin").resolve(isWindows() ? name + ".exe" : name);
    }

    /** The major version, to which the server's files are bound. */
    int majorVersion() throws IOException {
        String text = Command.run(List.of(program("postgres").toString(), "--version")).output();
        Matcher matcher = VERSION.matcher(text);
        if (!matcher.find()) {
            throw new DatabaseProblem("The PostgreSQL in " + home + " does not run on this machine: " + text.strip());
        }
        return Integer.parseInt(matcher.group(1));
    }

    /** Removes the programs of other versions, which nothing uses any more once this one runs. */
    void deleteOthers() throws IOException {
        try (var siblings = Files.newDirectoryStream(home.getParent())) {
            for (Path sibling : siblings) {
                if (!sibling.equals(home)) {
                    Trees.delete(sibling);
                }
            }
        }
    }

    static boolean isWindows() {
        return system().equals("windows");
    }

    private static String system() {
        String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return "windows";
        }
        return name.startsWith("mac") ? "darwin" : "linux";
    }

    private static String archiveName() {
        String machine = System.getProperty("os.arch").toLowerCase(Locale.ROOT);
        String kind = machine.equals("aarch64") || machine.equals("arm64") ? "arm_64" : "x86_64";
        return "postgres-" + system() + "-" + kind + ".txz";
    }

    private static InputStream open(String archive) {
        InputStream stream = PostgresPrograms.class.getClassLoader().getResourceAsStream(archive);
        if (stream == null) {
            throw new DatabaseProblem("This build carries no PostgreSQL for this machine (" + archive
                    + "). Build it on this machine, or point the setting quarkus.datasource.jdbc.url at a PostgreSQL server.");
        }
        return stream;
    }

    private static String hash(String archive) throws IOException {
        try (DigestInputStream stream = new DigestInputStream(open(archive), MessageDigest.getInstance("SHA-256"))) {
            stream.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(stream.getMessageDigest().digest()).substring(0, HASH_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    private static void unpack(String archive, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (var tar = new TarArchiveInputStream(new XZCompressorInputStream(new BufferedInputStream(open(archive))))) {
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                unpack(tar, entry, folder);
            }
        }
    }

    private static void unpack(InputStream content, TarArchiveEntry entry, Path folder) throws IOException {
        Path target = folder.resolve(entry.getName()).normalize();
        if (!target.startsWith(folder)) {
            throw new IOException("The archive of PostgreSQL points outside its folder: " + entry.getName());
        }
        Files.createDirectories(entry.isDirectory() ? target : target.getParent());
        if (entry.isSymbolicLink()) {
            Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
        } else if (entry.isFile()) {
            Files.copy(content, target);
            allowRunning(target, entry.getMode());
        }
    }

    private static void allowRunning(Path file, int mode) throws IOException {
        boolean runs = (mode & 0100) != 0;
        if (runs && !file.toFile().setExecutable(true, false)) {
            throw new IOException("The program " + file + " cannot be made runnable");
        }
    }
}
