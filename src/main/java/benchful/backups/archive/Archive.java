package benchful.backups.archive;

import benchful.backups.archive.Manifest.Item;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * A backup's archive, opened for reading. It may come from anywhere: nothing of it is unpacked to the disk, each file is read up
 * to the length that the manifest states and no further, and what does not fit its stated length and SHA-256 is refused.
 */
public final class Archive implements Closeable {
    /** Of a file that is held in memory as a whole: a sheet or a picture. */
    static final long LARGEST_SHEET = 64L << 20;

    private static final long LARGEST_MANIFEST = 32L << 20;
    private static final long LARGEST = 16L << 30;
    // Text of many like rows shrinks to a fiftieth; archives made to fill disks go to a thousandth.
    private static final long MOST_SHRUNK = 500;

    private final ZipFile zip;
    private final Manifest manifest;
    private final Map<String, Item> items;

    private Archive(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
        this.items = manifest.files().stream().collect(Collectors.toMap(Item::path, Function.identity(), (a, b) -> a));
    }

    public static Archive open(Path file) {
        try {
            ZipFile zip = new ZipFile(file.toFile());
            try {
                Archive archive = new Archive(zip, manifest(zip));
                archive.requireReasonable(Files.size(file));
                return archive;
            } catch (IOException | RuntimeException e) {
                zip.close();
                throw e;
            }
        } catch (ZipException e) {
            throw new BackupFault("This file is no backup, or it was cut short. A backup ends in .zip or .zip.gpg and begins with “benchful-”.", e);
        } catch (IOException e) {
            throw BackupFault.damaged(e);
        }
    }

    private static Manifest manifest(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(Manifest.PATH);
        if (entry == null) {
            throw new BackupFault("This archive holds no %s, so it is no backup of this program.".formatted(Manifest.PATH));
        }
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes((int) LARGEST_MANIFEST);
            if (in.read() >= 0) {
                throw tooLarge();
            }
            return Manifest.read(bytes);
        }
    }

    private void requireReasonable(long packed) {
        long unpacked = 0;
        for (Item item : manifest.files()) {
            if (item.bytes() < 0 || item.bytes() > LARGEST - unpacked) {
                throw tooLarge();
            }
            unpacked += item.bytes();
        }
        if (unpacked > MOST_SHRUNK * packed + LARGEST_SHEET) {
            throw tooLarge();
        }
    }

    private static BackupFault tooLarge() {
        return new BackupFault("This archive states to hold far more than a backup can, so it was not unpacked.");
    }

    public Manifest manifest() {
        return manifest;
    }

    /** Compares every file with the manifest. */
    public void verify() {
        Set<String> listed = items.keySet();
        zip.stream().map(ZipEntry::getName).filter(n -> !n.equals(Manifest.PATH) && !listed.contains(n)).findFirst().ifPresent(n -> {
            throw new BackupFault("The archive holds the file “%s”, which its manifest does not list. Take a backup that nobody added to.".formatted(n));
        });
        items.values().forEach(this::verify);
    }

    private void verify(Item item) {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(file(item.path()), digest)) {
            long read = in.transferTo(OutputStream.nullOutputStream());
            if (read != item.bytes() || !hex(digest).equals(item.sha256())) {
                throw changed(item.path());
            }
        } catch (IOException e) {
            throw changed(item.path());
        }
    }

    private static BackupFault changed(String path) {
        return new BackupFault("The file “%s” in the archive is not as it was when the backup was taken. Copy the backup once more from where it lay, or take an older one.".formatted(path));
    }

    /** A listed file's content, no longer than stated. */
    public InputStream file(String path) {
        Item item = items.get(path);
        ZipEntry entry = item == null ? null : zip.getEntry(path);
        if (entry == null) {
            throw new BackupFault("The file “%s” is missing in the archive. Take another backup.".formatted(path));
        }
        try {
            // One byte more than stated tells that there is more.
            return new Bounded(zip.getInputStream(entry), item.bytes() + 1);
        } catch (IOException e) {
            throw changed(path);
        }
    }

    /** A sheet or picture as a whole. */
    public byte[] bytes(String path) {
        try (InputStream in = file(path)) {
            if (items.get(path).bytes() > LARGEST_SHEET) {
                throw tooLarge();
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw changed(path);
        }
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    public static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
