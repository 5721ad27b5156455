package benchful.documents;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
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
import java.util.EnumSet;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Typesets a manuscript as a tagged PDF (PDF/UA-1 structure, with title, language and bookmarks) with its fonts embedded.
 * A letter that no font has prints as an empty box. Nothing is fetched from anywhere but the manuscript.
 */
public final class PdfRenderer {
    private static final String MISSING = "\u25A1";
    /** The engine takes its base font, which has size 1, for one of size 12, and sets letters of just this size in a drawing as specks. */
    private static final Pattern TWELVE = Pattern.compile("(?<before>font-size\\s*[=:]\\s*[\"']?\\s*)12(?:\\.0*)?(?=\\s*(?:px)?\\s*[\"';}])");

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new CarriedFontMapper());
    }

    /** @param out is written to but not closed */
    public void write(Manuscript manuscript, OutputStream out) throws IOException {
        try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Benchful");
            builder.useReplacementText(MISSING);
            builder.useSVGDrawer(drawings);
            builder.useUnicodeLineBreaker(new LineBreaks());
            fonts(builder);
            builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith(Manuscript.SCHEME + ":"),
                    ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
            builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith(Manuscript.SCHEME + ":"),
                    ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
            builder.useProtocolsStreamImplementation(uri -> new Picture(manuscript, uri), Manuscript.SCHEME);
            builder.withHtmlContent(manuscript.xhtml(), null);
            builder.toStream(out);
            builder.run();
        }
    }

    private static void fonts(PdfRendererBuilder builder) {
        EnumSet<FSFontUseCase> everywhere = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);
        for (PrintFonts.Face face : PrintFonts.FACES) {
            builder.useFont(face.file().toFile(), face.family(), face.weight(), face.style(), true, everywhere);
        }
    }

    private record Picture(Manuscript manuscript, String uri) implements FSStream {
        @Override
        public InputStream getStream() {
            byte[] bytes = manuscript.pictures().get(uri.substring(Manuscript.SCHEME.length() + 1));
            if (bytes == null) {
                return InputStream.nullInputStream();
            }
            return new ByteArrayInputStream(uri.endsWith(".svg") ? legible(bytes) : bytes);
        }

        private static byte[] legible(byte[] svg) {
            return TWELVE.matcher(new String(svg, StandardCharsets.UTF_8)).replaceAll("${before}12.01").getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
