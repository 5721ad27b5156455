package benchful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.cutting.CutLength;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.plans.stored.PlanService;
import benchful.stock.StockLedger;
import benchful.web.StoredEntity;
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

/** Writing down that a class's materials are cut, and cutting the next from what was left. */
@QuarkusTest
class CuttingPagesTest {
    private static final String THONG = "leather thong 2 mm, tan";
    private static final String BRASS = "brass sheet 0.8 mm";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    StockLedger ledger;

    @Inject
    PlanService plans;

    private Visitor tutor;
    private String page;
    private long first;

    @BeforeEach
    void samples() {
        data.onlySamples();
        data.sql("update craft_class set setup = jsonb_set(replace(replace(setup ::text, '\"black\"', '\"tan\"'), '\"red\"', '\"tan\"') ::jsonb, '{choices}', '{\"leather thong 2 mm\": \"tan\"}')"
                + " where setup ->> 'title' like 'First metal%'");
        first = data.classTitled("First metal, a bookmark in a day");
        page = "/classes/" + first + "/cutting";
        tutor = new Visitor(address);
        receive(THONG, "5 m");
        receive(BRASS, "600 cm2");
    }

    @Test
    void putsTheOffcutOnTheShelfOnceAndTakesWhatWasLostOff() {
        // 9 pieces of 15 cm and their cuts of 2 mm from 0.6 m and 5 m on hand: 3 from the shorter, 6 from the longer
        Visitor other = new Visitor(address).open(page);
        tutor.open(page);
        assertThat(tutor.page().select("section h2").eachText()).contains(THONG, BRASS);
        tutor.press(button(THONG, " is cut"));
        assertThat(tutor.page().select("section.good").text()).contains(THONG + ": cut", "from 60 cm, 5 m", "On the shelf: 4.09 m");
        // left of 5.6 m: 4.088 m of offcut and 9 pieces; 144 mm of the shorter and 9 cuts are gone
        assertThat(onHand(THONG)).isEqualTo(Quantity.parse("5.438 m"));

        other.press(other.page().selectFirst("button[aria-label=" + THONG + " is cut]"));
        assertThat(other.status()).isEqualTo(200);
        assertThat(onHand(THONG)).isEqualTo(Quantity.parse("5.438 m"));
        assertThat(material(THONG).page().select("main").text()).contains("Offcuts on the shelf", "4.09 m, left of a class");
        assertThat(material(THONG).rows("main")).anyMatch(r -> r.contains("offcut") && r.contains("+4.09 m") && r.contains("Offcut of 4.09 m"));
    }

    @Test
    void plansTheClassStillFromWhatWasCutForItAndTheNextFromTheOffcut() {
        tutor.open(page).press(button(THONG, " is cut"));

        assertThat(thong(first).bought().bought().signum()).isZero();
        assertThat(thong(first).bought().unmet().signum()).isZero();
        assertThat(thong(first).cutting().lengths()).allMatch(l -> !l.bought());
        long next = QuarkusTransaction.requiringNew().call(() -> again(StoredEntity.byId(CraftClass.class, first).orElseThrow()).id());
        assertThat(thong(next).cutting().lengths()).extracting(CutLength::length).containsExactly(Quantity.parse("4.088 m"));

        tutor.open("/classes/" + next + "/cutting").press(button(THONG, " is cut"));
        assertThat(tutor.page().select("section.good").text()).contains("from 4.09 m");
        assertThat(material(THONG).page().select("main").text()).contains("2.72 m, left of a class").doesNotContain("4.09 m, left of a class");
        assertThat(thong(first).bought().bought().signum()).isZero();

        tutor.open(page).press(button(THONG, " is not cut after all"));
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("One of its offcuts was cut for another class since. Take that back first.");
    }

    @Test
    void takesACutBackAsIfItHadNotBeenMade() {
        Quantity before = onHand(BRASS);
        tutor.open(page).press(button(BRASS, " is cut"));
        assertThat(onHand(BRASS)).isLessThan(before);
        assertThat(material(BRASS).page().select("main").text()).contains("Offcuts on the shelf");

        tutor.open(page).press(button(BRASS, " is not cut after all"));
        assertThat(onHand(BRASS)).isEqualTo(before);
        assertThat(material(BRASS).page().select("main").text()).doesNotContain("Offcuts on the shelf");
    }

    @Test
    void writesNothingDownWhenThePlanHasChangedMeanwhile() {
        tutor.open(page);
        new Visitor(address).open("/classes/" + first + "/setup").type("/spares", "3").press("Save and show the plan");
        tutor.press(button(THONG, " is cut"));

        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("The plan has changed since you looked, so nothing was written down.");
        assertThat(onHand(THONG)).isEqualTo(Quantity.parse("5.6 m"));
    }

    @Test
    void forgetsAnOffcutThatIsGone() {
        tutor.open(page).press(button(THONG, " is cut"));
        Visitor card = material(THONG);
        card.press(card.page().selectFirst("button[aria-label=4.09 m is gone]"));
        assertThat(card.page().select("main").text()).doesNotContain("Offcuts on the shelf");
        assertThat(onHand(THONG)).isEqualTo(Quantity.parse("5.438 m"));
    }

    @Test
    void showsEveryPageOfAClassWhoseCuttingLeftNoOffcut() {
        String strand = "/classes/" + data.classTitled("Knotted strand, Saturday");
        tutor.open(strand + "/cutting").press(tutor.page().selectFirst("button[aria-label=bead silk 0.6 mm, grey is cut]"));
        assertThat(tutor.page().select("section.good").text()).contains("No offcut was worth keeping.");
        for (String page : List.of("/", strand, strand + "/cutting", strand + "/packing", strand + "/reservation", strand + "/review", "/orders/new")) {
            assertThat(tutor.open(page).status()).as(page).isEqualTo(200);
        }
    }

    private static CraftClass again(CraftClass other) {
        return CraftClass.brought(other.project(), other.venue(), other.setup());
    }

    private Element button(String material, String what) {
        return tutor.page().selectFirst("button[aria-label=" + material + what + "]");
    }

    private Visitor material(String name) {
        return new Visitor(address).open("/materials/" + id(name));
    }

    private MaterialsPlan.MaterialPlan thong(long classId) {
        return QuarkusTransaction.requiringNew().call(() -> {
            List<MaterialsPlan.MaterialPlan> all = MaterialsPlanner.plan(plans.file(StoredEntity.byId(CraftClass.class, classId).orElseThrow())).materials();
            return all.stream().filter(m -> m.name().equals(THONG)).findFirst().orElseThrow();
        });
    }

    private void receive(String material, String amount) {
        new Visitor(address).open("/materials/" + id(material)).type("/kind", "received").type("/amount", amount).press("Write it down");
    }

    private Quantity onHand(String material) {
        return ledger.balance(id(material)).onHand();
    }

    private static long id(String name) {
        return QuarkusTransaction.requiringNew().call(() -> Material.byName(name).orElseThrow().id());
    }
}
