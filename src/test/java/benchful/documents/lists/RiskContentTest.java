package benchful.documents.lists;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.assessments.AssessmentPrint;
import benchful.assessments.AssessmentSpec;
import benchful.assessments.Risk;
import benchful.classes.ClassFile;
import benchful.documents.PrintOut;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.hazards.LibraryFile;
import benchful.studio.Paper;
import benchful.venues.VenueSpec;
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

    @Test
    void saysWhoseClassItIsWhereAndWithHowMany() {
        RiskContent sheet = RiskContent.of(judged(null, null), A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.facts()).extracting(RiskContent.Fact::label).containsExactly("Organisation", "Class", "Room", "Dates", "People", "First aider");
        assertThat(sheet.facts()).extracting(RiskContent.Fact::text).contains("Jory Penrose", "Slipway boatshed studio, The old boatshed, Slipway Lane, Wherrymouth (invented)")
                .anyMatch(text -> text.contains("students, 1 tutor"));
    }

    /** As HSE's form asks: what further action, by whom, by when, done. */
    @Test
    void listsWhatIsStillToBeDone() {
        RiskContent sheet = RiskContent.of(judged(null, null), A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.actions()).singleElement().satisfies(row -> assertThat(List.of(row.further(), row.byWhom(), row.byWhen(), row.done()))
                .containsExactly("Buy a second fan.", "Idris Pell", "Fri 5 Mar 2027", ""));
    }

    @Test
    void draftBeginsWithTheRoomAndTheGroup() {
        PrintSource bracelets = PrintSamples.source(PrintSamples.others().get(1));
        AssessmentSpec draft = bracelets.assessment().sheet();
        assertThat(draft.rows()).extracting(AssessmentSpec.Row::hazard).contains("fire", "slips-trips", "lifting", "first-aid", "children");
        assertThat(draft.rows()).filteredOn(row -> row.hazard().equals("fire")).singleElement()
                .satisfies(row -> assertThat(row.from()).isEqualTo("the room, Sallow Green village hall"));
    }

    /** Cautions and air make harm less likely, gear makes it less grave; what the room lacks changes nothing and has to be settled. */
    @Test
    void draftJudgesBeforeAndAfterByTheControls() {
        AssessmentSpec draft = strand.assessment().sheet();
        AssessmentSpec.Row solvent = draft.rows().stream().filter(row -> "solvent-vapour".equals(row.hazard())).findFirst().orElseThrow();
        assertThat(solvent.residualLikelihood()).isEqualTo(solvent.likelihood() - 2);
        assertThat(draft.rows()).allSatisfy(row -> assertThat(row.further() == null).isEqualTo(row.residualLikelihood() < row.likelihood()));
        assertThat(draft.rows()).filteredOn(row -> "sharp-tools".equals(row.hazard())).singleElement()
                .satisfies(row -> assertThat(row.severity() - row.residualSeverity()).isEqualTo(LibraryFile.byId().get("sharp-tools").protectiveGear().isEmpty() ? 0 : 1));
        assertThat(draft.rows().stream().map(row -> row.risk().score() - row.residual().score()).distinct().count()).isGreaterThan(2);
        VenueSpec room = strand.file().venue();
        VenueSpec airless = new VenueSpec(room.name(), room.address(), room.seats(), room.sockets(), VenueSpec.Ventilation.NONE, true, true, room.tools(), room.rules(), null,
                room.hazards(), null);
        ClassFile file = new ClassFile(strand.file().project(), strand.file().setup(), airless, strand.file().materials(), strand.file().suppliers());
        AssessmentSpec.Row still = AssessmentPrint.draft(file, List.of(LibraryFile.byId().get("solvent-vapour"))).sheet().rows().get(0);
        assertThat(still.residual()).isEqualTo(new Risk(still.residualSeverity(), still.likelihood()));
        assertThat(still.further()).startsWith("It needs ");
    }

    @Test
    void emergencyCardSaysWhatTheVenueKnowsAndLeavesTheRestToWriteOn() throws IOException {
        try (PdfReading pdf = PrintSamples.printed(PrintOut.EMERGENCY, strand, A4)) {
            assertThat(pdf.text()).contains("999 or 112").contains("By the harbour wall").contains("Slipway Lane").contains("First aider today");
            assertThat(pdf.document().getNumberOfPages()).isOne();
        }
        PrintSource nowhere = new PrintSource(new ClassFile(strand.file().project(), strand.file().setup(), null, List.of(), List.of()), strand.plan(), strand.pictures(),
                strand.hazards(), null);
        assertThat(EmergencyContent.of(nowhere, A4, new PictureBag(Version.NORMAL)).lines()).hasSize(9).allMatch(line -> line.text().isEmpty());
    }

    @Test
    void incidentSheetAsksWhatHappenedAndWhatChanges() throws IOException {
        try (PdfReading pdf = PrintSamples.printed(PrintOut.INCIDENT, strand, A4)) {
            assertThat(pdf.text()).contains("What happened").contains("holds personal data").contains("What changes").contains("so that it does not happen again");
            assertThat(pdf.document().getNumberOfPages()).isOne();
        }
    }

    private static PrintSource judged(Integer mediumFrom, Integer highFrom) {
        AssessmentSpec sheet = new AssessmentSpec(List.of(
                new AssessmentSpec.Row("solvent-vapour", "Solvent vapour", "cement", "All", 4, 5, "- Open the windows.", 4, 2, "Buy a second fan.", "Idris Pell", LocalDate.of(2027, 3, 5), null),
                new AssessmentSpec.Row(null, "A loose floorboard", null, null, 2, 2, "A rug over it.", 2, 1, null, null, null, null)),
                "Morwenna Tallis", LocalDate.of(2027, 2, 27), null, null, mediumFrom, highFrom, "Jory Penrose");
        return new PrintSource(strand.file(), strand.plan(), strand.pictures(), strand.hazards(), new AssessmentPrint(9, 3, LocalDateTime.of(2027, 3, 1, 9, 30), sheet));
    }

    private static RiskMatrix.Cell cell(RiskMatrix matrix, int severity, int likelihood) {
        return matrix.lines().stream().filter(line -> line.severity() == severity).findFirst().orElseThrow().cells().get(likelihood - 1);
    }
}
