package benchful.stock.sources;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A class misses three materials: one that nobody sells, one cut from sheets, and one that is not written down at all. */
@QuarkusTest
class SourcesPagesTest {
    private static final String CLASS = """
            project:
              name: Folded Lamp
              craft: paper
              level: beginner
              sizes: [{name: one size}]
              materials:
              - {material: Lamp glue, amount: 10 g}
              - {material: Lamp card, amount: 30 cm, width: 20 cm, pieces: "1"}
              - {material: Lamp tape, amount: 50 cm}
              steps: [{id: fold, title: Fold it, kind: together, lasts: 1 h}]
            class:
              title: Lamps
              headcount: 6
              level: beginner
              meetings: [{date: "2027-03-06", starts: "10:00", ends: "12:00"}]
              currency: EUR
            materials:
            - {name: Lamp glue, unit: g}
            - {name: Lamp card, unit: cm2}
            """;

    @TestHTTPResource("/") URL start;

    private Visitor tutor;

    private void plan(String word) {
        tutor = new Visitor(start).open("/classes/imports");
        tutor.pick("file", "class.yaml", "application/yaml", CLASS.replace("Lamp", word).getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.path()).as("%s", tutor).matches("/classes/\\d+");
    }

    @Test
    void areSaidOnceAndCountedFromThenOn() {
        plan("Globe");
        assertThat(missing()).containsExactly("Globe glue: 60 g missing", "Globe card: 3,600 cm² missing", "Globe tape: 3,000 mm missing");

        String home = tutor.path();
        tutor.type("/sources/0/holds", "50 g").type("/sources/0/price", "2.50")
                .type("/sources/1/found", "2 sheets 70 x 50 cm")
                .type("/sources/2/found", "3 m").press("Write it down and work it out again");

        assertThat(tutor.path()).isEqualTo(home);
        assertThat(missing()).isEmpty();
        assertThat(tutor.rows("main")).anySatisfy(row -> assertThat(row).startsWith("Globe glue").contains("100 g"));
        assertThat(tutor.page().select("#buy ~ .panel h3, section[aria-labelledby=buy] h3").eachText()).anySatisfy(h -> assertThat(h).startsWith("Shop nearby"));
        tutor.open("/materials?find=Globe+card");
        assertThat(tutor.rows("main")).anySatisfy(row -> assertThat(row).contains("2 sheets 70 × 50 cm"));
    }

    @Test
    void storeNothingWhereARowCannotBeAndKeepWhatWasTyped() {
        plan("Lantern");
        tutor.type("/sources/0/found", "3 m").type("/sources/2/found", "3 m").press("Write it down and work it out again");

        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).contains("“3 m” is a length, but this is counted in g. Give such an amount.");
        assertThat(tutor.field("/sources/2/found")).isEqualTo("3 m");
        assertThat(new Visitor(start).open("/materials?find=Lantern+tape").rows("main")).isEmpty();

        tutor.type("/sources/0/found", "").type("/sources/0/seller", "Corner shop").type("/sources/0/holds", "50 m").type("/sources/0/price", "1.005")
                .press("Write it down and work it out again");
        assertThat(tutor.faults()).anySatisfy(f -> assertThat(f).contains("50 m")).anySatisfy(f -> assertThat(f).contains("EUR with at most 2 decimals"));
        assertThat(new Visitor(start).open("/suppliers").toString()).doesNotContain("Corner shop");

        tutor.type("/sources/0/holds", "").type("/sources/0/price", "").press("Write it down and work it out again");
        assertThat(tutor.faults()).contains("Say what is in one pack, such as 50 g or 2 sheets 70 x 50 cm.", "Say what one pack costs, such as 4.50. An estimate will do.");
    }

    @Test
    void areAskedForWhereOrdersAreWrittenTooWhichNeverSaysThatAllIsThere() {
        plan("Shade");
        String id = tutor.path().replaceAll("\\D", "");
        tutor.open("/orders/new?class=" + id);

        assertThat(tutor.page().select(".panel.good")).isEmpty();
        assertThat(missing()).hasSize(3);
        tutor.type("/sources/2/holds", "10 m").type("/sources/2/price", "3 €").type("/sources/2/seller", "Ribbon house").press("Write it down and work it out again");
        assertThat(tutor.path()).startsWith("/orders/new");
        assertThat(missing()).containsExactly("Shade glue: 60 g missing", "Shade card: 3,600 cm² missing");
        assertThat(tutor.page().select("h3").eachText()).anySatisfy(h -> assertThat(h).startsWith("Ribbon house"));
    }

    private List<String> missing() {
        return tutor.page().select("form.sources legend").eachText();
    }
}
