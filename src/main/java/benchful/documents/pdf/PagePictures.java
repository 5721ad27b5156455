package benchful.documents.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The pages of a PDF as pictures for a screen.
 *
 * @param sources of the first pages, each with its bytes in it
 * @param inAll how many pages there are
 */
public record PagePictures(List<String> sources, int inAll) {
    private static final int MOST = 6;
    private static final float DOTS_PER_INCH = 84;

    public PagePictures {
        sources = List.copyOf(sources);
    }

    /** @param check is asked before each page, and throws where nobody waits any more */
    public static PagePictures of(byte[] pdf, Runnable check) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<String> pages = new ArrayList<>();
            for (int page = 0; page < Math.min(MOST, document.getNumberOfPages()); page++) {
                check.run();
                pages.add(source(renderer.renderImageWithDPI(page, DOTS_PER_INCH, ImageType.RGB)));
            }
            return new PagePictures(pages, document.getNumberOfPages());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String source(BufferedImage page) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(page, "png", out);
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(out.toByteArray());
    }
}
