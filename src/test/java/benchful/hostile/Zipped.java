package benchful.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** Packs archives, also those that no honest program packs: with names twice, of other folders, and far too many. */
final class Zipped {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out);

    static byte[] of(Map<String, byte[]> files) {
        Zipped zipped = new Zipped();
        files.forEach(zipped::with);
        return zipped.bytes();
    }

    Zipped with(String path, byte[] content) {
        try {
            zip.putArchiveEntry(new ZipArchiveEntry(path));
            zip.write(content);
            zip.closeArchiveEntry();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Zipped with(String path, String text) {
        return with(path, text.getBytes(StandardCharsets.UTF_8));
    }

    byte[] bytes() {
        try {
            zip.close();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
