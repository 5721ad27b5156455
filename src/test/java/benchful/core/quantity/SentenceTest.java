package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
    @Test
    void keepsAmountsForReadersOfOtherUnits() {
        Sentence sentence = Sentence.of("%s of %s weigh %s.", 3, Quantity.parse("2 in"), Quantity.parse("5 g"));
        assertThat(sentence).isEqualTo(new Sentence("3 of {0} weigh {1}.", List.of(Quantity.parse("2 in"), Quantity.parse("5 g"))));
        assertThat(sentence.text(q -> q.unit().symbol())).isEqualTo("3 of in weigh g.");
    }

    @ParameterizedTest
    @CsvSource({"999.94 mm, 999.9 mm", "999.95 mm, 1000 mm", "1000 mm, 1 m", "1234.5678 mm, 1.235 m", "2 in, 50.8 mm", "1.04 ml, 1 ml", "1.05 ml, 1.1 ml",
        "1.004 g, 1 g", "1.005 g, 1.01 g", "2.345, 2.35 pcs", "1 lb, 453.59 g"})
    void roundsMetricAmountsForReading(String amount, String read) {
        assertThat(Sentence.of("%s", Quantity.parse(amount))).hasToString(read);
    }

    @Test
    void cutsShortWhatWouldFillTheSentence() {
        assertThat(Sentence.quoted("x".repeat(80))).isEqualTo("x".repeat(80));
        assertThat(Sentence.quoted("x".repeat(81))).isEqualTo("x".repeat(40) + "…");
        assertThat(Sentence.quoted("😀".repeat(60))).isEqualTo("😀".repeat(40) + "…");
    }
}
