package benchful.studio;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class StudioPagesTest {
    private static final List<String> FIELDS = List.of("/name", "/address", "/deliver_to", "/mail", "/telephone", "/website", "/tax_name", "/tax_number", "/greeting",
            "/currency", "/paper", "/units", "/level", "/writing", "/buy_more");

    @TestHTTPResource("/") URL start;

    @Inject SampleData data;

    private Visitor tutor;

    @BeforeEach
    void opensThePage() {
        tutor = new Visitor(start).open("/studio");
    }

    /** Other tests know a studio of which nothing is written down. */
    @AfterEach
    void forgets() {
        tutor.open("/studio");
        FIELDS.forEach(field -> tutor.type(field, ""));
        tutor.press("Save");
    }

    @Test
    void keepsAllThatIsWrittenDown() {
        Map<String, String> typed = Map.of("/name", "Boathouse Bench", "/address", "3 Slipway Row\nTidewell", "/mail", "hello@boathouse.example", "/telephone", "01632 960000",
                "/tax_name", "GST", "/currency", "NZD", "/paper", "letter", "/units", "metric", "/writing", "american");
        typed.forEach(tutor::type);
        tutor.press("Save");
        assertThat(tutor.path()).isEqualTo("/studio");
        typed.forEach((field, text) -> assertThat(tutor.field(field)).as(field).isEqualTo(text));
    }

    @Test
    void letsNewThingsBeginWithIt() {
        data.onlySamples();
        tutor.open("/studio").type("/currency", "NZD").type("/level", "experienced").type("/tax_name", "GST").press("Save");
        assertThat(tutor.open("/suppliers/new").field("/currency")).isEqualTo("NZD");
        assertThat(tutor.page().select("main").text()).contains("GST").doesNotContain("VAT");
        tutor.open("/classes/new").open(tutor.page().select("main a[href*=project=]").first().attr("href"));
        assertThat(tutor.field("/currency")).isEqualTo("NZD");
        assertThat(tutor.field("/level")).isEqualTo("experienced");
    }

    @Test
    void printsAtTheEndOfHandoutsWhereToBuyMore() throws IOException {
        data.onlySamples();
        String handout = "/classes/" + data.classTitled("Pamphlet notebook") + "/documents/handout.pdf?paper=";
        assertThat(text(handout + "a4")).contains("At home").doesNotContain("Where to buy more");
        tutor.open("/studio").type("/buy_more", "Quay Papers, 4 Slipway Row\nquaypapers.example").press("Save");
        assertThat(text(handout + "a4")).contains("Where to buy more: Quay Papers, 4 Slipway Row, quaypapers.example");
        assertThat(text(handout + "letter")).contains("Where to buy more: Quay Papers, 4 Slipway Row, quaypapers.example");
    }

    private String text(String path) throws IOException {
        try (PDDocument file = Loader.loadPDF(tutor.open(path).bytes())) {
            return new PDFTextStripper().getText(file);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /mail     | nowhere | Give the address for mail, such as studio@example.com.
            /currency | pounds  | Give the currency by its three letters, such as GBP.
            /currency | QQQ     | “QQQ” is no currency here. Give its three letters, such as GBP.
            /tax_name | a very long name of a tax | Shorten it to at most 20 letters.
            """)
    void refusesWhatCannotBeAndKeepsWhatWasTyped(String field, String typed, String message) {
        tutor.type("/name", "Boathouse Bench").type(field, typed).press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).contains(message);
        assertThat(tutor.field(field)).isEqualTo(typed);
        assertThat(tutor.field("/name")).isEqualTo("Boathouse Bench");
    }

    @Test
    void showsBothVersionsWhenTwoChangeIt() {
        Visitor other = new Visitor(start).open("/studio");
        tutor.type("/name", "Mine").press("Save");
        other.type("/name", "Theirs").press("Save");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.page().text()).contains("Mine", "Theirs");
    }

    @Test
    void takesASignAndTakesItAwayAgain() {
        byte[] sign = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><circle cx=\"4\" cy=\"4\" r=\"3\"/></svg>".getBytes(StandardCharsets.UTF_8);
        tutor.pick("file", "sign.svg", "image/svg+xml", sign).press("Take this picture");
        assertThat(tutor.page().select("img.studio-sign").size()).isEqualTo(1);
        assertThat(new String(tutor.open("/studio/sign").bytes(), StandardCharsets.UTF_8)).contains("circle");
        tutor.open("/studio").pick("file", "sign.txt", "text/plain", "no picture".getBytes(StandardCharsets.UTF_8)).press("Take this instead");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text()).contains("This is no SVG, PNG or JPEG picture.");
        tutor.open("/studio").press("Take this instead");
        assertThat(tutor.page().select("img.studio-sign").size()).isZero();
        assertThat(tutor.open("/studio/sign").status()).isEqualTo(404);
    }
}
