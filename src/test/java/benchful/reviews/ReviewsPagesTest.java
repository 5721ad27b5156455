package benchful.reviews;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Crowd;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
        tutor.open(page.replace("/review", "")).type("/headcount", "14").press("Plan again").press("Keep");
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
    void reviewsEachGroupByItselfFromTheKeptPlanToTheHistoryAndThePrintOut() throws IOException {
        inGroups();
        tutor.open(page).type("/steps/knot~12/took", "3 h").type("/steps/knot~13/took", "20 min").press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select(".panel.warn li").eachText()).hasSize(1).allMatch(t -> t.startsWith("Knot the strand, group 2: 3 h instead of"));
        assertThat(tutor.page().select("figure svg text").eachText()).contains("Knot the strand, group 2", "Knot the strand, group 3");
        assertThat(tutor.field("/steps/knot~12/took")).isEqualTo("3 h");
        assertThat(tutor.field("/steps/knot~11/took")).isEmpty();

        tutor.open(tutor.page().select("a:contains(All classes of this project)").attr("href"));
        assertThat(tutor.rows("table")).anyMatch(r -> r.matches("Knot the strand \\| \\d classes \\| .*"));
        try (PDDocument sheet = Loader.loadPDF(tutor.open(page.replace("/review", "/documents/review.pdf")).bytes())) {
            assertThat(new PDFTextStripper().getText(sheet).replaceAll("\\s+", " ")).contains("Knot the strand, group 1", "Knot the strand, group 3");
        }
    }

    @Test
    void readsWhatWasKeptAndTypedBeforeGroupsWereToldApart() {
        inGroups();
        tutor.open(page).type("/steps/welcome/took", "9 min").press("Save the review");
        data.sql("""
                update kept_plan set steps = jsonb_build_object('planned',
                    (select jsonb_agg(step - 'group' order by place) from jsonb_array_elements(steps -> 'planned') with ordinality as planned (step, place)))""");
        data.sql("update review set sheet = '{\"steps\": {\"knot\": {\"took\": \"3 h\"}}}'");
        tutor.open(page);
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select(".panel.warn li").text()).contains("Knot the strand, group 1: 3 h instead of");
        assertThat(tutor.field("/steps/knot~11/took")).isEqualTo("3 h");
        assertThat(tutor.page().select("th[scope=row]").text()).contains("Knot the strand, group 2", "Knot the strand, group 3");
        assertThat(tutor.open(tutor.page().select("a:contains(All classes of this project)").attr("href")).status()).isEqualTo(200);
    }

    private void inGroups() {
        tutor.open(page.replace("/review", "/setup")).type("/groups", "3").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(200);
    }

    @Test
    void showsBothVersionsWhenTwoBrowsersWriteTheFirstReview() {
        Visitor desk = new Visitor(address).open(page);
        tutor.open(page).type("/steps/welcome/took", "9 min").press("Save the review");
        desk.type("/steps/welcome/took", "12 min").type("/steps/knot/took", "2 h").press("Save the review");
        assertThat(desk.status()).isEqualTo(409);
        assertThat(desk.rows(".summary.stale table")).contains("steps, welcome, took | 9 min | 12 min", "steps, knot, took | 2 h");
        assertThat(tutor.open(page).field("/steps/welcome/took")).isEqualTo("9 min");

        desk.press("Save the review");
        assertThat(desk.status()).isEqualTo(200);
        assertThat(tutor.open(page).field("/steps/knot/took")).isEqualTo("2 h");
    }

    @Test
    void takesOneOfTwoFirstReviewsSentAtTheSameMoment() throws Exception {
        assertThat(Crowd.together(4, i -> new Visitor(address).open(page).type("/steps/welcome/took", (5 + i) + " min"), v -> v.press("Save the review")))
                .extracting(Visitor::status).containsExactlyInAnyOrder(200, 409, 409, 409);
    }

    @Test
    void namesStepsThatRunOverAgainAndAgain() {
        tutor.open(page).type("/steps/knot/took", "3 h").press("Save the review");
        tutor.open(page.replace("/review", "")).follow("Plan the same again").press("Save and show the plan");
        tutor.open(tutor.path() + "/review").type("/steps/knot/took", "3 h 20 min").press("Save the review");
        tutor.open(tutor.page().select("a:contains(All classes of this project)").attr("href"));
        assertThat(tutor.rows("table").stream().filter(r -> r.startsWith("Knot the strand"))).allMatch(r -> r.endsWith("runs over again and again"));
    }

    @Test
    void bringsWhatWasLeftBackToTheShelfOnceHoweverOftenItIsPressed() {
        tutor.open(page.replace("/review", "/packing")).press("Everything is packed");
        String before = onHand();
        tutor.open(page).type("/materials/knot cover 4 mm/left", "3 pcs").press("Save the review");
        assertThat(tutor.page().select("#leftovers ~ ul").text()).isEqualTo("3 pcs of knot cover 4 mm");
        tutor.press("Put it back on the shelf");
        assertThat(tutor.page().select("#leftovers ~ ul").text()).isEqualTo("3 pcs of knot cover 4 mm: back on the shelf");
        assertThat(tutor.page().select("form[action$=leftovers]")).isEmpty();
        assertThat(pieces(onHand())).isEqualTo(pieces(before) + 3);

        tutor.open(page).type("/materials/knot cover 4 mm/left", "1 pcs").press("Save the review");
        assertThat(tutor.page().select("#leftovers ~ ul").text()).isEqualTo("1 pcs of knot cover 4 mm (now on the shelf: 3 pcs)");
        tutor.press("Put it back on the shelf");
        assertThat(pieces(onHand())).isEqualTo(pieces(before) + 1);

        tutor.open(page).type("/materials/knot cover 4 mm/left", "").press("Save the review").press("Put it back on the shelf");
        assertThat(onHand()).isEqualTo(before);
        assertThat(tutor.page().select("#leftovers")).isEmpty();
    }

    @Test
    void bringsNothingBackThatNeverLeftTheShelf() {
        String before = onHand();
        tutor.open(page).type("/materials/knot cover 4 mm/left", "3 pcs").press("Save the review");
        assertThat(tutor.page().select("#leftovers ~ ul").text()).isEqualTo("3 pcs of knot cover 4 mm: none of it was ticked as packed, so it still counts as being on the shelf");
        assertThat(tutor.page().select("form[action$=leftovers]")).isEmpty();
        assertThat(onHand()).isEqualTo(before);
    }

    private String onHand() {
        return new Visitor(address).open("/materials").rows("table").stream().filter(r -> r.startsWith("knot cover 4 mm")).findFirst().orElseThrow().split("\\|")[1].strip();
    }

    private static int pieces(String amount) {
        return Integer.parseInt(amount.replace('−', '-').replaceAll("[^-\\d]", ""));
    }
}
