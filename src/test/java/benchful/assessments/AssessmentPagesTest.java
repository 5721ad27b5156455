package benchful.assessments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.SampleData;
import benchful.web.Crowd;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class AssessmentPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        page = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/assessment";
        tutor = new Visitor(address);
    }

    @Test
    void draftsFromTheHazardsReallyUsed() {
        tutor.open(page);
        assertThat(tutor.page().select("legend").eachText()).anyMatch(t -> t.contains("olvent")).noneMatch(t -> t.contains("kiln"));
        assertThat(tutor.page().select("textarea").text()).contains("Open windows");
        assertThat(tutor.field("/rows/0/severity")).matches("[1-5]");
    }

    @Test
    void isSavedSignedAndShownAgain() {
        tutor.open(page).type("/assessor", "Morwenna Tallis").type("/signed", "2027-03-01").press("Save the assessment");
        assertThat(tutor.page().select(".lead").text()).isEqualTo("Signed by Morwenna Tallis on 2027-03-01.");
    }

    @Test
    void takesOneOfTwoFirstAssessmentsSentAtTheSameMomentAndShowsTheOtherBoth() throws Exception {
        List<Visitor> people = Crowd.together(3, i -> new Visitor(address).open(page).type("/notes", "Note " + i), v -> v.press("Save the assessment"));
        assertThat(people).extracting(Visitor::status).containsExactlyInAnyOrder(200, 409, 409);
        assertThat(people.stream().filter(p -> p.status() == 409)).allMatch(p -> p.rows(".summary.stale table").stream().anyMatch(r -> r.matches("notes \\| Note \\d \\| Note \\d")));
    }

    @Test
    void refusesGradesOutsideTheMatrixAndKeepsThem() {
        tutor.open(page).type("/rows/0/severity", "7").press("Save the assessment");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("Give a grade from 1 to 5.");
        assertThat(tutor.field("/rows/0/severity")).isEqualTo("7");
    }

    @Test
    void showsASecondAssessorBothVersions() {
        Visitor other = new Visitor(address).open(page);
        tutor.open(page).type("/assessor", "Morwenna Tallis").press("Save the assessment");
        other.type("/assessor", "Idris Pell").press("Save the assessment");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.rows(".summary.stale table")).contains("assessor | Morwenna Tallis | Idris Pell");
    }

    @Test
    void keepsEachVersionThatIsPrinted() throws Exception {
        RestAssured.get(address + pdf());
        tutor.open(page);
        assertThat(tutor.page().select("a[href*=kept]")).isEmpty();
        tutor.type("/assessor", "Morwenna Tallis").press("Save the assessment");
        RestAssured.get(address + pdf());
        RestAssured.get(address + pdf());
        tutor.open(page).type("/assessor", "Idris Pell").press("Save the assessment");
        RestAssured.get(address + pdf());
        List<String> kept = tutor.open(page).page().select("a[href*=kept]").eachText();
        assertThat(kept).hasSize(2).element(0).asString().startsWith("Version 2, ");
        String first = tutor.page().select("a[href*=kept]").get(1).attr("href");
        assertThat(text(RestAssured.get(address + first.substring(1)).asByteArray())).contains("Version 1, ").contains("Morwenna Tallis").doesNotContain("Idris Pell");
        assertThat(RestAssured.get(address + pdf() + "?kept=999999").statusCode()).isEqualTo(404);
    }

    @Test
    void takesWhatIsStillToBeDoneByWhomAndByWhen() {
        tutor.open(page).type("/rows/0/further", "Ask the caretaker for the key.").type("/rows/0/by_whom", "Idris Pell").type("/rows/0/by_when", "2027-03-05")
                .type("/first_aider", "Jory Penrose").press("Save the assessment");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open(page).field("/rows/0/by_when")).isEqualTo("2027-03-05");
        assertThat(tutor.field("/first_aider")).isEqualTo("Jory Penrose");
        assertThat(tutor.page().select("legend").eachText()).as("the room's come first").element(0).asString().startsWith("Fire");
    }

    @Test
    void refusesBandsThatOverlap() {
        tutor.open(page).type("/medium_from", "12").type("/high_from", "10").press("Save the assessment");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("high above it");
    }

    private String pdf() {
        return page.substring(1).replace("/assessment", "/documents/assessment.pdf");
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Bands of 1-8, 9-15 and 16-25: universities' guidance on risk assessment; others differ. */
    @Test
    void bandsTheMatrixByTheNamedConvention() {
        assertThat(RiskBands.USUAL.of(new Risk(2, 4))).isEqualTo("low");
        assertThat(RiskBands.USUAL.of(new Risk(3, 3))).isEqualTo("medium");
        assertThat(RiskBands.USUAL.of(new Risk(5, 3))).isEqualTo("medium");
        assertThat(RiskBands.USUAL.of(new Risk(4, 4))).isEqualTo("high");
        assertThatThrownBy(() -> new Risk(0, 6)).isInstanceOf(IllegalArgumentException.class);
    }
}
