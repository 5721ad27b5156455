package benchful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.Everything;
import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Movements of stock outlive their class and name none of its students. */
@QuarkusTest
class MovementNamesTest {
    private static final String FIRST = "Zofia Błażejewska";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    Everything everything;

    @Inject
    EntityManager database;

    @Test
    void sayTheClassAndTheKitInstead() {
        data.onlySamples();
        String page = "/classes/" + data.classTitled("Knotted strand, Saturday");
        Visitor tutor = new Visitor(address).open(page + "/packing");
        tutor.press(tutor.page().selectFirst("section:has(h2:contains(%s)) button[name=whole]".formatted(FIRST)));
        tutor.press(tutor.page().selectFirst("section:has(h2:contains(%s)) button".formatted(FIRST)));
        assertThat(everything.rows().get("stock_movement").toString()).contains("Packed: Knotted strand, Saturday").contains(", kit 1\"").doesNotContain(FIRST);
    }

    @Test
    void areHealedWhereTheyWereStoredWithNames() throws IOException {
        data.onlySamples();
        long id = data.classTitled("Knotted strand, Saturday");
        store("PACKED", "Packed: " + FIRST, id);
        store("RETURNED", "Put back: " + FIRST + "/2", null);
        store("PACKED", "Packed: bench", id);
        store("PACKED", "Packed: Spare 1", id);
        store("PACKED", "Packed 3 kits “Loom” in size “One”", null);
        store("USED", "Packed: for the fair", null);
        try (InputStream sql = getClass().getResourceAsStream("/db/migration/V029__movement_names.sql")) {
            execute(new String(sql.readAllBytes(), StandardCharsets.UTF_8));
        }
        assertThat(everything.rows().get("stock_movement").toString()).doesNotContain(FIRST).contains("\"Packed: Knotted strand, Saturday", ", a kit\"", "\"Put back: a kit\"",
                "\"Packed: bench\"", "\"Packed: Spare 1\"", "Packed 3 kits “Loom” in size “One”", "\"Packed: for the fair\"");
    }

    private void store(String kind, String note, Long classId) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery("""
                insert into stock_movement (material_id, kind, amount, happened_at, note, class_id)
                values ((select min(id) from material), :kind, 1, now(), :note, cast(:class as bigint))""")
                .setParameter("kind", kind).setParameter("note", note).setParameter("class", classId == null ? null : classId.toString()).executeUpdate());
    }

    private void execute(String sql) {
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery(sql).executeUpdate());
    }
}
