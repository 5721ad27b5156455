package benchful.bin;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.Everything;
import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URL;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Removing, and putting back so that every row of every table is as it was. */
@QuarkusTest
class BinPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    Everything everything;

    @Inject
    EntityManager database;

    @Inject
    Bin bin;

    private Visitor tutor;
    private String strand;

    @BeforeEach
    void samples() {
        data.onlySamples();
        strand = "/classes/" + data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    @AfterEach
    void forgetOwnHazards() {
        execute("delete from hazard");
    }

    @Test
    void bringsBackAFilledClassWholeWithItsLinks() {
        fill(strand);
        Map<String, List<String>> before = stored();
        tutor.open(strand).press("Remove this class");
        assertThat(tutor.page().select(".undo").text()).startsWith("Removed: Knotted strand, Saturday").endsWith("Undo");
        assertThat(stored()).isNotEqualTo(before);
        assertThat(tutor.open(strand).status()).isEqualTo(404);

        tutor.open("/bin").press("Put back");
        assertThat(tutor.path()).isEqualTo(strand);
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(stored()).isEqualTo(before);
        assertThat(tutor.open("/bin").page().text()).contains("The bin is empty.");
    }

    @Test
    void bringsBackEverySampleThing() {
        removeAll("select '/classes/' || id from craft_class", "Remove this class");
        data.onlySamples();
        execute("delete from craft_class");
        removeAll("select '/projects/' || id from project", "Remove");
        removeAll("select '/venues/' || id from venue", "Remove this venue");
        execute("delete from project");
        removeAll("select '/materials/' || id from material", "Remove this material");
        execute("delete from material");
        removeAll("select '/suppliers/' || id || '/edit' from supplier", "Remove this supplier");
    }

    @Test
    void bringsBackAMaterialWithItsLedgerAndTheOrdersThatNameIt() {
        tutor.open("/orders/new").press("Write these orders");
        execute("delete from craft_class");
        execute("delete from project");
        execute("update purchase_order set status = 'CANCELLED'");
        removeAll("select '/materials/' || m.id from material m where exists (select 1 from order_line l where l.material_id = m.id)", "Remove this material");
    }

    @Test
    void bringsBackAllSamplesByOneButton() {
        fill(strand);
        tutor.open("/");
        Map<String, List<String>> before = stored();
        tutor.press("Remove the sample classes");
        assertThat(tutor.page().select(".undo").text()).isEqualTo("Removed: The sample classes. Undo");
        tutor.press("Undo");
        assertThat(tutor.path()).isEqualTo("/");
        assertThat(stored()).isEqualTo(before);
    }

    @Test
    void bringsBackKitsDraftsHazardsAndTheRestOfAnOrder() {
        tutor.open("/batches/new").open(tutor.page().selectFirst("main a[href^=/batches/new?]").attr("href")).type("/kits", "6").press("Save");
        comesBack(tutor.path(), "Remove these kits");
        tutor.open("/orders/new").press("Write these orders");
        String order = tutor.open("/orders").page().selectFirst("main a[href~=/orders/\\d+]").attr("href");
        comesBack(order, "Remove this draft");
        takesALineOutAndBack(order);
        tutor.open(order).press("Mark as sent");
        tutor.open(order).press("Cancel what has not come");
        assertThat(one("select distinct status from purchase_order where id = " + order.replaceAll("\\D", ""))).isEqualTo("CANCELLED");
        tutor.press("Undo");
        assertThat(tutor.page().select("button").eachText()).contains("Cancel what has not come");
    }

    private void takesALineOutAndBack(String order) {
        List<String> lines = everything.rows().get("order_line");
        String field = tutor.open(order).page().selectFirst("input[name$=/packs]").attr("name");
        tutor.type(field, "0").press("Save changes");
        assertThat(everything.rows().get("order_line")).hasSize(lines.size() - 1);
        tutor.press("Undo");
        assertThat(tutor.path()).isEqualTo(order);
        assertThat(everything.rows().get("order_line")).isEqualTo(lines);
        tutor.open(order).type(field, "0").press("Save changes");
        tutor.press("Mark as sent");
        assertThat(tutor.open("/bin").page().text()).as("nothing comes back into an order that was sent").contains("The bin is empty.");
        execute("update purchase_order set status = 'DRAFT', sent_on = null");
    }

    @Test
    void bringsBackOwnHazardsAndOwnTexts() {
        writeHazard("/hazards/new", "own-melt");
        comesBack("/hazards/own-melt", "Remove this hazard");
        writeHazard("/hazards/magnets/edit", "magnets");
        comesBack("/hazards/magnets", "Back to the library’s text");

        tutor.open("/hazards/own-melt").press("Remove this hazard");
        writeHazard("/hazards/new", "own-melt");
        tutor.open("/bin").press("Put back");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("Something of the same short name was written since");
    }

    @Test
    void asksForAnotherNameWhereTheOldOneIsTaken() {
        execute("delete from craft_class");
        String venue = one("select '/venues/' || id from venue where name = 'Slipway boatshed studio'");
        tutor.open(venue).press("Remove this venue");
        new Visitor(address).open("/venues/new").type("/name", "slipway BOATSHED studio").press("Save");
        tutor.press("Undo");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("There is something else of the same name now");
        tutor.press("Put it back under this name");
        assertThat(tutor.path()).isEqualTo(venue);
        assertThat(tutor.page().select("h1").text()).startsWith("Slipway boatshed studio (put back)");
        assertThat(tutor.open(venue + "/edit").field("/name")).isEqualTo("Slipway boatshed studio (put back)");
    }

    @Test
    void putsBackBothWhereOneCannotBeWithoutTheOther() {
        String project = one("select '/projects/' || project_id from craft_class where id = " + strand.substring("/classes/".length()));
        execute("delete from craft_class where id <> " + strand.substring("/classes/".length()));
        Map<String, List<String>> before = stored();
        tutor.open(strand).press("Remove this class");
        tutor.open(project).press("Remove");
        tutor.open("/bin");
        tutor.press(tutor.page().selectFirst("tr:contains(Knotted strand, Saturday) button:containsOwn(Put back)"));
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("It can’t be without what was removed too").contains("Knotted strand of amazonite and pearls");
        tutor.press("Put both back");
        assertThat(tutor.path()).isEqualTo(strand);
        assertThat(stored()).isEqualTo(before);
    }

    @Test
    void linksAgainInWhicheverOrderThingsComeBack() {
        fill(strand);
        tutor.open("/orders/new").press("Write these orders");
        String order = "/orders/" + one("select cast(order_id as text) from order_class where class_id = %s limit 1".formatted(strand.substring("/classes/".length())));
        Map<String, List<String>> before = stored();
        tutor.open(strand).press("Remove this class");
        tutor.open(order).press("Remove this draft");
        tutor.open("/bin").press(tutor.page().selectFirst("tr:contains(Knotted strand, Saturday) button:containsOwn(Put back)"));
        assertThat(tutor.path()).isEqualTo(strand);
        tutor.open("/bin").press("Put back");
        assertThat(tutor.path()).isEqualTo(order);
        assertThat(stored()).isEqualTo(before);
    }

    @Test
    void restoresRowsFromBeforeALaterChangeOfTheTables() {
        execute("delete from craft_class");
        String venue = one("select '/venues/' || id from venue order by id limit 1");
        tutor.open(venue).press("Remove this venue");
        execute("update bin_row set before = (before - 'sample') || '{\"a_column_that_went\": 7}' where table_name = 'venue'");
        execute("alter table venue alter column sample set default true");
        try {
            tutor.press("Undo");
            assertThat(tutor.path()).isEqualTo(venue);
            assertThat(tutor.page().select("h1 .tag").text()).isEqualTo("sample");
        } finally {
            execute("alter table venue alter column sample drop default");
        }
    }

    @Test
    void forgetsAfterThirtyDaysOrWhenAsked() {
        execute("delete from craft_class");
        String venue = one("select '/venues/' || id from venue order by id limit 1");
        tutor.open(venue).press("Remove this venue");
        execute("update bin_entry set removed_at = removed_at - interval '29 days'");
        bin.sweep();
        assertThat(tutor.open("/bin").rows("main").toString()).contains("Thu 11 Feb 2027");
        execute("update bin_entry set removed_at = removed_at - interval '1 day 1 hour'");
        bin.sweep();
        assertThat(tutor.open("/bin").page().text()).contains("The bin is empty.");
        assertThat(one("select cast(count(*) as text) from bin_row")).isEqualTo("0");

        tutor.open(one("select '/venues/' || id from venue order by id limit 1")).press("Remove this venue");
        tutor.open("/bin").press("Remove for good");
        assertThat(tutor.page().text()).contains("The bin is empty.");
    }

    @Test
    void keepsAPictureOfManyMegabytes() {
        execute("delete from craft_class");
        String id = one("select cast(project_id as text) from project_picture limit 1");
        execute("update project_picture set content = decode(repeat('00ff10a7', 3000000), 'hex') where project_id = " + id);
        comesBack("/projects/" + id, "Remove");
    }

    private void writeHazard(String form, String id) {
        tutor.open(form).type("/id", id).type("/name", "Own " + id).type("/harm", "Burns.").type("lines/cautions", "Take care.")
                .type("lines/first_response", "Cool with water.")
                .type("lines/ghs", "H315 Causes skin irritation").press("Save");
        assertThat(tutor.path()).as("%s", tutor).isEqualTo("/hazards/" + id);
    }

    /** A class with all that can hang on one. */
    private void fill(String page) {
        tutor.open(page + "/reservation").press("Reserve what it needs");
        tutor.open(page + "/cutting");
        tutor.page().select("form[action*=/cutting/] button").stream().findFirst().ifPresent(tutor::press);
        tutor.open(page + "/packing").press(tutor.page().selectFirst("button[name=whole]"));
        tutor.open(page + "/assessment").press("Save the assessment");
        tutor.open(page + "/documents/checklist.pdf");
        tutor.open(page + "/review").type("/notes", "Went well").press("Save the review");
        for (String table : List.of("stock_movement", "kept_plan", "review", "assessment", "packed_content")) {
            assertThat(one("select cast(count(*) as text) from %s where class_id = %s".formatted(table, page.substring("/classes/".length())))).as(table).isNotEqualTo("0");
        }
    }

    private void removeAll(String pages, String button) {
        List<?> all = QuarkusTransaction.requiringNew().call(() -> database.createNativeQuery(pages, String.class).getResultList());
        assertThat(all).isNotEmpty();
        all.forEach(page -> comesBack((String) page, button));
    }

    private void comesBack(String page, String button) {
        Map<String, List<String>> before = stored();
        tutor.open(page).press(button);
        assertThat(tutor.page().select(".undo button").text()).as("%s: %s", page, tutor).isEqualTo("Undo");
        assertThat(stored()).as(page).isNotEqualTo(before);
        tutor.press("Undo");
        assertThat(tutor.status()).as(page).isEqualTo(200);
        assertThat(stored()).as(page).isEqualTo(before);
    }

    private Map<String, List<String>> stored() {
        return everything.rows("bin_entry", "bin_row");
    }

    private String one(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> (String) database.createNativeQuery(sql, String.class).getSingleResult());
    }

    private void execute(String sql) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery(sql).executeUpdate());
    }
}
