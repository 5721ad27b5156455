package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.documents.pdf.TagTree;
import benchful.studio.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a screen reader finds in each print-out: the order of the page, headings that nest, words for pictures, headed tables (ISO 14289-1, 7). */
class ReadingOrderTest {
    /** Letters of one line differ in height, and a sign is taller than the words beside it [mm]. */
    private static final double LINE = 6;

    private static DocumentService service;
    private static PrintSource source;

    @BeforeAll
    static void strand() {
        service = new DocumentService(PrintSamples.templates());
        source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    @ParameterizedTest
    @EnumSource(PrintOut.class)
    void readsDownThePageAndNeverBack(PrintOut what) throws IOException {
        try (PdfReading pdf = printed(what)) {
            List<TagTree.Piece> pieces = TagTree.of(pdf.document()).pieces();
            assertThat(pieces).hasSizeGreaterThan(10);
            List<String> back = new ArrayList<>();
            for (int i = 1; i < pieces.size(); i++) {
                TagTree.Piece before = pieces.get(i - 1);
                TagTree.Piece next = pieces.get(i);
                boolean above = next.page() == before.page() && next.place().getMaxY() < before.place().getMinY() - LINE;
                boolean beside = next.place().getMinX() > before.place().getMinX() + 5;
                if (next.page() < before.page() || above && !beside) {
                    back.add("page %d “%s” is read before page %d “%s”".formatted(before.page(), before.text(), next.page(), next.text()));
                }
            }
            assertThat(back).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(PrintOut.class)
    void readsEveryLetterThatIsPrintedAboveTheFooter(PrintOut what) throws IOException {
        try (PdfReading pdf = printed(what)) {
            int read = TagTree.of(pdf.document()).pieces().stream().mapToInt(piece -> piece.text().replaceAll("\\s", "").length()).sum();
            long printed = pdf.glyphs().stream().filter(glyph -> !glyph.letters().isBlank()).filter(glyph -> what == PrintOut.LABELS || glyph.y() < 275).count();
            assertThat((double) read / printed).isGreaterThan(0.75);
        }
    }

    @ParameterizedTest
    @EnumSource(PrintOut.class)
    void nestsItsHeadings(PrintOut what) throws IOException {
        try (PdfReading pdf = printed(what)) {
            int last = 0;
            for (PDStructureElement element : TagTree.of(pdf.document()).elements()) {
                String type = element.getStandardStructureType();
                if (type.matches("H[1-6]")) {
                    int level = type.charAt(1) - '0';
                    assertThat(level).as("a heading after one of level " + last).isLessThanOrEqualTo(last + 1);
                    last = level;
                }
            }
            assertThat(last > 0).as("has headings").isEqualTo(what != PrintOut.LABELS);
        }
    }

    @ParameterizedTest
    @EnumSource(PrintOut.class)
    void saysWhatPicturesShowAndWhatColumnsHold(PrintOut what) throws IOException {
        try (PdfReading pdf = printed(what)) {
            List<PDStructureElement> elements = TagTree.of(pdf.document()).elements();
            assertThat(elements).filteredOn(e -> e.getStandardStructureType().equals("Figure"))
                    .allSatisfy(figure -> assertThat(figure.getAlternateDescription()).isNotBlank());
            assertThat(elements).filteredOn(e -> e.getStandardStructureType().equals("TH"))
                    .allSatisfy(head -> assertThat(head.getAttributes().toString()).containsPattern("Scope=(Column|Row)"));
            assertThat(pdf.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(elements.stream().anyMatch(e -> e.getStandardStructureType().equals("TH"))).as("has headed tables")
                    .isEqualTo(!List.of(PrintOut.LABELS, PrintOut.HANDOUT).contains(what));
        }
    }

    private static PdfReading printed(PrintOut what) throws IOException {
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(0)), "http://192.168.1.20:8080/classes/7/documents");
        if (what != PrintOut.HANDOUT) {
            return PrintSamples.printed(what, source, options);
        }
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        service.writeHandout(source, options, 1, out);
        return PdfReading.of(out.toByteArray());
    }
}
