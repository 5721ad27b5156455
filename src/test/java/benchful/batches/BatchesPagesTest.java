package benchful.batches;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kits made for sale. */
@QuarkusTest
class BatchesPagesTest {
    private static final String CLASP = "hook clasp with eye";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;

    @BeforeEach
    void samples() {
        data.onlySamples();
        tutor = new Visitor(address);
    }

    @Test
    void saysWhatAKitHoldsWhatAllTakeAndWhatAPackedOneWeighs() {
        stored("7");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Autumn fair");
        assertThat(tutor.page().select("section h3").eachText()).containsExactly("5 × 40 cm", "2 × 45 cm");
        assertThat(tutor.page().select("section li").eachText()).anyMatch(li -> li.equals("1 " + CLASP));
        assertThat(tutor.page().select("section p").first().text()).matches("Weighs about \\d+ g packed\\.");
        assertThat(tutor.rows("div[aria-label=Materials of all kits] table")).anyMatch(r -> r.startsWith(CLASP + " | 7 | "));
        assertThat(tutor.page().select(".lead").last().text()).contains("order by");
    }

    @Test
    void countsPackedKitsAndMovesTheShelfWithThem() {
        stored("7");
        String page = tutor.path();
        String clasp = tutor.open("/materials").page().select("a:contains(" + CLASP + ")").attr("href");
        String before = tutor.open(clasp).page().select("dl.facts dd").first().text();
        tutor.open(page).type("kits", "2").press(tutor.page().selectFirst("section:contains(45 cm) button:contains(Packed)"));
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(tutor.page().select("section:contains(45 cm) label").first().text()).isEqualTo("2 of 2 packed");
        assertThat(tutor.rows("div[aria-label=Materials of all kits] table")).anyMatch(r -> r.startsWith(CLASP + " | 5 | "));
        assertThat(number(tutor.open(clasp).page().select("dl.facts dd").first().text())).isEqualTo(number(before) - 2);

        tutor.open(page + "/edit").type("/sizes/45 cm", "1").press("Save");
        assertThat(tutor.faults().toString()).contains("2 kits in size “45 cm” are packed already");
        tutor.open(page).type("kits", "9").press(tutor.page().selectFirst("section:contains(40 cm) button:contains(Packed)"));
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text()).contains("0 are packed");
        tutor.open(page).type("kits", "2").press(tutor.page().selectFirst("section:contains(45 cm) button:contains(Taken apart)"));
        assertThat(tutor.open(clasp).page().select("dl.facts dd").first().text()).isEqualTo(before);
    }

    @Test
    void printsALabelForEachKit() throws Exception {
        stored("7");
        String page = tutor.path();
        tutor.open(page + "/labels").type("start", "2").press("Print kit labels");
        try (PDDocument pdf = Loader.loadPDF(tutor.bytes())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text.split("Autumn fair", -1)).hasSize(8);
            assertThat(text).contains("40 cm").contains("45 cm").contains(CLASP);
        }
        assertThat(tutor.open(page + "/labels/labels.pdf?start=99").status()).isEqualTo(422);
    }

    @Test
    void printsInstructionsWithWhatABuyerNeedsAndWhoMadeTheKit() throws Exception {
        stored("7");
        tutor.follow("Print instructions");
        assertThat(tutor.page().select(".warn").text()).contains("names its maker");
        String page = tutor.path();
        tutor.open("/studio").type("/name", "Boatshed").type("/address", "1 Quay").type("/mail", "hello@boatshed.example").press("Save");
        assertThat(tutor.open(page).page().select(".warn")).isEmpty();
        tutor.press("Print instructions");
        try (PDDocument pdf = Loader.loadPDF(tutor.bytes())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text).contains("Size 40 cm").contains("Size 45 cm").doesNotContain("Size 42 cm").contains("In this kit").contains("You will need as well")
                    .contains("Batch ").contains("1 Quay").contains("hello@boatshed.example");
        }
    }

    private static int number(String words) {
        return Integer.parseInt(words.replaceAll("[^\\d-]", ""));
    }

    /** As a form of something else may say that is sent here: there is no other version to show. */
    @Test
    void savesANewOneWhateverVersionItsFormNames() {
        tutor.type("version", "5");
        stored("7");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.path()).matches("/batches/\\d+");
    }

    @Test
    void holdsOnlyWhatIsPacked() {
        stored("7");
        String page = tutor.path();
        tutor.open("/classes/" + data.classTitled("Knotted strand, Saturday"));
        List<String> bench = tutor.page().select("h3:contains(On the bench) + ul li").eachText();
        tutor.open(page);
        assertThat(bench).isNotEmpty().noneMatch(li -> tutor.rows("div[aria-label=Materials of all kits] table").stream().anyMatch(r -> li.endsWith(r.split(" \\| ")[0])));
    }

    @Test
    void isBoughtForLikeAClassAndNotTwice() {
        stored("7");
        String page = tutor.path();
        tutor.open(tutor.page().select("a:contains(Write orders)").attr("href"));
        assertThat(tutor.page().select("input[name=batch][checked]")).hasSize(1);
        assertThat(tutor.page().select("input[type=checkbox][name=class][checked]")).isEmpty();
        tutor.press("Write these orders");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open(page).page().select(".panel.good").text()).isEqualTo("Nothing: what is there and on its way is enough.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /kits        | 0      | Enter how many kits, from 1 to 1000.
            /kits        | 3      | The sizes add up to 7 of 3 kits.
            /kits        | 7.5    | Enter how many kits, from 1 to 1000.
            /packaging   | 12 cm  | Give the packaging as a mass, such as 12 g.
            /packaging   | light  | Give an amount with its unit
            /ready_by    | soon   | Give the date as year-month-day
            /currency    | ABC    | “ABC” is no currency.
            """)
    void keepsNonsenseInItsFieldAndSaysHowToMendIt(String field, String typed, String message) {
        stored("7");
        tutor.open(tutor.path() + "/edit").type(field, typed).press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains(message);
        assertThat(tutor.field(field)).isEqualTo(typed);
    }

    @Test
    void showsASecondEditorBothVersions() {
        stored("7");
        String edit = tutor.path() + "/edit";
        Visitor other = new Visitor(address).open(edit);
        tutor.open(edit).type("/title", "Mine first").press("Save");
        other.type("/title", "Theirs second").press("Save");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.rows(".summary.stale table")).contains("title | Mine first | Theirs second");
    }

    @Test
    void keepsItsProjectWhenTheSamplesGo() {
        stored("7");
        String page = tutor.path();
        tutor.open("/").press("Remove the sample classes");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open(page).status()).isEqualTo(200);
        tutor.press("Remove these kits");
        assertThat(tutor.path()).isEqualTo("/batches");
        assertThat(tutor.open(page).status()).isEqualTo(404);
    }

    private void stored(String kits) {
        String project = tutor.open("/batches/new").page().select("a:contains(Knotted strand)").attr("href");
        tutor.open(project).type("/title", "Autumn fair").type("/kits", kits).type("/sizes/40 cm", "5").type("/sizes/45 cm", "2")
                .type("/ready_by", "2027-09-18").type("/packaging", "18 g").press("Save");
        assertThat(tutor.status()).as("%s", tutor).isEqualTo(200);
    }
}
