package benchful.privacy;

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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One person found, taken out and erased; the students of classes long over. */
@QuarkusTest
class PrivacyPagesTest {
    private static final String NAME = "Verity Uniquename";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    Everything everything;

    @Inject
    EntityManager database;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        execute("delete from hazard");
        tutor = new Visitor(address);
        page = "/classes/" + data.classTitled("Knotted strand, Saturday");
    }

    @Test
    void erasesOnePersonEverywhere() {
        writeHerEverywhere();
        String size = one("select coalesce(setup -> 'students' -> 0 ->> 'size', 'first') from craft_class where id = " + id());
        assertThat(everything.holding(NAME).stream().map(r -> r.split(" ")[0]).distinct()).contains("craft_class", "kept_plan", "review", "assessment",
                "printed_assessment", "packed_content", "earlier_version", "kit_batch", "purchase_order", "stock_movement", "bin_row", "bin_entry", "venue");

        find("verity  UNIQUENAME");
        assertThat(tutor.page().select("main li a").eachText()).contains("class", "review of a class", "bin", "order", "kits for sale", "movement of stock");
        assertThat(tutor.page().select(".ask").text()).contains("This can’t be undone");
        tutor.press("Take it all out as a file");
        assertThat(tutor.answer().body()).contains("verity  UNIQUENAME", "Uses a stool", "0777 123", "late by " + NAME);

        find(NAME);
        tutor.press("Erase this person");
        assertThat(tutor.page().text()).contains("Erased.");
        assertThat(everything.holding(NAME)).isEmpty();
        assertThat(everything.holding("Uses a stool")).isEmpty();
        assertThat(everything.holding("0777 123")).isEmpty();

        assertThat(one("select setup -> 'students' -> 0 ->> 'name' from craft_class where id = " + id())).isEqualTo("Student 1");
        assertThat(one("select coalesce(setup -> 'students' -> 0 ->> 'size', 'first') from craft_class where id = " + id())).isEqualTo(size);
        assertThat(tutor.open(page).status()).isEqualTo(200);
        tutor.open(page + "/packing");
        assertThat(tutor.page().select("h2").eachText()).anyMatch(h -> h.startsWith("Student 1") && h.endsWith("packed"));
        assertThat(tutor.page().select("#strays")).isEmpty();
        assertThat(tutor.open(page + "/review").status()).isEqualTo(200);
        assertThat(tutor.open(page + "/documents/handout.pdf").status()).isEqualTo(200);
        tutor.open("/bin").press("Put back");
        assertThat(tutor.status()).isEqualTo(200);
        find(NAME);
        assertThat(tutor.page().text()).contains("The name stands nowhere.");
    }

    /** A field that is asked of a student one day needs no mention here. */
    @Test
    void keepsOfAStudentOnlyWhatPlansAreComputedWith() {
        fill();
        execute("update craft_class set setup = jsonb_set(setup, '{students,0,asked_one_day}', '\"swims on Mondays\"') where id = " + id());
        find(NAME);
        tutor.press("Erase this person");
        assertThat(everything.holding("swims on Mondays")).isEmpty();
        assertThat(one("select setup -> 'students' -> 0 ->> 'name' from craft_class where id = " + id())).isEqualTo("Student 1");
    }

    @Test
    void letsNoOpenFormBringThemBack() {
        writeHerEverywhere();
        Visitor other = new Visitor(address).open(page + "/setup");
        find(NAME);
        tutor.press("Erase this person");
        other.press("Save");
        assertThat(other.status()).isEqualTo(409);
        assertThat(everything.holding(NAME)).isEmpty();
    }

    @Test
    void leavesOthersAndNamesOfThingsAlone() {
        tutor.open("/venues/1/edit").type("/name", "Rose loft").type("/notes", "Rose has the key, Rosemary not.").press("Save");
        String others = one("select cast(setup as text) from craft_class where id = " + id());
        find("rose");
        assertThat(tutor.page().text()).contains("Names of things").contains("Rose loft");
        tutor.press("Erase this person");
        assertThat(one("select sheet ->> 'notes' from venue where id = 1")).isEqualTo("somebody has the key, Rosemary not.");
        assertThat(one("select name || (sheet ->> 'name') from venue where id = 1")).isEqualTo("Rose loftRose loft");
        assertThat(one("select cast(setup as text) from craft_class where id = " + id())).isEqualTo(others);
    }

    @Test
    void saysWhatIsWrongWithANameOrADay() {
        find(" x ");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".fault").text()).startsWith("Type the name as it is written");
        assertThat(tutor.field("name")).isEqualTo(" x ");
        tutor.open("/privacy").type("before", "2099-01-01").press("Count them first");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".fault").text()).startsWith("Give the day like 2026-03-31");
    }

    @Test
    void removesTheStudentsOfClassesLongOverAndOfNoOthers() {
        writeHerEverywhere();
        String other = one("""
                select setup -> 'students' -> 0 ->> 'name' from craft_class
                where id <> %s and jsonb_array_length(setup -> 'students') > 0 and ends_at > '2027-02-10' limit 1""".formatted(id()));
        goesBy();
        String headcount = one("select setup ->> 'headcount' from craft_class where id = " + id());
        tutor.open("/privacy").type("before", "2024-05-01").press("Count them first");
        assertThat(tutor.page().text()).doesNotContain("Remove them");
        tutor.open("/privacy").type("before", "2024-05-02").press("Count them first");
        tutor.press("Remove them");
        assertThat(tutor.page().text()).contains("in 1 of these classes");

        assertThat(everything.holding(NAME)).noneMatch(r -> r.matches("(craft_class|kept_plan|review|assessment|printed_assessment|packed_content) .*"));
        assertThat(one("select cast(count(*) as text) from earlier_version where kind in ('craft_class', 'review', 'assessment') and cast(sheet as text) like '%Uniquename%'")).isEqualTo("0");
        assertThat(everything.holding(other)).isNotEmpty();
        assertThat(one("select setup ->> 'headcount' from craft_class where id = " + id())).isEqualTo(headcount);
        assertThat(tutor.open(page + "/review").status()).isEqualTo(200);
        assertThat(tutor.open(page).status()).isEqualTo(200);
        tutor.open("/privacy").type("before", "2024-05-02").press("Count them first");
        assertThat(tutor.page().text()).contains("Nobody is named in them any more.");
    }

    @Test
    void removesThemFromAClassInTheBinToo() {
        fill();
        goesBy();
        tutor.open(page).press("Remove this class");
        tutor.open("/privacy").type("before", "2024-05-02").press("Count them first").press("Remove them");
        assertThat(everything.holding("Uses a stool")).isEmpty();
        assertThat(everything.holding(NAME)).isEmpty();
        tutor.open("/bin").press("Put back");
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(tutor.page().select("h1").text()).isEqualTo("Knotted strand, with somebody");
        assertThat(one("select setup -> 'students' -> 0 ->> 'name' from craft_class where id = " + id())).isEqualTo("Student 1");
    }

    private void goesBy() {
        execute("update craft_class set ends_at = '2024-05-01 16:00', starts_at = '2024-05-01 10:00' where id = " + id());
    }

    /** She stands in a class with all that hangs on it, in notes all over, in the bin and in earlier versions. */
    private void writeHerEverywhere() {
        fill();
        tutor.open("/batches/new").open(tutor.page().selectFirst("main a[href^=/batches/new?]").attr("href")).type("/kits", "6").type("/notes", "for " + NAME).press("Save");
        tutor.open("/orders/new").press("Write these orders");
        String order = tutor.open("/orders").page().selectFirst("main a[href~=/orders/\\d+]").attr("href");
        tutor.open(order).type("/note", "Leave it with " + NAME).press("Save changes");
        tutor.open("/materials/1").type("/kind", "used").type("/amount", "1 pcs").type("/note", "broken by " + NAME).press("Write it down");
        tutor.open("/venues/1/edit").type("/notes", NAME + " has the key").press("Save");
        String other = "/classes/" + data.classTitled("Family bracelets");
        tutor.open(other + "/setup").type("/title", "With " + NAME).press("Save").press("Remove this class");
    }

    private void fill() {
        tutor.open(page + "/setup").type("/students/0/name", NAME).type("/students/0/needs", "Uses a stool").type("/students/0/emergency/name", "Vera Uniquename")
                .type("/students/0/emergency/phone", "0777 123").type("/title", "Knotted strand, with " + NAME).type("/notes", "Ask " + NAME + " about it.").press("Save");
        assertThat(tutor.path()).as("%s", tutor.faults()).isEqualTo(page);
        tutor.open(page + "/packing");
        tutor.press(tutor.page().selectFirst("section:has(h2:contains(%s)) button[name=whole]".formatted(NAME)));
        tutor.open(page + "/assessment").type("/rows/0/who", NAME + " and others").press("Save the assessment");
        tutor.open(page + "/documents/assessment.pdf");
        tutor.open(page + "/documents/handout.pdf");
        tutor.open(page + "/review").type("/notes", "late by " + NAME).press("Save the review");
        tutor.open(page + "/review").type("/notes", "late by " + NAME + "’s cat").press("Save the review");
    }

    private void find(String name) {
        tutor.open("/privacy").type("name", name).press("Find");
    }

    private String id() {
        return page.substring("/classes/".length());
    }

    private String one(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> (String) database.createNativeQuery(sql, String.class).getSingleResult());
    }

    private void execute(String sql) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery(sql).executeUpdate());
    }
}
