package benchful.backups.archive;

import benchful.backups.archive.Manifest.Item;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.attribute.FileTime;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs files one after another, none of them held in memory, and keeps the length and SHA-256 of each. */
public final class ArchiveWriter {
    private final ZipOutputStream zip;
    private final Instant moment;
    private final List<Item> items = new ArrayList<>();

    public ArchiveWriter(OutputStream out, Instant moment) {
        this.zip = new ZipOutputStream(out);
        this.moment = moment;
    }

    /** What goes into a file. */
    public interface Content {
        void write(OutputStream out) throws SQLException, IOException;
    }

    public void add(String path, Content content) throws SQLException {
        MessageDigest digest = Archive.sha256();
        try {
            zip.putNextEntry(entry(path));
            Counted counted = new Counted(new DigestOutputStream(zip, digest));
            content.write(counted);
            zip.closeEntry();
            items.add(new Item(path, counted.bytes, Archive.hex(digest)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ZipEntry entry(String path) {
        ZipEntry entry = new ZipEntry(path);
        entry.setLastModifiedTime(FileTime.from(moment));
        return entry;
    }

    public List<Item> items() {
        return List.copyOf(items);
    }

    /** Adds the manifest and ends the archive; what lies below it stays open. */
    public void finish(Manifest manifest) {
        try {
            zip.putNextEntry(entry(Manifest.PATH));
            zip.write(manifest.written());
            zip.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Counted extends FilterOutputStream {
        private long bytes;

        Counted(OutputStream out) {
            super(out);
        }

        @Override
        public void write(int b) throws IOException {
            out.write(b);
            bytes++;
        }

        @Override
        public void write(byte[] b, int from, int length) throws IOException {
            out.write(b, from, length);
            bytes += length;
        }
    }
}
