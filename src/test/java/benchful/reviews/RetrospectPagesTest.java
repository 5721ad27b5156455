package benchful.reviews;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RetrospectPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String review;

    @BeforeEach
    void oneClass() {
        data.onlySamples();
        data.sql("delete from review");
        tutor = new Visitor(address);
        review = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/review";
    }

    private void reviewed(String knot) {
        tutor.open(review);
        for (Element field : tutor.page().select("input[name$=/took]")) {
            String planned = field.closest("tr").select("td.number").first().text();
            tutor.type(field.attr("name"), field.attr("name").contains("/knot/") ? knot : planned);
        }
        tutor.type("/materials/knot cover 4 mm/broken", "3 pcs").type("/notes", "Order more silk\nand thread").press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
    }

    @Test
    void saysHowFarClassesRanOverByWhatTheyHaveInCommonAndWhatWasLastSaid() {
        reviewed("5 h");
        tutor.open("/reviews");
        assertThat(tutor.page().select("main").text()).contains("1 class timed", "0 of 1 did", "0 % to", "knot cover 4 mm: some broke in 1 class", "Order more silk").doesNotContain("and thread");
        assertThat(tutor.rows("table")).anyMatch(r -> r.startsWith("Knotted")).anyMatch(r -> r.startsWith("6 to 10 | 1 | "));
    }

    @Test
    void keepsOwnWordsOfWhySuggestsThemAndShowsWhatGoesWithThem() {
        reviewed("5 h");
        tutor.open(review).type("/why/0", "late start").press("Save the review");
        tutor.open(review).type("/why/1", "silk frayed").press("Save the review");
        tutor.open(review).type("/why/2", "Late Start").press("Save the review");
        assertThat(tutor.open(review).field("/why/0")).isEqualTo("late start");
        assertThat(tutor.field("/why/1")).isEqualTo("silk frayed");
        assertThat(tutor.page().select("datalist#reasons option").eachAttr("value")).containsExactly("late start", "silk frayed");
        assertThat(tutor.open("/reviews").page().select("h2").eachText()).contains("By reason");
        assertThat(tutor.rows("table")).anyMatch(r -> r.startsWith("late start | 1 | ")).anyMatch(r -> r.startsWith("silk frayed | 1 | "));
        tutor.open(review).type("/why/1", "x".repeat(41)).press("Save the review");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/why/1")).isEqualTo("x".repeat(41));
        assertThat(tutor.page().text()).contains("Shorten it to at most 40 letters.");
    }

    @Test
    void saysThatNothingIsKnownWhereNothingWasTimed() {
        assertThat(tutor.open("/reviews").page().select(".lead").text()).contains("No class has been timed");
        tutor.open(review).type("/steps/welcome/took", "9 min").press("Save the review");
        assertThat(tutor.open("/reviews").page().select(".lead").text()).as("a part of a class is no class").contains("No class has been timed");
    }

    @Test
    void tellsTheOthersWhereOneCannotBeRead() {
        reviewed("2 h");
        data.sql("update review set sheet = '{\"steps\": 3}'");
        assertThat(tutor.open("/reviews").status()).isEqualTo(200);
        assertThat(tutor.page().text()).contains("Knotted strand, Saturday");
    }
}
