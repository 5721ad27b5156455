package benchful.assessments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
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

    /** Bands of 1-8, 9-15 and 16-25: universities' guidance on risk assessment; others differ. */
    @Test
    void bandsTheMatrixByTheNamedConvention() {
        assertThat(new Risk(2, 4).band()).isEqualTo("low");
        assertThat(new Risk(3, 3).band()).isEqualTo("medium");
        assertThat(new Risk(5, 3).band()).isEqualTo("medium");
        assertThat(new Risk(4, 4).band()).isEqualTo("high");
        assertThatThrownBy(() -> new Risk(0, 6)).isInstanceOf(IllegalArgumentException.class);
    }
}
