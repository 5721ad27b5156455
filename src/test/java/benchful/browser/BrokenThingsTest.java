package benchful.browser;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URL;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is stored is damaged by hand, one thing at a time: only what needs that thing says so, every other page is as it was. */
@QuarkusTest
class BrokenThingsTest {
    private static final Pattern LINK = Pattern.compile("/(?!q/|schema/|css/|js/)[^#]*");

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    EntityManager database;

    private Visitor tutor;
    private long broken;

    @BeforeEach
    void samples() {
        data.onlySamples();
        tutor = new Visitor(address);
        broken = data.classTitled("Knotted strand, Saturday");
    }

    /** {@code :class} is the class that is broken. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "setup        | update craft_class set setup = '[]' where id = :class",
        "setup        | update craft_class set setup = jsonb_set(setup, '{meetings}', '\"never\"') where id = :class",
        "setup        | update craft_class set setup = jsonb_set(setup, '{headcount}', '\"many\"') where id = :class",
        "project      | update project set sheet = '7' where id = (select project_id from craft_class where id = :class)",
        "project      | update project set sheet = jsonb_set(sheet, '{steps}', '{\"a\": 1}') where id = (select project_id from craft_class where id = :class)",
        "venue        | update venue set sheet = jsonb_set(sheet, '{seats}', '\"some\"') where id = (select venue_id from craft_class where id = :class)",
        "material     | update material set minimum = 'a handful' where name = 'bead silk 0.6 mm'",
        "material     | update offer set holds = '5 yellow' where material_id in (select id from material where name = 'hook clasp with eye')",
    })
    void breaksNothingBesideIt(String what, String sql) {
        damage(sql);
        Map<String, Integer> met = walk();
        assertThat(met).allSatisfy((page, status) -> assertThat(status).as(page).isLessThan(500));
        assertThat(met).containsEntry("/", 200).containsEntry("/classes", 200).containsEntry("/projects", 200).containsEntry("/materials", 200)
                .containsEntry("/venues", 200).containsEntry("/orders/new", 200).containsEntry("/classes/" + broken, 200);
        tutor.open("/classes/" + broken);
        assertThat(tutor.page().text()).contains("It can’t be planned now", "can't be read as it is stored");
        assertThat(tutor.page().select("main a.button").eachAttr("href")).contains("/classes/" + broken + "/setup");
        assertThat(tutor.page().select("button").eachText()).contains("Remove this class");
    }

    @Test
    void namesTheClassOnTheFirstPageAndBuysForTheOthers() {
        String before = orders();
        damage("update craft_class set setup = jsonb_set(setup, '{meetings}', '\"never\"') where id = :class");
        tutor.open("/");
        assertThat(tutor.rows("table")).anyMatch(r -> r.contains("“Knotted strand, Saturday afternoon” can’t be worked out: the set-up of this class can't be read"));
        assertThat(orders()).isNotEqualTo(before).isNotEmpty();
        assertThat(tutor.page().select(".panel.warn").text()).contains("“Knotted strand, Saturday afternoon” is left out");
    }

    private String orders() {
        return tutor.open("/orders/new").page().select("main h3").text();
    }

    @Test
    void isMendedInItsOwnForm() {
        damage("update craft_class set setup = jsonb_set(setup, '{headcount}', '\"many\"') where id = :class");
        tutor.open("/classes/" + broken + "/setup");
        assertThat(tutor.field("/headcount")).isEqualTo("many");
        assertThat(tutor.faults().toString()).contains("number of students");
        tutor.type("/headcount", "9").press("Save and show the plan");
        assertThat(tutor.page().select("#fit-answer").text()).startsWith("Yes. Nine in ten of such classes end by ");
    }

    @Test
    void isMendedWhereItsProjectOrAMaterialIsWritten() {
        damage("update material set minimum = 'a handful' where name = 'bead silk 0.6 mm'");
        tutor.open("/classes/" + broken);
        tutor.open(tutor.page().select("main a.button").stream().filter(a -> a.text().startsWith("Mend the material")).findFirst().orElseThrow().attr("href"));
        assertThat(tutor.field("/minimum")).isEqualTo("a handful");
        tutor.type("/minimum", "2 m").press("Save");
        assertThat(tutor.open("/classes/" + broken).page().select("#fit-answer").text()).startsWith("Yes.");
        damage("update project set sheet = jsonb_set(sheet, '{minimum_age}', '\"old\"') where id = (select project_id from craft_class where id = :class)");
        tutor.open("/classes/" + broken);
        tutor.open(tutor.page().select("main a.button").stream().filter(a -> a.text().startsWith("Mend the project")).findFirst().orElseThrow().attr("href"));
        tutor.type("/minimum_age", "12").press("Save the project");
        assertThat(tutor.open("/classes/" + broken).page().select("#fit-answer").text()).startsWith("Yes.");
    }

    @Test
    void isRemovedByItsOwnButton() {
        damage("update craft_class set setup = '[]' where id = :class");
        tutor.open("/classes/" + broken).press("Remove this class");
        assertThat(tutor.path()).isEqualTo("/classes");
        assertThat(tutor.open("/").status()).isEqualTo(200);
    }

    @Test
    void keepsWhatWasPackedPrintedAndReviewedApart() {
        tutor.open("/classes/" + broken + "/packing").press("All of it is packed");
        tutor.open("/classes/" + broken + "/review").press("Save the review");
        damage("update packed_content set amount = 'three-ish' where id = (select min(id) from packed_content where class_id = :class)");
        damage("update kept_plan set steps = '[]' where class_id = :class");
        Map<String, Integer> met = walk();
        assertThat(met).allSatisfy((page, status) -> assertThat(status).as(page).isLessThan(500));
        assertThat(tutor.open("/classes/" + broken).page().select("#fit-answer").text()).startsWith("Yes.");
        assertThat(tutor.open("/classes/" + broken + "/packing").page().text()).contains("what was packed of");
        assertThat(tutor.open("/classes/" + broken + "/review").page().text()).contains("the plan that was kept");
    }

    private void damage(String sql) {
        QuarkusTransaction.requiringNew().run(() -> {
            var query = database.createNativeQuery(sql);
            if (sql.contains(":class")) {
                query.setParameter("class", broken);
            }
            assertThat(query.executeUpdate()).isPositive();
        });
    }

    /** Every page that can be reached from the first by its links, one of each kind beside all of the broken class and of what it is made from. */
    private Map<String, Integer> walk() {
        Map<String, Integer> met = new LinkedHashMap<>();
        TreeSet<String> kinds = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(List.of("/", "/classes", "/classes/" + broken));
        while (!open.isEmpty()) {
            String path = open.poll();
            if (met.containsKey(path) || !path.startsWith("/classes/" + broken) && !kinds.add(kind(path))) {
                continue;
            }
            met.put(path, tutor.open(path).status());
            if (tutor.page() != null) {
                links().filter(l -> !met.containsKey(l)).forEach(open::add);
            }
        }
        return met;
    }

    /** Pages that differ only by a number, or by the name of a hazard, are of one kind. */
    private static String kind(String path) {
        return path.replaceAll("\\d+", "N").replaceAll("^/hazards/(?!new)[^/]+", "/hazards/N");
    }

    private Stream<String> links() {
        return tutor.page().select("a[href^=/]").eachAttr("href").stream().map(h -> h.replaceAll("[#?].*", "")).filter(h -> LINK.matcher(h).matches()).filter(h -> !h.endsWith(".pdf"));
    }
}
