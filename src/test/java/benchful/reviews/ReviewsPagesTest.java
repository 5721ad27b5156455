package benchful.reviews;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ReviewsPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        page = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/review";
        tutor = new Visitor(address);
    }

    @Test
    void namesTheStepsThatRanOver() {
        tutor.open(page).type("/steps/welcome/took", "9 min").type("/steps/knot/took", "3 h").press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select(".panel.warn").text()).contains("Knot the strand: 3 h instead of").doesNotContain("Welcome");
        assertThat(tutor.page().select("figure svg text").eachText()).anyMatch(t -> t.startsWith("180 min, planned"));
    }

    @Test
    void comparesWithThePlanThatWasKeptThoughTheClassChangesAfterwards() {
        tutor.open(page).type("/steps/welcome/took", "8").press("Save the review");
        String before = tutor.rows("table.typed").get(1);
        tutor.open(page.replace("/review", "")).type("/headcount", "14").press("Plan again");
        assertThat(tutor.open(page).rows("table.typed").get(1)).isEqualTo(before);
    }

    @Test
    void reviewsAClassThatHasNoTitleOfItsOwn() {
        String untitled = "/classes/" + data.classTitled("Coiled wire earrings") + "/review";
        tutor.open(untitled).type("/steps/" + tutor.page().select("input[name$=/took]").get(0).attr("name").split("/")[2] + "/took", "9 min").press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open(untitled).page().select("h1, main p a").text()).contains("Coiled wire earrings");
    }

    @Test
    void asksForTheEndOrTheTimeNotBoth() {
        tutor.open(page).type("/steps/welcome/ended", "12:40").type("/steps/welcome/took", "9 min").press("Save the review");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("Give either when it ended or how long it took");
    }

    @Test
    void refusesNonsenseAndKeepsIt() {
        tutor.open(page).type("/steps/knot/took", "ages").type("/materials/knot cover 4 mm/broken", "some").press("Save the review");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/steps/knot/took")).isEqualTo("ages");
        assertThat(tutor.faults().toString()).contains("Give a time").contains("Give an amount");
    }

    @Test
    void namesStepsThatRunOverAgainAndAgain() {
        tutor.open(page).type("/steps/knot/took", "3 h").press("Save the review");
        tutor.open(page.replace("/review", "")).press("Plan the same again");
        tutor.open(tutor.path().replace("/setup", "/review")).type("/steps/knot/took", "3 h 20 min").press("Save the review");
        tutor.open(tutor.page().select("a:contains(All classes of this project)").attr("href"));
        assertThat(tutor.rows("table").stream().filter(r -> r.startsWith("Knot the strand"))).allMatch(r -> r.endsWith("runs over again and again"));
    }
}
