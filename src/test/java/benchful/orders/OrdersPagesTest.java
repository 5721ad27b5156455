package benchful.orders;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.catalogue.Material;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole life of an order, as the tutor meets it. */
@QuarkusTest
class OrdersPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private long strand;

    @BeforeEach
    void samples() {
        data.onlySamples();
        strand = data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    @Test
    void writesOrdersForTheChosenClassesOnceAndBuysNothingTwice() {
        tutor.open("/orders/new?class=" + strand);
        assertThat(tutor.page().select("input[name=class][checked]").eachAttr("value")).contains(String.valueOf(strand));
        int proposed = tutor.page().select(".panel h3").size();
        assertThat(proposed).isPositive();
        tutor.press("Write these orders");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open("/orders").page().select("td:contains(draft)")).hasSize(proposed);

        tutor.open("/orders/new?class=" + strand);
        assertThat(tutor.page().select(".panel.good").text()).isEqualTo("Nothing: what is there and on its way is enough.");
        assertThat(tutor.open("/classes/" + strand).page().select("section[aria-labelledby=buy] .panel.good")).hasSize(1);
    }

    @Test
    void proposesForAllComingClassesWhereNoneIsChosen() {
        tutor.open("/orders/new");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("input[type=checkbox][checked]").size()).isGreaterThan(3);
        assertThat(tutor.rows("div[aria-label=Materials of these classes] table")).anyMatch(r -> r.contains("“Knotted strand, Saturday afternoon”"));
    }

    @Test
    void fillsTheShelfToTheLeastThatShouldLieThereOnceClassesHaveTakenTheirs() {
        tutor.open("/orders/new");
        assertThat(tutor.page().select("#fill[checked]")).hasSize(1);
        List<String> rows = tutor.rows("div[aria-label=Materials of these classes] table");
        assertThat(rows).anyMatch(r -> r.contains("for the least that should lie on the shelf"));
        tutor.press("Write these orders");
        tutor.open("/orders/new");
        assertThat(tutor.page().select(".panel.good").text()).isEqualTo("Nothing: what is there and on its way is enough.");
        receiveAll();
        assertThat(tutor.open("/").page().select("h2:contains(Low on the shelf) + ul li").eachText())
                .as("only what nobody sells stays low").allMatch(m -> tutor.open("/materials").page().text().contains(m.split(":")[0]));
    }

    private void receiveAll() {
        for (String order : tutor.open("/orders").page().select("main table a[href^=/orders/]").eachAttr("href")) {
            tutor.open(order).press("Mark as sent");
            tutor.open(order).press("Receive");
        }
    }

    @Test
    void changesADraftExactlyThenSendsAndReceivesItInTwoParcels() {
        String order = written("Ninepin Bead Loft");
        String silk = line("bead silk 0.6 mm, sea green");
        tutor.type("/lines/" + silk + "/packs", "7").type("/lines/" + silk + "/price", "1,335").type("/delivery", "£3.95").press("Save changes");
        assertThat(tutor.status()).isEqualTo(200);
        // 7 x 1.335 = 9.345 -> 9.35; VAT 20 % of 9.35 = 1.87
        assertThat(cells("bead silk 0.6 mm, sea green")).contains("£9.35", "£1.87");

        String before = onHand("bead silk 0.6 mm, sea green");
        tutor.press("Mark as sent");
        assertThat(tutor.page().select(".lead").text()).startsWith("Sent, sent ").contains("expected");
        assertThat(tutor.page().select("input[name^=/lines]")).isEmpty();
        onlyReceive(silk, "3");
        assertThat(tutor.page().select(".lead").text()).startsWith("Part received");
        assertThat(onHand("bead silk 0.6 mm, sea green")).isEqualTo(plus(before, 6));
        tutor.open(order).press("Receive");
        assertThat(tutor.page().select(".lead").text()).startsWith("Received");
        assertThat(onHand("bead silk 0.6 mm, sea green")).isEqualTo(plus(before, 14));
        assertThat(tutor.page().select("button:contains(Receive)")).isEmpty();
        assertThat(tutor.open("/orders").rows("div[aria-label=Orders that are done] table")).anyMatch(r -> r.contains("received"));
    }

    @Test
    void sendsAndAddsWithWhatWasTypedThoughItWasNotSavedBefore() {
        written("Ninepin Bead Loft");
        String silk = line("bead silk 0.6 mm, sea green");
        tutor.type("/lines/" + silk + "/packs", "9").press("Add");
        assertThat(tutor.field("/lines/" + silk + "/packs")).isEqualTo("9");
        tutor.type("/lines/" + silk + "/packs", "8").type("packs", "0").press("Add");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/lines/" + silk + "/packs")).isEqualTo("8");
        tutor.type("/lines/" + silk + "/packs", "11").press("Mark as sent");
        assertThat(tutor.page().select(".lead").text()).startsWith("Sent, sent ");
        assertThat(cells("bead silk 0.6 mm, sea green")).contains("11");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            packs | -1      | Give how many packs, from 0 to 100,000
            packs | 1.5     | Give how many packs, from 0 to 100,000
            packs | many    | Give how many packs, from 0 to 100,000
            price | -0.01   | Give a price from 0 to 1,000,000
            price | €1.20   | “€1.20” is not in GBP, as this price is. Give it in GBP, such as 4.50.
            price | cheap   | Give a price from 0 to 1,000,000
            """)
    void keepsNonsenseInItsFieldAndSaysHowToMendIt(String field, String typed, String message) {
        written("Ninepin Bead Loft");
        String at = "/lines/" + line("bead silk 0.6 mm, sea green") + "/" + field;
        tutor.type(at, typed).press("Save changes");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains(message);
        assertThat(tutor.field(at)).isEqualTo(typed);
    }

    @Test
    void printsAnOrderWithTheSameSumsAsItsPage() throws Exception {
        String order = written("Ninepin Bead Loft");
        String total = tutor.page().select("dl.facts div:contains(Total with VAT) dd").text();
        for (String paper : List.of("a4", "letter")) {
            byte[] pdf = tutor.open(order + "/order.pdf?paper=" + paper).bytes();
            try (PDDocument read = Loader.loadPDF(pdf)) {
                String text = new PDFTextStripper().getText(read);
                assertThat(text).contains("Order " + order.replaceAll(".*/", "") + " to Ninepin Bead Loft").contains(total).contains("bead silk 0.6 mm, sea green");
                assertThat(read.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
                assertThat(read.getDocumentInformation().getTitle()).startsWith("Order ");
            }
        }
        assertThat(tutor.open(order + "/order.pdf?paper=cloth").status()).isEqualTo(404);
        assertThat(tutor.open("/orders/999999/order.pdf").status()).isEqualTo(404);
    }

    @Test
    void takesALineOutButNeverTheLast() {
        written("Ninepin Bead Loft");
        List<String> fields = tutor.page().select("input[name$=/packs]").eachAttr("name");
        tutor.type(fields.get(0), "0").press("Save changes");
        assertThat(tutor.page().select("input[name$=/packs]")).hasSize(fields.size() - 1);
        fields.stream().skip(1).forEach(f -> tutor.type(f, "0"));
        tutor.press("Save changes");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("An order needs a line. Remove the draft instead.");
    }

    @Test
    void addsAPackOfTheSameSupplier() {
        written("Ninepin Bead Loft");
        int lines = tutor.page().select("input[name$=/packs]").size();
        tutor.type("packs", "0").press("Add");
        assertThat(tutor.status()).isEqualTo(422);
        tutor.type("packs", "2").press("Add");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("input[name$=/packs]")).hasSize(lines + 1);
    }

    @Test
    void showsASecondEditorBothVersionsOfADraft() {
        String order = written("Ninepin Bead Loft");
        Visitor other = new Visitor(address).open(order);
        tutor.type("/note", "Mine first").press("Save changes");
        other.type("/note", "Theirs second").press("Save changes");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.rows(".summary.stale table")).contains("note | Mine first | Theirs second");
        assertThat(other.field("/note")).isEqualTo("Theirs second");
    }

    @Test
    void refusesMoreThanIsStillToComeAndNothingAtAll() {
        written("Ninepin Bead Loft");
        String silk = line("bead silk 0.6 mm, sea green");
        tutor.press("Mark as sent").type("/packs/" + silk, "999").press("Receive");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("Of “bead silk 0.6 mm, sea green”").contains("are still to come");
        assertThat(tutor.field("/packs/" + silk)).isEqualTo("999");
        onlyReceive(silk, "0");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("Say of at least one line how many packs came.");
    }

    @Test
    void cancelsWhatHasNotComeSoThatItIsBoughtAgain() {
        String order = written("Ninepin Bead Loft");
        String silk = line("bead silk 0.6 mm, sea green");
        tutor.press("Mark as sent");
        onlyReceive(silk, "1");
        tutor.press("Cancel what has not come");
        assertThat(tutor.page().select(".lead").text()).startsWith("Cancelled");
        assertThat(tutor.open("/orders/new?class=" + strand).page().select(".panel h3").text()).contains("Ninepin Bead Loft");
        assertThat(tutor.open(order).status()).isEqualTo(200);
    }

    @Test
    void removesADraftAndFollowsNoButtonOfAnOldPage() {
        String order = written("Ninepin Bead Loft");
        Visitor other = new Visitor(address).open(order);
        tutor.press("Mark as sent");
        other.press("Remove this draft");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.page().select(".summary.stale").text()).contains("Somebody changed this order meanwhile");
        tutor.open("/orders/new").press("Write these orders");
        String draft = new Visitor(address).open("/orders").page().select("tr:contains(draft) a").first().attr("href");
        tutor.open(draft).press("Remove this draft");
        assertThat(tutor.path()).isEqualTo("/orders");
        assertThat(tutor.open(draft).status()).isEqualTo(404);
    }

    @Test
    void countsAParcelOnceThoughTwoPeopleUnpackIt() throws Exception {
        String order = written("Ninepin Bead Loft");
        String before = onHand("bead silk 0.6 mm, sea green");
        int packs = Integer.parseInt(tutor.field("/lines/" + line("bead silk 0.6 mm, sea green") + "/packs"));
        tutor.press("Mark as sent");
        List<Callable<Integer>> people = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Visitor person = new Visitor(address).open(order);
            people.add(() -> person.press("Receive").status());
        }
        ExecutorService bench = Executors.newFixedThreadPool(people.size());
        List<Integer> answers = new ArrayList<>();
        for (Future<Integer> f : bench.invokeAll(people)) {
            answers.add(f.get());
        }
        bench.shutdown();
        assertThat(answers).containsExactlyInAnyOrder(200, 409, 409, 409);
        assertThat(onHand("bead silk 0.6 mm, sea green")).isEqualTo(plus(before, 2 * packs));
    }

    @Test
    void writesATableAndAMailForTheSupplier() {
        String order = written("Ninepin Bead Loft");
        assertThat(tutor.page().select("#mail").text()).startsWith("Order ").contains("Please send:").containsPattern("- bead silk 0.6 mm, sea green: \\d+ packs of 2 m, article NB-606, at £1.");
        String csv = new String(tutor.open(order + "/order.csv").bytes(), StandardCharsets.UTF_8);
        assertThat(csv).startsWith("\uFEFFmaterial,article,packs,pack,holds,price,net,tax_percent,tax,gross,currency,needed_by,link\r\n").contains("\"bead silk 0.6 mm, sea green\",NB-606,");
        assertThat(csv.lines().count()).isGreaterThan(3);
    }

    @Test
    void saysWhoOrdersWhereToDeliverAndWhatTheSupplierCallsIt() throws Exception {
        tutor.open("/studio").type("/name", "Boathouse Bench").type("/address", "3 Slipway Row\nTidewell").type("/mail", "hello@boathouse.example")
                .type("/tax_name", "GST").type("/tax_number", "GS 123").type("/greeting", "Good morning,").press("Save");
        String order = written("Ninepin Bead Loft");
        assertThat(tutor.field("/deliver_to")).isEqualTo("3 Slipway Row\nTidewell");
        tutor.type("/deliver_to", "The boatshed\nTidewell").type("/note", "Please no plastic.\nThe bell is broken.").press("Save changes");
        assertThat(tutor.page().select("#mail").text()).contains("Our customer number: 41077", "Good morning,", "to:\nThe boatshed\nTidewell", "The bell is broken.",
                "With kind regards\nBoathouse Bench\n3 Slipway Row", "GST number GS 123").doesNotContain("VAT");
        assertThat(tutor.page().select("main").text()).contains("Without GST").doesNotContain("VAT");
        try (PDDocument read = Loader.loadPDF(tutor.open(order + "/order.pdf").bytes())) {
            assertThat(new PDFTextStripper().getText(read)).contains("Boathouse Bench", "hello@boathouse.example", "Our customer number: 41077", "Good morning,",
                    "packs of 2 m", "NB-606", "To: The boatshed, Tidewell", "The bell is broken.", "GST number GS 123").doesNotContain("VAT");
        }
        tutor.open("/studio").type("/name", "").type("/address", "").type("/mail", "").type("/tax_name", "").type("/tax_number", "").type("/greeting", "").press("Save");
    }

    @Test
    void answersNotFoundForWhatIsNotThere() {
        assertThat(tutor.open("/orders/987654").status()).isEqualTo(404);
        assertThat(tutor.open("/orders/987654/order.csv").status()).isEqualTo(404);
        assertThat(tutor.open("/orders/new?class=987654&class=x").status()).isEqualTo(200);
    }

    /** Writes the strand class's orders and opens the one to this supplier. */
    private String written(String supplier) {
        tutor.open("/orders/new?class=" + strand).press("Write these orders");
        String order = tutor.open("/orders").page().select("tr:contains(%s) a".formatted(supplier)).first().attr("href");
        tutor.open(order);
        return order;
    }

    /** The identifier of the line of a material, as its field bears it. */
    private String line(String material) {
        return tutor.page().select("tr:has(th:contains(%s)) input".formatted(material)).first().attr("name").replaceAll("\\D*(\\d+).*", "$1");
    }

    private List<String> cells(String material) {
        return tutor.page().select("tr:has(th:contains(%s)) td".formatted(material)).eachText();
    }

    private void onlyReceive(String line, String packs) {
        tutor.page().select("input[name^=/packs]").eachAttr("name").forEach(f -> tutor.type(f, ""));
        tutor.type("/packs/" + line, packs).press("Receive");
    }

    private String onHand(String material) {
        return QuarkusTransaction.requiringNew().call(() -> Material.byName(material).orElseThrow().onHand().toString());
    }

    private static String plus(String metres, int more) {
        return Quantity.parse(metres).plus(Quantity.of(more, Unit.M)).toString();
    }
}
