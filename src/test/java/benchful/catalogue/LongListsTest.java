package benchful.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Long lists are shown page by page and narrowed by words, without scripts. */
@QuarkusTest
class LongListsTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    EntityManager database;

    private Visitor tutor;

    @BeforeEach
    void nothing() {
        data.nothing();
        tutor = new Visitor(address);
    }

    @Test
    void turnsThePagesOfMaterialsAndFindsThemByTheirName() {
        run("insert into material (version, name, unit, hazards, sample, minimum) select 0, 'Cord ' || lpad(cast(n as text), 3, '0'), 'm', cast('{}' as text[]), false, case when n % 2 = 0 then '1 m' end from generate_series(1, 120) n");
        assertThat(turned("/materials", "tbody th")).hasSize(120).startsWith("Cord 001").endsWith("Cord 120 low").doesNotHaveDuplicates();
        tutor.open("/materials?find=cord 01");
        assertThat(tutor.page().select("tbody th").eachText()).hasSize(10).startsWith("Cord 010 low");
        assertThat(turned("/materials?low=true", "tbody th")).hasSize(60).startsWith("Cord 002 low");
        assertThat(tutor.open("/materials?find=100%25").page().select("tbody th")).as("a sign that databases read in their own way").isEmpty();
        assertThat(List.of("/materials?page=99", "/materials?page=0", "/materials?page=x", "/materials?page=999999999999")).allSatisfy(path ->
                assertThat(tutor.open(path).status()).isEqualTo(200));
    }

    @Test
    void turnsThePagesOfALedgerWithItsBalance() {
        run("insert into material (version, name, unit, hazards, sample) values (0, 'Busy cord', 'pcs', cast('{}' as text[]), false)");
        run("insert into stock_movement (material_id, kind, amount, happened_at) select m.id, 'RECEIVED', 1, now() from material m, generate_series(1, 130) n");
        long id = QuarkusTransaction.requiringNew().call(() -> Material.byName("Busy cord").orElseThrow().id());
        List<String> after = turned("/materials/" + id, "td[data-label='On the shelf after']");
        assertThat(after).hasSize(130).startsWith("130", "129").endsWith("2", "1");
    }

    @Test
    void turnsThePagesOfClassesAndFindsThemByTitleAndProject() {
        data.onlySamples();
        run("""
                insert into craft_class (project_id, venue_id, starts_at, ends_at, setup, sample)
                select project_id, venue_id, starts_at - n * interval '1 day', ends_at - n * interval '1 day', jsonb_set(setup, '{title}', to_jsonb('Class ' || lpad(cast(n as text), 3, '0'))), false
                from craft_class, generate_series(1, 130) n where id = (select id from craft_class where ends_at < '2027-02-10' order by id limit 1)""");
        assertThat(turned("/classes", "tbody th")).contains("Class 001", "Class 051", "Class 130");
        tutor.open("/classes?find=class 12");
        assertThat(tutor.page().select("tbody th").eachText()).isNotEmpty().allMatch(t -> t.startsWith("Class 12"));
        assertThat(tutor.open("/classes?find=amazonite").page().select("tbody th")).isNotEmpty();
    }

    @Test
    void turnsThePagesOfVenuesSuppliersAndKitsForSaleAndFindsThemByName() {
        data.onlySamples();
        run("insert into venue (version, name, sample, sheet) select 0, 'Room ' || lpad(cast(n as text), 3, '0'), false, jsonb_build_object('name', 'Room ' || lpad(cast(n as text), 3, '0')) from generate_series(1, 120) n");
        run("insert into supplier (version, name, currency, lead_days, weekdays, sample) select 0, 'Seller ' || lpad(cast(n as text), 3, '0'), 'GBP', 3, true, false from generate_series(1, 120) n");
        run("insert into kit_batch (version, project_id, sheet, packed) select 0, (select min(id) from project), jsonb_build_object('title', 'Kits ' || lpad(cast(n as text), 3, '0'), 'kits', 4, 'level', 'beginner', 'currency', 'GBP'), '{}' from generate_series(1, 120) n order by n");
        assertTurns("/venues", ".card h2", "Room ");
        assertTurns("/suppliers", "tbody th", "Seller ");
        assertTurns("/batches", "tbody th", "Kits ");
    }

    private void assertTurns(String path, String cell, String name) {
        assertThat(turned(path, cell)).filteredOn(t -> t.startsWith(name)).hasSize(120).doesNotHaveDuplicates().startsWith(name + "001").endsWith(name + "120");
        tutor.open(path + "?find=" + name.strip() + " 01");
        assertThat(tutor.page().select(cell).eachText()).hasSize(10).startsWith(name + "010");
        assertThat(tutor.open(path + "?find=nothing of this name").page().text()).contains("None fits.");
    }

    @Test
    void turnsThePagesOfOpenOrdersAndFindsThemBySupplier() {
        run("""
                insert into purchase_order (version, supplier, currency, delivery, vat, lead_days, weekdays, status, written_on, changed_at)
                select 0, case when n % 12 = 0 then 'Bead barn' else 'Cord cabin' end, 'GBP', 0, 20, 3, true, 'DRAFT', current_date, now() from generate_series(1, 120) n""");
        assertThat(turned("/orders", "tbody th")).hasSize(120).doesNotHaveDuplicates();
        tutor.open("/orders?find=bead");
        assertThat(tutor.page().select("tbody th").eachText()).hasSize(10).allMatch(t -> t.endsWith("Bead barn"));
    }

    /** What stands on the pages of a list one after the other. */
    private List<String> turned(String path, String cell) {
        List<String> all = new ArrayList<>(tutor.open(path).page().select(cell).eachText());
        for (int turns = 0; turns < 20 && tutor.page().selectFirst("a[rel=next]") != null; turns++) {
            tutor.open(tutor.page().selectFirst("a[rel=next]").attr("href"));
            all.addAll(tutor.page().select(cell).eachText());
        }
        return all;
    }

    private void run(String sql) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery(sql).executeUpdate());
    }
}
