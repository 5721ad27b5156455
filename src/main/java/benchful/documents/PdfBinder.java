package benchful.documents;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.multipdf.PDFMergerUtility;

/**
 * Binds several print-outs into one file, each with its own page numbers. Parts lie on the disk until they are bound; binding
 * holds the objects of all of them, though not their streams, so memory grows with the number of parts.
 */
final class PdfBinder implements AutoCloseable {
    private static final long MEMORY = 32L * 1024 * 1024;

    private final PdfRenderer renderer;
    private final List<Path> parts = new ArrayList<>();

    PdfBinder(PdfRenderer renderer) {
        this.renderer = renderer;
    }

    void add(Manuscript manuscript) throws IOException {
        Path part = Files.createTempFile("benchful-print", ".pdf");
        parts.add(part);
        try (OutputStream out = Files.newOutputStream(part)) {
            renderer.write(manuscript, out);
        }
    }

    void write(OutputStream out) throws IOException {
        if (parts.size() == 1) {
            Files.copy(parts.get(0), out);
        } else {
            bind(out);
        }
    }

    /** Removes the parts. */
    @Override
    public void close() throws IOException {
        for (Path part : parts) {
            Files.deleteIfExists(part);
        }
    }

    private void bind(OutputStream out) throws IOException {
        PDFMergerUtility merger = new PDFMergerUtility();
        for (Path part : parts) {
            merger.addSource(new RandomAccessReadBufferedFile(part.toFile()));
        }
        merger.setDestinationStream(out);
        merger.mergeDocuments(MemoryUsageSetting.setupMixed(MEMORY).streamCache);
    }
}
