package benchful.documents.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one print-out after the other: reading them takes a fifth of the work, and two at once can't share what was read. */
final class Press {
    private final Map<PrintFonts.Face, TrueTypeFont> read = new ConcurrentHashMap<>();

    /** Each font is put into the document when a letter first asks for it. Drawings want fonts as files. */
    void give(PdfRendererBuilder builder, PDDocument document) {
        for (PrintFonts.Face face : PrintFonts.FACES) {
            builder.useFont(new Letters(document, face), face.family(), face.weight(), face.style(), true);
            builder.useFont(face.file().toFile(), face.family(), face.weight(), face.style(), true, EnumSet.of(FSFontUseCase.SVG));
        }
    }

    /** Reads them anew, where a print-out that was given up may still use them for a moment. */
    void forget() {
        read.clear();
    }

    private TrueTypeFont font(PrintFonts.Face face) {
        return read.computeIfAbsent(face, f -> {
            try {
                return new TTFParser().parse(new RandomAccessReadBufferedFile(f.file().toFile()));
            } catch (IOException e) {
                throw new UncheckedIOException("The font %s can't be read.".formatted(f.file().getFileName()), e);
            }
        });
    }

    private final class Letters extends PDFontSupplier {
        private final PDDocument document;
        private final PrintFonts.Face face;
        private PDFont font;

        Letters(PDDocument document, PrintFonts.Face face) {
            super(null);
            this.document = document;
            this.face = face;
        }

        @Override
        public PDFont supply() {
            try {
                font = font == null ? PDType0Font.load(document, font(face), true) : font;
                return font;
            } catch (IOException e) {
                throw new UncheckedIOException("The font %s can't be used.".formatted(face.family()), e);
            }
        }
    }
}
