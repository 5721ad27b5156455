package benchful.documents.pdf;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A print-out read back, as tests look at it. */
public final class PdfReading implements AutoCloseable {
    private static final double MM = 25.4 / 72;

    private final byte[] pdf;
    private final PDDocument document;

    private PdfReading(byte[] pdf) throws IOException {
        this.pdf = pdf;
        this.document = Loader.loadPDF(pdf);
    }

    public static PdfReading of(byte[] pdf) throws IOException {
        return new PdfReading(pdf);
    }

    /** Where it breaks ISO 14289-1:2014 (PDF/UA-1), as far as a program can tell. */
    public List<String> barriers() throws IOException {
        return UniversalAccess.barriers(pdf);
    }

    public PDDocument document() {
        return document;
    }

    public int pages() {
        return document.getNumberOfPages();
    }

    /** Of all pages, with runs of white space made one blank. */
    public String text() throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    public String text(int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ");
    }

    /** A glyph in its place, from the top left of its page [mm], and its size [pt]. */
    public record Glyph(int page, String letters, double x, double y, double size, double right) {}

    public List<Glyph> glyphs() throws IOException {
        List<Glyph> glyphs = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                glyphs.add(new Glyph(getCurrentPageNo(), text.getUnicode(), text.getXDirAdj() * MM, text.getYDirAdj() * MM, text.getFontSizeInPt(),
                        (text.getXDirAdj() + text.getWidthDirAdj()) * MM));
            }
        }.getText(document);
        return glyphs;
    }

    public List<PDFont> fonts() throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            PDResources resources = page.getResources();
            for (COSName name : resources.getFontNames()) {
                fonts.add(resources.getFont(name));
            }
        }
        return fonts;
    }

    /** The addresses of all codes on a page, from 0. */
    public List<String> codes(int page) throws IOException {
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 250);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
        try {
            return Arrays.stream(new QRCodeMultiReader().decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))).map(Result::getText).toList();
        } catch (NotFoundException e) {
            return List.of();
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
