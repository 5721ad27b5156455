package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import io.quarkus.qute.i18n.Message;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Properties;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** American writing; how the British looks is in {@link FormatsTest}. */
class WritingTest {
    private static final LocalDateTime START = LocalDateTime.of(2027, 3, 6, 14, 30);

    @BeforeEach
    void american() {
        Writing.use(Writing.AMERICAN);
    }

    @AfterEach
    void asAllOthersWrite() {
        Writing.use(Writing.BRITISH);
    }

    @Test
    void putsTheMonthFirstAndCountsTwelveHours() {
        assertThat(Formats.words(START)).isEqualTo("Sat, Mar 6, 2027, 2:30\u00a0PM");
        assertThat(Formats.day(START.toLocalDate())).isEqualTo("Mar 6");
        assertThat(Formats.clock(START.withHour(0))).isEqualTo("12:30\u00a0AM");
        assertThat(Formats.words(LocalTime.NOON)).isEqualTo("12:00\u00a0PM");
        assertThat(Formats.words(Sentence.of("You asked for %s on %s.", START.toLocalTime(), START))).isEqualTo("You asked for 2:30\u00a0PM on Sat, Mar 6, 2027, 2:30\u00a0PM.");
    }

    @Test
    void showsDollarsAsAmericansDo() {
        assertThat(Formats.words(Money.parse("USD 1234.5"))).isEqualTo("$1,234.50");
        assertThat(Formats.words(Money.parse("GBP 12.5"))).isEqualTo("£12.50");
        assertThat(Formats.words(BigMoney.parse("USD 0.035"))).isEqualTo("$0.035");
    }

    @ParameterizedTest
    @CsvSource({"7.5 in, 7 1/2 in", "0.3125 in, 5/16 in", "7.515625 in, 7 33/64 in", "7.3 in, 7.3 in", "12 in, 12 in", "1.5 ft, 1.5 ft", "19 cm, 19 cm", "-0.5 in, −1/2 in", "-1.25 in, −1 1/4 in"})
    void writesInchesInFractionsWhereTheyAreExact(String amount, String words) {
        assertThat(Formats.words(Quantity.parse(amount))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"7.3 in, 7 5/16 in", "48.8189 in, 48 13/16 in", "1.03 in, 1 1/32 in", "0.23622 in, 15/64 in", "0.11811 in, 0.12 in", "0.5 ft, 0.5 ft", "6.25 ft, 6 ft 3 in",
        "6 ft, 6 ft", "0.25 lb, 4 oz", "2 lb, 2 lb", "19 cm, 19 cm", "3 m, 3 m", "5 g, 5.0 g", "2.999 ft, 3 ft"})
    void measuresByARuleWhatWasGivenInInchesAndNothingElse(String amount, String words) {
        assertThat(Formats.measured(Quantity.parse(amount))).isEqualTo(words);
    }

    @Test
    void writesRectanglesOfInches() {
        assertThat(Formats.words(new Extent(Quantity.parse("4.5 in"), Quantity.parse("3 in")))).isEqualTo("4 1/2 × 3 in");
        assertThat(Formats.asWritten(new Extent(Quantity.parse("4.02 in"), Quantity.parse("3 in")))).isEqualTo("4 × 3 in");
        assertThat(Formats.asWritten(new Extent(Quantity.parse("10 cm"), Quantity.parse("3 cm")))).isEqualTo("10 × 3 cm");
        assertThat(Formats.unparted("7 1/2 in of it")).isEqualTo("7\u00a01/2\u00a0in of it");
    }

    @Test
    void spellsTheProgramsWordsAndNoQuotedOnes() {
        assertThat(Writing.AMERICAN.spelt("Colours of vapour; a jeweller’s grey mould, two metres, VAT.")).isEqualTo("Colors of vapor; a jeweler’s gray mold, two meters, sales tax.");
        assertThat(Writing.AMERICAN.spelt("/colours greyed solvent-vapour")).isEqualTo("/colours greyed solvent-vapour");
        assertThat(Formats.spelt("“Grey silk” is not in the catalogue, nor is “grey”.")).isEqualTo("“Grey silk” is not in the catalog, nor is “grey”.");
        assertThat(Writing.BRITISH.spelt("Colours")).isEqualTo("Colours");
    }

    /** A word that a template asks for is the word that texts are searched for. */
    @Test
    void hasEveryWordOnceForTemplatesAndForTexts() throws IOException {
        Properties american = new Properties();
        try (InputStream in = Writing.class.getResourceAsStream("/messages/spelling_en-US.properties")) {
            american.load(in);
        }
        assertThat(american.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(Arrays.stream(Spelling.class.getMethods()).map(Method::getName).toList());
        assertThat(Spelling.class.getMethods()).allSatisfy(word -> assertThat(word.getAnnotation(Message.class).value()).isEqualTo(word.getName()));
        assertThat(american.values()).doesNotContainAnyElementsOf(american.keySet());
    }
}
