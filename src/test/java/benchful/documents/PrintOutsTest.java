package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.Manuscript;
import benchful.documents.pdf.OutlineReader;
import benchful.documents.pdf.PdfReading;
import benchful.documents.pdf.PdfRenderer;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What all print-outs have in common, in both page sizes and all versions. */
class PrintOutsTest {
    private static final double MM = 25.4 / 72;
    /** Letters of the footer, at most; in large print it names the class by its title only. */
    private static final int FOOTER = 150;
    private static final int LARGE_FOOTER = 118;

    private static DocumentService service;
    private static PrintSource strand;

    @BeforeAll
    static void read() {
        service = new DocumentService(PrintSamples.templates());
        strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    static Stream<Arguments> all() {
        return Stream.of(PrintOut.values()).flatMap(what -> Stream.of(Paper.values())
                .flatMap(paper -> Stream.of(Version.values()).map(version -> Arguments.of(what, paper, version))));
    }

    /** The validator, which takes longer than all else together, sees each version on one paper; on the other it sees every other project. */
    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("all")
    void isFitToBeHandedOut(PrintOut what, Paper paper, Version version) throws IOException {
        try (PdfReading pdf = printed(strand, what, paper, version)) {
            isTaggedAndTitled(pdf);
            if (paper == Paper.A4) {
                assertThat(pdf.barriers()).isEmpty();
            }
            hasItsFontsEmbedded(pdf);
            isOnThisPaper(pdf, paper);
            keepsEveryLetterInsideTheMargins(pdf, what);
            saysWhomToCallOnTheRegisterOnly(pdf, what);
            if (what != PrintOut.LABELS) {
                leavesNoPageEmpty(pdf, version);
                staysOutOfThePrintersReach(pdf);
                carriesClassAndSafetyStatementAtTheFootOfEveryPage(pdf);
            }
            if (what != PrintOut.LABELS && version == Version.LARGE) {
                setsNoLetterSmallerThan18Points(pdf);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("benchful.documents.PrintSamples#others")
    void isFitForEveryOtherProjectInLargePrint(List<String> files) throws IOException {
        PrintSource other = PrintSamples.source(files);
        for (PrintOut what : PrintOut.values()) {
            try (PdfReading pdf = printed(other, what, Paper.LETTER, Version.LARGE)) {
                assertThat(pdf.barriers()).as(what.title()).isEmpty();
                hasItsFontsEmbedded(pdf);
                keepsEveryLetterInsideTheMargins(pdf, what);
                if (what != PrintOut.LABELS) {
                    setsNoLetterSmallerThan18Points(pdf);
                }
            }
        }
    }

    private static void isTaggedAndTitled(PdfReading pdf) {
        PDDocumentCatalog catalogue = pdf.document().getDocumentCatalog();
        assertThat(catalogue.getStructureTreeRoot().getKids()).isNotEmpty();
        assertThat(catalogue.getMarkInfo().isMarked()).isTrue();
        assertThat(catalogue.getLanguage()).isEqualTo("en");
        assertThat(catalogue.getDocumentOutline().hasChildren()).isTrue();
        assertThat(pdf.document().getDocumentInformation().getTitle()).contains("Knotted strand");
    }

    private static void hasItsFontsEmbedded(PdfReading pdf) throws IOException {
        assertThat(pdf.fonts()).isNotEmpty().allSatisfy(font -> assertThat(font.isEmbedded()).as(font.getName()).isTrue());
    }

    private static void isOnThisPaper(PdfReading pdf, Paper paper) {
        assertThat(pdf.document().getPages()).allSatisfy(page -> assertThat(Math.min(page.getMediaBox().getWidth(), page.getMediaBox().getHeight()) * MM)
                .isCloseTo(paper.width(), offset(0.1)));
    }

    private static void keepsEveryLetterInsideTheMargins(PdfReading pdf, PrintOut what) throws IOException {
        double margin = what == PrintOut.LABELS ? 0 : 8;
        assertThat(pdf.glyphs().stream().filter(glyph -> glyph.x() < margin || glyph.right() > wide(pdf, glyph) - margin).toList()).as(what.title()).isEmpty();
    }

    /** Most printers leave 5 mm of the paper's foot white. */
    private static void staysOutOfThePrintersReach(PdfReading pdf) throws IOException {
        assertThat(pdf.glyphs()).allSatisfy(glyph -> assertThat(glyph.y()).isLessThan(pdf.document().getPage(glyph.page() - 1).getMediaBox().getHeight() * MM - 6));
    }

    private static double wide(PdfReading pdf, PdfReading.Glyph glyph) {
        return pdf.document().getPage(glyph.page() - 1).getMediaBox().getWidth() * MM;
    }

    private static void saysWhomToCallOnTheRegisterOnly(PdfReading pdf, PrintOut what) throws IOException {
        assertThat(pdf.text().contains("Dunmore (invented)")).isEqualTo(what == PrintOut.REGISTER);
        assertThat(pdf.text().contains("01632 960417")).isEqualTo(what == PrintOut.REGISTER);
    }

    /** Beside the footer, the same on every page but for the page's number, each page says something. */
    private static void leavesNoPageEmpty(PdfReading pdf, Version version) {
        int shortest = IntStream.rangeClosed(1, pdf.pages()).map(page -> words(pdf, page)).min().orElseThrow();
        assertThat(shortest).as("letters on the emptiest page").isGreaterThan(version == Version.LARGE ? LARGE_FOOTER : FOOTER);
    }

    private static int words(PdfReading pdf, int page) {
        try {
            return pdf.text(page).replaceAll("\\s", "").length();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void carriesClassAndSafetyStatementAtTheFootOfEveryPage(PdfReading pdf) throws IOException {
        for (int page = 1; page <= pdf.pages(); page++) {
            assertThat(pdf.text(page)).contains("Knotted strand, Saturday afternoon").containsPattern("page( of)? " + page)
                    .contains("safety data sheet, venue rules, local codes and licensed practice come first.");
        }
    }

    private static void setsNoLetterSmallerThan18Points(PdfReading pdf) throws IOException {
        assertThat(pdf.glyphs().stream().filter(glyph -> glyph.size() < 17.9).toList()).isEmpty();
    }

    @Test
    void printsLettersThatNoFontHasAsBoxes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String page = "<html lang=\"en\"><head><title>t</title><style>body { font-family: 'DejaVu Sans Condensed', 'WenQuanYi Micro Hei' }</style></head><body><p>Zażółć Ωμέγα 春の小川 한국어 \uD83E\uDEA2 \u1200 \u0001 end</p></body></html>";
        new PdfRenderer().write(new Manuscript(page, Map.of()), out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            assertThat(pdf.text()).contains("Zażółć Ωμέγα 春の小川 한국어").contains("□").contains("end");
        }
    }

    /** The engine once set letters of 12 as specks; an H of the font is 0.73 of its size high. */
    @ParameterizedTest
    @ValueSource(strings = {"font-size=\"11\"", "font-size=\"12\"", "style=\"font-size: 12px\"", "font-size=\"13\"", "font-size=\"24\""})
    void drawsLettersInPicturesAsLargeAsTheyAre(String size) throws IOException {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 60\" font-family=\"DejaVu Sans\"><text x=\"10\" y=\"40\" %s>H</text></svg>".formatted(size);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRenderer().write(new Manuscript("<html lang=\"en\"><head><title>t</title><style>body { font-family: 'DejaVu Sans' } img { width: 60mm; height: 60mm }</style></head>"
                + "<body><p><img alt=\"a\" src=\"picture:a.svg\"/></p></body></html>", Map.of("a.svg", svg.getBytes(StandardCharsets.UTF_8))), out);
        double wanted = Double.parseDouble(size.replaceAll("\\D", "")) * 0.73;
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            assertThat(OutlineReader.rectangles(pdf.document().getPage(0))).anySatisfy(letter -> assertThat(letter.getHeight()).isCloseTo(wanted, offset(0.5)));
        }
    }

    @Test
    void fetchesNothingFromOutside() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String page = "<html lang=\"en\"><head><title>t</title><style>body { font-family: 'DejaVu Sans Condensed' }</style></head>"
                + "<body><img alt=\"a\" src=\"file:///etc/hostname\"/><img alt=\"b\" src=\"http://127.0.0.1:1/x.png\"/><img alt=\"c\" src=\"picture:hostile.svg\"/><p>still printed</p></body></html>";
        byte[] hostile = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"10\" height=\"10\"><image width=\"10\" height=\"10\" xlink:href=\"file:///etc/hostname\"/><script>x</script></svg>".getBytes(StandardCharsets.UTF_8);
        new PdfRenderer().write(new Manuscript(page, Map.of("hostile.svg", hostile)), out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            assertThat(pdf.text()).contains("still printed");
        }
    }

    private static PdfReading printed(PrintSource source, PrintOut what, Paper paper, Version version) throws IOException {
        LabelStock sheet = LabelStock.COMMON.stream().filter(labels -> labels.paper() == paper).findFirst().orElseThrow();
        PrintOptions options = new PrintOptions(paper, version, false, LabelSetting.of(sheet), "http://192.168.1.20:8080/classes/7/documents");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (what == PrintOut.HANDOUT) {
            service.writeHandout(source, options, 1, out);
        } else {
            service.write(what, source, options, out);
        }
        return PdfReading.of(out.toByteArray());
    }
}
