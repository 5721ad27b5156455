package benchful.documents.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every question for a font by name with the one carried along. Without it the PDF library would search the machine's
 * fonts and keep a list of them in the user's home folder.
 */
final class CarriedFontMapper implements FontMapper {
    private final TrueTypeFont font;

    CarriedFontMapper() {
        try {
            font = new TTFParser().parse(new RandomAccessReadBufferedFile(PrintFonts.file("DejaVuSans.ttf").toFile()));
        } catch (IOException e) {
            throw new UncheckedIOException("A font for printing can't be read.", e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, true);
    }
}
