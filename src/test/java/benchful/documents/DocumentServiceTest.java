package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Progress;
import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Print-outs of many parts: told as they go, given up between parts. */
class DocumentServiceTest {
    private static final PrintOptions EACH = new PrintOptions(Paper.A4, Version.NORMAL, true, null, null);

    private static DocumentService service;
    private static PrintSource strand;

    @BeforeAll
    static void strand() {
        service = new DocumentService(PrintSamples.templates());
        strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    private static final class Watched implements Progress {
        private final List<String> told = new ArrayList<>();
        private final int patience;

        private Watched(int patience) {
            this.patience = patience;
        }

        @Override
        public void tell(int done, int all) {
            told.add(done + " of " + all);
        }

        @Override
        public boolean isGivenUp() {
            return told.size() >= patience;
        }
    }

    @Test
    void makesOnePartForEachStudentAndNoneAfterItIsGivenUp() throws IOException {
        Watched watched = new Watched(2);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        service.write(Wanted.of(PrintOut.HANDOUT), strand, EACH, out, watched);
        assertThat(watched.told).containsExactly("0 of 9", "1 of 9");
        assertThat(out.size()).isZero();
    }

    @Test
    void putsTheLotIntoTheOrderOfTheWorkWithLabelsLastAndLeavesOutWhatHasNothingToSay() {
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(0)), null);
        assertThat(service.parts(Wanted.ALL, strand, options)).extracting(DocumentService.Part::name).containsExactlyInAnyOrder("Shopping list", "Cutting sheet", "Packing list",
                "Tutor’s checklist", "Risk assessment", "Emergency card", "Timed plan", "Register", "Incident sheet", "Handouts: Size 42 cm", "Handouts: Size 45 cm", "Handouts: Size 50 cm", "Handouts: Size 40 cm",
                "Handouts: Size Bracelet 19 cm", "Review sheet", "Kit labels: Sheet 1");
        assertThat(Wanted.ALL.printOuts()).containsExactlyInAnyOrder(PrintOut.values()).startsWith(PrintOut.SHOPPING).endsWith(PrintOut.LABELS);
    }

    @Test
    void bundlesLabelSheetsAndNumbersThemOn() throws IOException {
        try (PdfReading pdf = PdfReading.of(PrintSamples.labels(strand, 300, LabelSetting.of(LabelStock.COMMON.get(0))))) {
            assertThat(pdf.pages()).isEqualTo(15);
            assertThat(pdf.text()).contains("Zofia Błażejewska 1 ").contains(" 300 ");
        }
    }
}
