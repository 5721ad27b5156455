package benchful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.stock.Cause;
import benchful.stock.StockLedger;
import benchful.web.Crowd;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Reserving what a class needs, and packing it. */
@QuarkusTest
class PackingPagesTest {
    private static final String CLASP = "hook clasp with eye";
    private static final String FIRST = "Zofia Błażejewska";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    StockLedger ledger;

    private Visitor tutor;
    private String page;
    private long strand;

    @BeforeEach
    void samples() {
        data.onlySamples();
        strand = data.classTitled("Knotted strand, Saturday");
        page = "/classes/" + strand;
        tutor = new Visitor(address);
    }

    @Test
    void takesFromTheShelfWhatIsTickedAndPutsItBackWhenTheTickIsTaken() {
        int before = onHand(CLASP);
        tutor.open(page + "/packing").press(whole(FIRST));
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(heading(FIRST)).endsWith(": packed");
        assertThat(onHand(CLASP)).isEqualTo(before - 1);
        assertThat(tutor.page().select(".lead").text()).contains("1 of 13 boxes complete");

        tutor.type(ticked(tutor, FIRST), null).press(keep(FIRST));
        assertThat(heading(FIRST)).doesNotContain("packed");
        assertThat(onHand(CLASP)).isEqualTo(before);
    }

    @Test
    void packsEverythingWithOnePressAndABoxBackWithAnother() {
        tutor.open(page + "/packing").press("Everything is packed");
        assertThat(tutor.page().select(".lead").text()).contains("13 of 13 boxes complete");
        assertThat(tutor.page().select("button").eachText()).doesNotContain("Everything is packed");
        int packed = onHand(CLASP);

        tutor.press(tutor.page().selectFirst("section:has(h2:contains(%s)) button[name=none]".formatted(FIRST)));
        assertThat(heading(FIRST)).contains(": 0 of");
        assertThat(tutor.page().select(".lead").text()).contains("12 of 13 boxes complete");
        assertThat(onHand(CLASP)).isEqualTo(packed + 1);
    }

    @Test
    void takesNothingFromTheShelfOfWhatComesBack() {
        tutor.open("/projects/" + project() + "/edit");
        String line = tutor.page().select("input[name$=/material]").stream().filter(i -> i.val().equals("jewellery cement")).findFirst().orElseThrow().attr("name");
        tutor.type(line.replaceAll("/material$", "/lent"), "true").press("Save the project");
        assertThat(tutor.status()).isEqualTo(200);
        String before = shelf("jewellery cement");

        tutor.open(page + "/packing").press("Everything is packed");
        assertThat(tutor.page().select("label:contains(jewellery cement)").text()).isEqualTo("5 ml jewellery cement comes back, stays counted on the shelf");
        assertThat(shelf("jewellery cement")).isEqualTo(before);
        assertThat(new Visitor(address).open(page + "/reservation").rows("table")).noneMatch(row -> row.startsWith("jewellery cement"));
    }

    private long project() {
        return QuarkusTransaction.requiringNew().call(() -> CraftClass.<CraftClass>findById(strand).project().id());
    }

    private static String shelf(String material) {
        return QuarkusTransaction.requiringNew().call(() -> Material.byName(material).map(m -> m.onHand() + ", free " + m.free()).orElseThrow());
    }

    @Test
    void movesStockOnceHoweverOftenAFormIsSent() throws Exception {
        int before = onHand(CLASP);
        assertThat(Crowd.together(4, i -> new Visitor(address).open(page + "/packing"), v -> v.press(whole(v, FIRST))))
                .extracting(Visitor::status).containsOnly(200);
        assertThat(onHand(CLASP)).isEqualTo(before - 1);
    }

    @Test
    void keepsTicksInEveryBoxWhicheverButtonIsPressed() {
        tutor.open(page + "/packing");
        tutor.type(ticked(tutor, "Imani Okoro"), CLASP).type(ticked(tutor, "Łucja Wąs"), CLASP).press(whole(FIRST));
        assertThat(heading(FIRST)).endsWith(": packed");
        assertThat(heading("Imani Okoro")).contains(": 1 of");
        assertThat(heading("Łucja Wąs")).contains(": 1 of");
    }

    @Test
    void saysWhatTheShelfDoesNotHold() {
        QuarkusTransaction.requiringNew().run(() -> ledger.count(Material.byName(CLASP).orElseThrow().id(), Quantity.zero(Unit.PIECE), Cause.NONE));
        tutor.open(page + "/packing").press(whole(FIRST));
        assertThat(tutor.page().select(".panel.warn").text()).contains("Less than nothing on the shelf: ", CLASP, "Count what is there");
    }

    @Test
    void keepsWhatSomebodyElseTickedMeanwhile() {
        Visitor other = new Visitor(address).open(page + "/packing");
        tutor.open(page + "/packing");
        tutor.type(ticked(tutor, FIRST), CLASP).press(keep(FIRST));
        other.type(ticked(other, FIRST), "bead silk 0.6 mm, sea green").press(keep(other, FIRST));
        assertThat(other.page().select("section:has(h2:contains(%s)) input[checked]".formatted(FIRST)).eachAttr("value"))
                .containsExactlyInAnyOrder(CLASP, "bead silk 0.6 mm, sea green");
    }

    @Test
    void reservesTheNeedsPacksFromThemAndReleasesTheRest() {
        tutor.open(page + "/reservation").press("Reserve what it needs");
        assertThat(tutor.page().select(".lead").text()).startsWith("What this class needs is reserved");
        List<String> clasp = row(CLASP);
        assertThat(clasp.get(0)).isEqualTo(clasp.get(2));
        int free = free(CLASP);

        tutor.open(page + "/packing").press(whole(FIRST));
        assertThat(free(CLASP)).as("what is packed comes out of the reservation").isEqualTo(free);
        tutor.open(page + "/reservation");
        assertThat(row(CLASP).get(3)).isEqualTo("1");
        assertThat(Integer.parseInt(row(CLASP).get(2))).isEqualTo(Integer.parseInt(clasp.get(2)) - 1);

        tutor.press("Reserve what it needs now");
        assertThat(free(CLASP)).as("reserving again changes nothing").isEqualTo(free);
        tutor.open(page + "/packing");
        tutor.type(ticked(tutor, FIRST), null).press(keep(FIRST));
        tutor.open(page + "/reservation");
        assertThat(row(CLASP)).isEqualTo(clasp);
        tutor.press("Release it");
        assertThat(ledger.reserved(strand)).isEmpty();
        assertThat(tutor.page().select("button:contains(Release)")).isEmpty();
    }

    @Test
    void releasesWhatAClassReservedWhenItIsRemovedAndKeepsItsMovements() {
        int free = free(CLASP);
        tutor.open(page + "/reservation").press("Reserve what it needs");
        assertThat(free(CLASP)).isLessThan(free);
        tutor.open(page + "/packing").press(whole(FIRST));
        int onHand = onHand(CLASP);
        tutor.open(page).press("Remove this class");
        assertThat(tutor.path()).isEqualTo("/classes");
        assertThat(onHand(CLASP)).as("what is packed stays packed").isEqualTo(onHand);
        assertThat(free(CLASP)).isEqualTo(onHand);
        tutor.open("/materials/" + QuarkusTransaction.requiringNew().call(() -> Material.byName(CLASP).orElseThrow().id()));
        assertThat(tutor.rows("main")).anyMatch(r -> r.contains("released") && r.contains("Released, as the class was removed"));
        assertThat(tutor.page().select("a[href=%s]".formatted(page))).as("no link to a class that is gone").isEmpty();
    }

    @Test
    void countsWhatIsKeptForTheClassAsOnHandForItAndForNoOther() {
        String other = new Visitor(address).open(page).follow("Plan the same again").press("Save and show the plan").path();
        tutor.open(page + "/reservation").press("Reserve what it needs");
        String needed = row(CLASP).get(0);
        tutor.open(page);
        assertThat(tutor.rows("div[aria-label=Materials in total] table")).anyMatch(r -> r.startsWith(CLASP) && r.contains("| 3 |"));
        tutor.open(other + "/reservation");
        assertThat(row(CLASP).get(4)).isEqualTo(needed);
        assertThat(row(CLASP).get(5)).startsWith("−").contains("promised twice");
    }

    @Test
    void offersToPutBackWhatIsNoLongerInThePlan() {
        int before = onHand(CLASP);
        tutor.open(page + "/packing").press(whole("Spare 1"));
        tutor.open(page).type("/spares", "0").press("Plan again").press("Keep");
        tutor.open(page + "/packing");
        Element stray = tutor.page().selectFirst("section:has(#strays) form:contains(%s) button".formatted(CLASP));
        tutor.press(stray);
        assertThat(onHand(CLASP)).isEqualTo(before);
        assertThat(tutor.page().select("section:has(#strays) form:contains(%s)".formatted(CLASP))).isEmpty();
    }

    @Test
    void releasesWhatARemovedClassHadReserved() {
        int free = free(CLASP);
        tutor.open(page + "/reservation").press("Reserve what it needs");
        tutor.open(page).press("Remove this class");
        assertThat(free(CLASP)).isEqualTo(free);
    }

    /** Feet for metres and fluid ounces for millilitres never divide evenly: what was printed, packed and reviewed is read again. */
    @Test
    void printsPacksAndReviewsWhatIsCountedInFeetAndFluidOunces() {
        countIn("bead silk 0.6 mm, sea green", "ft");
        countIn("jewellery cement", "floz");
        stocked("bead silk 0.6 mm, sea green", "2 m");
        for (int times = 0; times < 2; times++) {
            assertThat(tutor.open(page + "/documents/packing.pdf").status()).isEqualTo(200);
        }
        tutor.open(page + "/packing").press(whole(FIRST));
        tutor.open(page + "/packing").press(whole("On the bench"));
        for (String shown : List.of("/packing", "/reservation", "", "/review", "/documents/packing.pdf", "/documents/handout.pdf")) {
            assertThat(tutor.open(page + shown).status()).as(shown).isEqualTo(200);
        }
        assertThat(tutor.open("/").status()).isEqualTo(200);
        Quantity before = balance("bead silk 0.6 mm, sea green");
        tutor.open(page + "/packing");
        tutor.type(ticked(tutor, FIRST), null).press(keep(FIRST));
        tutor.open(page + "/packing").press(whole(FIRST));
        assertThat(balance("bead silk 0.6 mm, sea green")).as("the same comes back and goes again").isEqualTo(before);
    }

    private void countIn(String material, String unit) {
        tutor.open("/materials/" + idOf(material) + "/edit").type("/unit", unit).press(tutor.page().selectFirst("button.first"));
        assertThat(tutor.path()).doesNotContain("edit");
    }

    private void stocked(String material, String amount) {
        ledger.count(idOf(material), Quantity.parse(amount), Cause.NONE);
    }

    private long idOf(String material) {
        return QuarkusTransaction.requiringNew().call(() -> Material.byName(material).orElseThrow().id());
    }

    private Quantity balance(String material) {
        return ledger.balance(idOf(material)).onHand();
    }

    @Test
    void answersNotFoundForWhatIsNotThere() {
        assertThat(tutor.open("/classes/987654/packing").status()).isEqualTo(404);
        assertThat(tutor.open("/classes/987654/reservation").status()).isEqualTo(404);
    }

    private Element whole(String kit) {
        return whole(tutor, kit);
    }

    private static Element whole(Visitor person, String kit) {
        return person.page().selectFirst("section:has(h2:contains(%s)) button[name=whole]".formatted(kit));
    }

    private static String ticked(Visitor person, String kit) {
        return person.page().selectFirst("section:has(h2:contains(%s)) input[type=checkbox]".formatted(kit)).attr("name");
    }

    private Element keep(String kit) {
        return keep(tutor, kit);
    }

    private static Element keep(Visitor person, String kit) {
        return person.page().selectFirst("section:has(h2:contains(%s)) button:contains(Keep)".formatted(kit));
    }

    private String heading(String kit) {
        return tutor.page().select("h2:contains(%s)".formatted(kit)).text();
    }

    /** Needed, on the shelf, reserved, packed, for others, free, on its way, missing. */
    private List<String> row(String material) {
        return tutor.page().select("tr:has(th:contains(%s)) td".formatted(material)).eachText();
    }

    private static int onHand(String material) {
        return QuarkusTransaction.requiringNew().call(() -> pieces(Material.byName(material).orElseThrow().onHand()));
    }

    private static int free(String material) {
        return QuarkusTransaction.requiringNew().call(() -> pieces(Material.byName(material).orElseThrow().free()));
    }

    private static int pieces(Quantity amount) {
        return amount.in(Unit.PIECE).amount().intValueExact();
    }
}
