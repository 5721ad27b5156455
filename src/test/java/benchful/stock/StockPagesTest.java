package benchful.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

@QuarkusTest
class StockPagesTest {
    @TestHTTPResource("/") URL start;

    @Test
    void keepsARunningBalanceOfWhatCameAndWentAndCorrectsItByACount() {
        Visitor tutor = material("Running cord");
        move(tutor, "received", "10 m", "two spools");
        move(tutor, "spoilt", "30 cm", "frayed");
        move(tutor, "counted", "9.5 m", "");

        assertThat(tutor.rows("main").stream().filter(r -> r.matches(".*\\d\\d:\\d\\d.*")).map(r -> r.replaceFirst("^[^|]*\\| ", "")))
                .containsExactly("counted | −0.2 m | 9.5 m", "spoilt | −0.3 m | 9.7 m | frayed", "received | +10 m | 10 m | two spools");
        assertThat(tutor.page().select(".facts dd").eachText()).startsWith("9.5 m", "9.5 m");
    }

    @Test
    void warnsWhereMoreWasTakenThanWasThere() {
        Visitor tutor = material("Negative cord");
        move(tutor, "used", "2 m", "");
        assertThat(tutor.page().select(".panel.warn h2").text()).isEqualTo("Less than nothing is on the shelf");
        assertThat(tutor.page().select(".facts dd").eachText()).startsWith("−2 m");
    }

    @Test
    void keepsTypedValuesWhenTheAmountMeasuresSomethingElse() {
        Visitor tutor = material("Weighed cord");
        tutor.type("/kind", "used").type("/amount", "12 g").type("/note", "by mistake").press("Write it down");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).contains("“12 g” is a mass, but this is counted in m. Give such an amount.");
        assertThat(tutor.field("/note")).isEqualTo("by mistake");
        assertThat(tutor.field("/kind")).isEqualTo("used");
    }

    @Test
    void keepsTheKindOfUnitOnceStockWasMoved() {
        Visitor tutor = material("Firm cord");
        move(tutor, "received", "1 m", "");
        tutor.open(tutor.path() + "/edit").type("/unit", "g").press("Save");
        assertThat(tutor.faults()).contains("Stock of this material is counted as a length. Choose such a unit, or write a new material.");
    }

    @Test
    void storesNoneOfTheVariantsWhereOneCannotBe() {
        Visitor tutor = material("Dyed cord");
        String longest = "x".repeat(120 - "Dyed cord, ".length());
        tutor.type("/words", "ivory\n" + longest + "x").press("Add them");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).contains("“%sx” is too long: with the name of its material it has 121 letters, and 120 are the most.".formatted(longest));
        assertThat(tutor.field("/words")).isEqualTo("ivory\n" + longest + "x");
        tutor.type("/words", "a\n".repeat(3) + IntStream.range(0, 100).mapToObj(i -> "shade " + i).collect(Collectors.joining("\n"))).press("Add them");
        assertThat(tutor.faults()).contains("These are 101 lines; write at most 100 at once.");
        assertThat(tutor.type("/words", " ").press("Add them").faults()).contains("Write at least one line, such as ivory.");
        tutor.type("/words", "ivory\n" + longest).press("Add them");
        assertThat(tutor.page().select("#variants + div tbody th").eachText()).containsExactly("ivory", longest);
    }

    private Visitor material(String name) {
        return new Visitor(start).open("/materials/new").type("/name", name).type("/unit", "m").press("Save");
    }

    private static void move(Visitor tutor, String kind, String amount, String note) {
        tutor.type("/kind", kind).type("/amount", amount).type("/note", note).press("Write it down");
        assertThat(tutor.status()).isEqualTo(200);
    }
}
