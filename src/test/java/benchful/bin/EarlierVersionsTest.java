package benchful.bin;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Saving over something, and putting back what stood there. */
@QuarkusTest
class EarlierVersionsTest {
    private static final byte[] DOT = HexFormat.of().parseHex("89504e470d0a1a0a0000000d4948445200000001000000010802000000907753de0000000c4944415408d763f8cfc0000003010100c9fe92ef0000000049454e44ae426082");

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    EarlierVersions earlier;

    @Inject
    EntityManager database;

    private Visitor tutor;
    private String strand;

    @BeforeEach
    void samples() {
        data.onlySamples();
        execute("delete from hazard");
        strand = "/classes/" + data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    @AfterEach
    void forgetOwnHazards() {
        execute("delete from hazard");
    }

    @Test
    void putsBackEverySheetAndCanBeUndone() {
        putsBack("/venues/1", "/venues/1/edit", "/notes", "Save", "select sheet from venue where id = 1");
        putsBack("/materials/1", "/materials/1/edit", "/note", "Save", "select to_jsonb(m) - 'version' from material m where id = 1");
        putsBack("/suppliers/1/edit", "/suppliers/1/edit", "/contact", "Save", "select to_jsonb(s) - 'version' from supplier s where id = 1");
        putsBack("/projects/1", "/projects/1/edit", "/summary", "Save the project", "select sheet || (select jsonb_object_agg(p.name, p.content) from project_picture p where project_id = 1) from project where id = 1");
        putsBack(strand, strand + "/setup", "/notes", "Save", "select setup || jsonb_build_object('venue', venue_id) from craft_class where id = " + id());
        tutor.open("/hazards/magnets/edit").type("/harm", "They pinch.").press("Save");
        putsBack("/hazards/magnets", "/hazards/magnets/edit", "/harm", "Save", "select sheet from hazard where id = 'magnets'");
        tutor.open(strand + "/review").press("Save the review");
        putsBack(strand + "/review", strand + "/review", "/notes", "Save the review", "select sheet from review where class_id = " + id());
        tutor.open(strand + "/assessment").press("Save the assessment");
        putsBack(strand + "/assessment", strand + "/assessment", "/notes", "Save the assessment", "select sheet from assessment where class_id = " + id());
        tutor.open("/batches/new").open(tutor.page().selectFirst("main a[href^=/batches/new?]").attr("href")).type("/kits", "6").press("Save");
        putsBack("/batches/1", "/batches/1/edit", "/notes", "Save", "select sheet from kit_batch where id = 1");
    }

    @Test
    void putsBackTheRoomOfAClass() {
        String before = one("select cast(venue_id as text) from craft_class where id = " + id());
        tutor.open(strand + "/setup").type("venue", before.equals("1") ? "2" : "1").press("Save");
        assertThat(one("select cast(venue_id as text) from craft_class where id = " + id())).isNotEqualTo(before);
        tutor.open(strand).press("Put this back");
        assertThat(tutor.path()).isEqualTo(strand);
        assertThat(one("select cast(venue_id as text) from craft_class where id = " + id())).isEqualTo(before);
    }

    @Test
    void putsBackPicturesThatWereReplacedOrRemoved() {
        String project = one("select cast(project_id as text) from project_picture where name = 'cover' limit 1");
        String bytes = "select md5(content) from project_picture where name = 'cover' and project_id = " + project;
        String page = "/projects/" + project;
        String before = one(bytes);
        tutor.open(page + "/edit");
        String row = tutor.page().select("[name~=/pictures/\\d+/name]").stream().filter(f -> f.val().equals("cover")).findFirst().orElseThrow().attr("name").replace("/name", "");
        tutor.pick("file:" + row, "cover.png", "image/png", DOT).press("Save the project");
        assertThat(tutor.status()).as("%s", tutor.faults()).isEqualTo(200);
        assertThat(one(bytes)).isNotEqualTo(before);
        tutor.open(page).press("Put this back");
        assertThat(tutor.path()).as("%s", tutor.faults()).isEqualTo(page);
        assertThat(one(bytes)).isEqualTo(before);

        tutor.open(page + "/edit");
        tutor.press(tutor.page().selectFirst("button[name=remove][value=%s]".formatted(row)));
        tutor.page().select("[name~=/steps/\\d+/picture]").eachAttr("name").stream().filter(f -> tutor.field(f).equals("cover")).forEach(f -> tutor.type(f, ""));
        tutor.press("Save the project");
        assertThat(tutor.status()).as("%s", tutor.faults()).isEqualTo(200);
        assertThat(one("select cast(count(*) as text) from project_picture where name = 'cover' and project_id = " + project)).isEqualTo("0");
        tutor.open(page).press("Put this back");
        assertThat(one(bytes)).isEqualTo(before);
    }

    @Test
    void refusesKindlyWhereSomebodySavedMeanwhile() {
        tutor.open("/venues/1/edit").type("/notes", "First.").press("Save");
        tutor.open("/venues/1");
        Visitor other = new Visitor(address).open("/venues/1/edit").type("/notes", "Theirs.");
        other.press("Save");
        tutor.press("Put this back");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().text()).contains("Theirs.");
        assertThat(one("select sheet ->> 'notes' from venue where id = 1")).isEqualTo("Theirs.");
    }

    @Test
    void saysWhyAVersionCanNotComeBack() {
        String name = one("select name from venue where id = 1");
        tutor.open("/venues/1/edit").type("/name", "Attic").press("Save");
        new Visitor(address).open("/venues/new").type("/name", name).press("Save");
        tutor.open("/venues/1").press("Put this back");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("There is a venue called");
    }

    @Test
    void keepsWhatAPriceListReplaced() {
        String material = one("select name from material where id = 1");
        tutor.open("/materials/lists/prices.csv");
        String csv = tutor.answer().body();
        String header = csv.lines().findFirst().orElseThrow();
        String line = csv.lines().filter(l -> l.contains(material)).findFirst().orElseThrow();
        String dearer = line.replaceFirst("[0-9.]+$", "99.5");
        tutor.open("/materials/lists").pick("file", "prices.csv", "text/csv", (header + "\n" + dearer + "\n").getBytes(StandardCharsets.UTF_8));
        tutor.press("Show what it would change").press("Import all of it");
        assertThat(tutor.path()).isEqualTo("/materials");
        assertThat(one("select cast(min(price) as text) from offer where material_id = 1 and price = 99.5")).startsWith("99.5");
        tutor.open("/materials/1").press("Put this back");
        assertThat(one("select cast(count(*) as text) from offer where material_id = 1 and price = 99.5")).isEqualTo("0");
    }

    @Test
    void goWithTheirThingAndComeBackWithIt() {
        tutor.open(strand + "/setup").type("/notes", "Bring aprons.").press("Save");
        tutor.open(strand).press("Remove this class");
        assertThat(one("select cast(count(*) as text) from earlier_version")).isEqualTo("0");
        tutor.press("Undo");
        assertThat(tutor.page().select(".earlier button").eachText()).containsExactly("Put this back");
    }

    @Test
    void areForgottenAfterThirtyDays() {
        tutor.open("/venues/1/edit").type("/notes", "First.").press("Save");
        execute("update earlier_version set replaced_at = replaced_at - interval '29 days'");
        earlier.sweep();
        assertThat(tutor.open("/venues/1").page().select(".earlier button")).hasSize(1);
        execute("update earlier_version set replaced_at = replaced_at - interval '1 day 1 hour'");
        earlier.sweep();
        assertThat(tutor.open("/venues/1").page().select(".earlier")).isEmpty();
    }

    private void putsBack(String page, String form, String field, String save, String stored) {
        String before = one("select cast((%s) as text)".formatted(stored));
        tutor.open(form).type(field, "Written over.").press(save);
        String after = one("select cast((%s) as text)".formatted(stored));
        assertThat(after).as("%s: %s", form, tutor.faults()).contains("Written over.");
        tutor.open(page).press("Put this back");
        assertThat(tutor.status()).as("%s: %s", page, tutor).isEqualTo(200);
        assertThat(one("select cast((%s) as text)".formatted(stored))).isEqualTo(before);
        tutor.open(page).press("Put this back");
        assertThat(one("select cast((%s) as text)".formatted(stored))).as("undone again").isEqualTo(after);
    }

    private String id() {
        return strand.substring("/classes/".length());
    }

    private String one(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> (String) database.createNativeQuery(sql, String.class).getSingleResult());
    }

    private void execute(String sql) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery(sql).executeUpdate());
    }
}
