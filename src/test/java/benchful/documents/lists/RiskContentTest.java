package benchful.documents.lists;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.assessments.AssessmentPrint;
import benchful.assessments.AssessmentSpec;
import benchful.documents.PrintOut;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.studio.Paper;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RiskContentTest {
    private static final PrintOptions A4 = new PrintOptions(Paper.A4, Version.NORMAL, false, null, null);

    private static PrintSource strand;

    @BeforeAll
    static void strand() {
        strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    @Test
    void placesEachHazardInBothMatrices() {
        RiskContent sheet = RiskContent.of(judged(null, null), A4, new PictureBag(Version.NORMAL));
        assertThat(cell(sheet.matrices().get(0), 4, 5)).isEqualTo(new RiskMatrix.Cell(20, "high", "1"));
        assertThat(cell(sheet.matrices().get(0), 2, 2)).isEqualTo(new RiskMatrix.Cell(4, "low", "2"));
        assertThat(cell(sheet.matrices().get(1), 4, 2)).isEqualTo(new RiskMatrix.Cell(8, "low", "1"));
        assertThat(sheet.rows().get(0).before()).isEqualTo("4 × 5 = 20, high");
        assertThat(sheet.rows().get(0).after()).isEqualTo("4 × 2 = 8, low");
    }

    @Test
    void bandsByTheTutorsOwnConvention() {
        RiskContent sheet = RiskContent.of(judged(6, 12), A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.convention()).isEqualTo("1 to 5 low, 6 to 11 medium, 12 to 25 high");
        assertThat(sheet.rows().get(0).after()).isEqualTo("4 × 2 = 8, medium");
    }

    @Test
    void saysThatADraftIsJudgedByNobody() {
        RiskContent sheet = RiskContent.of(strand, A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.status()).startsWith("Draft").contains("nobody has judged it");
        assertThat(sheet.rows()).extracting(RiskContent.Row::name).contains("Solvent vapour and solvent-based glue");
    }

    @Test
    void printsVersionSignatureSignsAndConvention() throws IOException {
        try (PdfReading pdf = PrintSamples.printed(PrintOut.ASSESSMENT, judged(null, null), A4)) {
            assertThat(pdf.text()).contains("Version 3, first printed Mon 1 Mar 2027, 09:30.").contains("Morwenna Tallis").contains("Sat 27 Feb 2027")
                    .contains("1 to 8 low, 9 to 15 medium, 16 to 25 high").contains("universities’ guidance").contains("W021 Flammable material")
                    .contains("Open the windows.").contains("safety data sheet");
            assertThat(pdf.document().getDocumentCatalog().getDocumentOutline().children()).extracting(item -> item.getTitle())
                    .contains("1 Solvent vapour", "2 A loose floorboard", "Signature");
        }
    }

    private static PrintSource judged(Integer mediumFrom, Integer highFrom) {
        AssessmentSpec sheet = new AssessmentSpec(List.of(
                new AssessmentSpec.Row("solvent-vapour", "Solvent vapour", "cement", "All", 4, 5, "- Open the windows.", 4, 2),
                new AssessmentSpec.Row(null, "A loose floorboard", null, null, 2, 2, "A rug over it.", 2, 1)),
                "Morwenna Tallis", LocalDate.of(2027, 2, 27), null, null, mediumFrom, highFrom);
        return new PrintSource(strand.file(), strand.plan(), strand.pictures(), strand.hazards(), new AssessmentPrint(9, 3, LocalDateTime.of(2027, 3, 1, 9, 30), sheet));
    }

    private static RiskMatrix.Cell cell(RiskMatrix matrix, int severity, int likelihood) {
        return matrix.lines().stream().filter(line -> line.severity() == severity).findFirst().orElseThrow().cells().get(likelihood - 1);
    }
}
