package benchful.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The folder in which a tutor's data live, readable by its owner alone: the lock, the unpacked programs, and for each major
 * version of PostgreSQL its files, its password and its log.
 */
final class DataFolder {
    private static final int PASSWORD_BYTES = 24;
    private static final Pattern PASSWORD = Pattern.compile("[0-9a-f]{" + 2 * PASSWORD_BYTES + "}");
    private static final Pattern CLUSTER = Pattern.compile("postgres-\\d+");

    private final Path root;

    private DataFolder(Path root) {
        this.root = root;
    }

    /** Opens the folder, making it if it is missing. */
    static DataFolder open(Path root) {
        try {
            Files.createDirectories(root.getParent());
            if (!Files.isDirectory(root)) {
                Files.createDirectory(root, ownerOnly(root, "rwx------"));
            }
        } catch (FileAlreadyExistsException e) {
            boolean itself = root.toString().equals(e.getFile());
            throw unfit(root, itself ? "is a file" : "can't be made, as " + e.getFile() + " is a file", e);
        } catch (IOException e) {
            throw unfit(root, "can't be made (" + Trouble.words(e) + ")", e);
        }
        if (!Files.isWritable(root)) {
            throw unfit(root, "may not be written to by " + System.getProperty("user.name"), null);
        }
        return new DataFolder(root);
    }

    private static DatabaseProblem unfit(Path root, String why, IOException cause) {
        return new DatabaseProblem("The data folder " + root + " " + why
                + ". Choose a folder of your own with the setting benchful.data.", cause);
    }

    Path root() {
        return root;
    }

    Path lockFile() {
        return root.resolve("lock");
    }

    Path programs() {
        return root.resolve("programs");
    }

    Path cluster(int majorVersion) {
        return root.resolve("postgres-" + majorVersion);
    }

    /** Refuses a folder whose data this version cannot read, rather than beginning anew beside them. */
    void refuseOtherVersions(int majorVersion) throws IOException {
        if (Files.exists(cluster(majorVersion))) {
            return;
        }
        try (DirectoryStream<Path> others = Files.newDirectoryStream(root, DataFolder::isCluster)) {
            for (Path other : others) {
                throw new DatabaseProblem("The data in " + other + " are from another version of PostgreSQL than the "
                        + majorVersion + " that this program carries. Open them with the version of the program that made them,"
                        + " or choose another folder with the setting benchful.data.");
            }
        }
    }

    Path log(int majorVersion) {
        return root.resolve("postgres-" + majorVersion + ".log");
    }

    Path passwordFile(int majorVersion) {
        return root.resolve("postgres-" + majorVersion + ".password");
    }

    /** The password of the server's files, drawn at random the first time and then kept; empty if it is lost, or its file torn. */
    Optional<String> password(int majorVersion) throws IOException {
        Path file = passwordFile(majorVersion);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        return Optional.of(Files.readString(file, StandardCharsets.ISO_8859_1).strip()).filter(text -> PASSWORD.matcher(text).matches());
    }

    private static boolean isCluster(Path entry) {
        return CLUSTER.matcher(entry.getFileName().toString()).matches();
    }

    String newPassword(int majorVersion) throws IOException {
        Path file = passwordFile(majorVersion);
        byte[] bytes = new byte[PASSWORD_BYTES];
        new SecureRandom().nextBytes(bytes);
        String password = HexFormat.of().formatHex(bytes);
        // The mode is set as the file is made: at no moment can another user read it.
        Path draft = Files.createTempFile(file.getParent(), "password", ".new", ownerOnly(file, "rw-------"));
        // And written through: after a power cut it must not be missing beside data that need it.
        Files.writeString(draft, password, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
        Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        return password;
    }

    private static FileAttribute<?>[] ownerOnly(Path file, String mode) {
        boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))}
                : new FileAttribute<?>[0];
    }
}
