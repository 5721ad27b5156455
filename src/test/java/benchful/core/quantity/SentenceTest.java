package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
    @Test
    void keepsAmountsForReadersOfOtherUnits() {
        Sentence sentence = Sentence.of("%s of %s weigh %s.", 3, Quantity.parse("2 in"), Quantity.parse("5 g"));
        assertThat(sentence).isEqualTo(new Sentence("3 of {0} weigh {1}.", List.of(Quantity.parse("2 in"), Quantity.parse("5 g"))));
        assertThat(sentence.text(new Symbols())).isEqualTo("3 of in weigh g.");
    }

    @Test
    void keepsMomentsForReadersOfOtherClocks() {
        Sentence sentence = Sentence.of("%s ends at %s on %s.", "Tea", LocalTime.of(15, 5), LocalDateTime.of(2027, 3, 6, 9, 0));
        assertThat(sentence.text(new Symbols())).isEqualTo("Tea ends at 15 on SATURDAY.");
        assertThat(sentence).hasToString("Tea ends at 15:05 on 2027-03-06 09:00.");
    }

    @Test
    void joinsSentencesWithTheValuesOfEach() {
        Sentence both = Sentence.joined("; ", List.of(Sentence.of("%s, %s", LocalTime.of(9, 0), Quantity.parse("2 g")), Sentence.plain("100 %"), Sentence.of("%s to %s", LocalTime.NOON, LocalTime.of(13, 0))));
        assertThat(both).hasToString("09:00, 2 g; 100 %; 12:00 to 13:00");
        assertThat(Sentence.of("Say: %s at %s.", both, LocalTime.of(14, 0)).text(new Symbols())).isEqualTo("Say: 9, g; 100 %; 12 to 13 at 14.");
    }

    @Test
    void refusesValuesThatNobodyWrites() {
        assertThatThrownBy(() -> new Sentence("{0}", List.of("words"))).hasMessage("Nobody writes all of [words]");
    }

    /** Writes so little of each that it can be nothing else. */
    private static final class Symbols implements Sentence.Pen {
        @Override
        public String words(Quantity amount) {
            return amount.unit().symbol();
        }

        @Override
        public String words(LocalTime time) {
            return String.valueOf(time.getHour());
        }

        @Override
        public String words(LocalDateTime moment) {
            return moment.getDayOfWeek().name();
        }
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
