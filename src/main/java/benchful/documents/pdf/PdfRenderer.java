package benchful.documents.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Typesets a manuscript as a tagged PDF (PDF/UA-1 structure, with title, language and bookmarks) with its fonts embedded.
 * A letter that no font has prints as an empty box. Nothing is fetched from anywhere but the manuscript.
 */
public final class PdfRenderer {
    private static final String MISSING = "\u25A1";
    /** The engine takes its base font, which has size 1, for one of size 12, and sets letters of just this size in a drawing as specks. */
    private static final Pattern TWELVE = Pattern.compile("(?<before>font-size\\s*+[=:]\\s*+[\"']?+\\s*+)12(?:\\.0*+)?+(?=\\s*+(?:px)?+\\s*+[\"';}])");

    private static final Pattern HEAD = Pattern.compile("<(?:[A-Za-z_][\\w.-]*+:)?+svg\\s");

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new CarriedFontMapper());
    }

    /** Ordinary drawings take less than a tenth of a second. */
    private static final Duration LONGEST_DRAWING = Duration.ofSeconds(8);

    private final Duration longestDrawing;
    /** As many as there are processors: one more ends none sooner, and takes tens of megabytes. */
    private final BlockingQueue<Press> presses = new LinkedBlockingQueue<>();
    private final RecentPrints recent = new RecentPrints();

    public PdfRenderer() {
        this(LONGEST_DRAWING);
    }

    PdfRenderer(Duration longestDrawing) {
        this.longestDrawing = longestDrawing;
        for (int i = 0; i < Math.max(2, Runtime.getRuntime().availableProcessors()); i++) {
            presses.add(new Press());
        }
    }

    /**
     * A drawing of the project that can't be drawn within bounds is left out and named; a second one takes the project's other
     * drawings with it, so that a print-out of many such drawings ends too.
     *
     * @param out is written to but not closed
     */
    public void write(Manuscript manuscript, OutputStream out) throws IOException {
        String key = RecentPrints.key(manuscript);
        Optional<byte[]> known = recent.find(key);
        out.write(known.isPresent() ? known.get() : atPress(press -> {
            Optional<byte[]> meanwhile = recent.find(key);
            return meanwhile.isPresent() ? meanwhile.get() : typeset(manuscript, key, press);
        }));
    }

    private byte[] typeset(Manuscript manuscript, String key, Press press) throws IOException {
        Manuscript rest = manuscript;
        for (Map.Entry<String, byte[]> picture : manuscript.pictures().entrySet()) {
            rest = picture.getValue().length == 0 ? rest.without(picture.getKey()) : rest;
        }
        Typesetting typesetting = new Typesetting(this, rest, longestDrawing, press);
        if (typesetting.undrawn().isEmpty()) {
            recent.keep(key, typesetting.pdf());
        }
        for (int failed = 0; typesetting.undrawn().isPresent() && !rest.drawings().isEmpty(); failed++) {
            for (String drawing : failed == 0 ? List.of(typesetting.undrawn().get()) : rest.drawings()) {
                rest = rest.without(drawing);
            }
            press.forget();
            typesetting = new Typesetting(this, rest, longestDrawing, press);
        }
        if (typesetting.undrawn().isPresent()) {
            press.forget();
        }
        return typesetting.pdf();
    }

    private interface Job {
        byte[] at(Press press) throws IOException;
    }

    /** When its turn comes. */
    private byte[] atPress(Job job) throws IOException {
        Press press = free();
        try {
            return job.at(press);
        } finally {
            presses.add(press);
        }
    }

    private Press free() {
        try {
            return presses.take();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Typesetting was given up.", e);
        }
    }

    /** @param watch is told which drawing is being drawn */
    void typeset(Manuscript manuscript, DrawingWatch watch, Press press, OutputStream out) throws IOException {
        try (BatikSVGDrawer drawings = new BatikSVGDrawer(); PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Benchful");
            builder.useReplacementText(MISSING);
            builder.useSVGDrawer(new WatchedDrawer(drawings, watch));
            builder.useUnicodeLineBreaker(new LineBreaks());
            builder.usePDDocument(document);
            press.give(builder, document);
            builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith(Manuscript.SCHEME + ":"),
                    ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
            builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith(Manuscript.SCHEME + ":"),
                    ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
            builder.useProtocolsStreamImplementation(uri -> new Picture(manuscript, uri), Manuscript.SCHEME);
            builder.withW3cDocument(LastRows.kept(manuscript.xhtml()), null);
            builder.toStream(out);
            builder.run();
        }
    }

    private record Picture(Manuscript manuscript, String uri) implements FSStream {
        @Override
        public InputStream getStream() {
            byte[] bytes = manuscript.pictures().get(uri.substring(Manuscript.SCHEME.length() + 1));
            if (bytes == null) {
                return InputStream.nullInputStream();
            }
            return new ByteArrayInputStream(uri.endsWith(".svg") ? named(legible(bytes)) : bytes);
        }

        private static String legible(byte[] svg) {
            return TWELVE.matcher(new String(svg, StandardCharsets.UTF_8)).replaceAll("${before}12.01");
        }

        /** The engine hands on a drawing without its name. */
        private byte[] named(String svg) {
            String name = uri.substring(Manuscript.SCHEME.length() + 1);
            String note = "$0%s=\"%s\" ".formatted(WatchedDrawer.NAME, name.replaceAll("[^A-Za-z0-9._-]", "_"));
            return HEAD.matcher(svg).replaceFirst(note).getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
