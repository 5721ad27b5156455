package benchful.documents.parts;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.Version;
import benchful.documents.pdf.Manuscript;
import benchful.documents.pdf.PdfRenderer;
import benchful.hazards.HazardSpec;
import benchful.hazards.LibraryFile;
import benchful.hazards.Signs;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Signs on paper: every drawing that the library uses, in colour and in black lines. */
class PrintedSignsTest {

    static Stream<String> drawn() {
        return LibraryFile.byId().values().stream().flatMap(h -> Stream.concat(h.signs().stream(), h.pictograms().stream()))
                .map(HazardSpec.Sign::code).distinct();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void readsInBlackAndWhite(String code) throws IOException {
        String svg = Signs.svg(code).orElseThrow();
        BufferedImage grey = printed(svg);
        assertThat(share(grey, 0, 110)).as("dark part of " + code).isBetween(0.04, 0.85);
        assertThat(share(grey, 150, 256)).as("light part of " + code).isBetween(0.1, 0.95);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void costsLittleInkInBlackLines(String code) throws IOException {
        String svg = LowInk.sign(Signs.svg(code).orElseThrow());
        assertThat(svg.replaceAll("#(?:000|fff)\\b", "")).doesNotContain("=\"#");
        assertThat(share(printed(svg), 0, 128)).as("ink of " + code).isBetween(0.04, 0.35);
    }

    @Test
    void givesSignsWithoutADrawingInWords() {
        List<HazardSpec.Sign> signs = List.of(new HazardSpec.Sign("W022", "Sharp element"), new HazardSpec.Sign("W199", "Falling stars"));
        HazardNote own = new HazardNote("own", "Own", "", List.of(), List.of(), List.of(), "", signs, "");
        PictureBag bag = new PictureBag(Version.NORMAL);
        Signage signage = new PrintedSigns(bag).of(own);
        assertThat(signage.undrawn()).isEqualTo("Falling stars");
        assertThat(signage.drawn()).containsExactly(new Signage.Sign("sign-W022.svg", "W022", "Sharp element"));
        assertThat(bag.all()).containsOnlyKeys("sign-W022.svg");
    }

    private static BufferedImage printed(String svg) throws IOException {
        PictureBag bag = new PictureBag(Version.NORMAL);
        bag.drawing("sign", svg);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRenderer().write(new Manuscript("<html lang=\"en\"><head><title>t</title><style>@page { size: 20mm 20mm; margin: 0 } body { margin: 0; "
                + "font-family: 'DejaVu Sans' } img { width: 20mm; height: 20mm }</style></head><body><img alt=\"sign\" src=\"picture:sign.svg\"/></body></html>", bag.all()), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return new PDFRenderer(document).renderImageWithDPI(0, 100, org.apache.pdfbox.rendering.ImageType.GRAY);
        }
    }

    /** How much of the picture is at least {@code from} and below {@code to} [grey, 0 black to 255 white]. */
    private static double share(BufferedImage image, int from, int to) {
        int found = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int grey = image.getRaster().getSample(x, y, 0);
                found += grey >= from && grey < to ? 1 : 0;
            }
        }
        return (double) found / image.getWidth() / image.getHeight();
    }
}
