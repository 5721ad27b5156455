package benchful.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenPriceTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            £4.50        | GBP | 4.50
            £ 4.50       | GBP | 4.50
            4,50 €       | EUR | 4.50
            4.50€        | EUR | 4.50
            EUR 4.50     | EUR | 4.50
            4.50 eur     | EUR | 4.50
            4.50         | GBP | 4.50
            4            | GBP | 4
            $12          | USD | 12
            $12          | CAD | 12
            US$12        | USD | 12
            ¥500         | JPY | 500
            45 kr        | SEK | 45
            Fr. 9.90     | CHF | 9.90
            £1,234.50    | GBP | 1234.50
            1.234,50 €   | EUR | 1234.50
            1 234,50 €   | EUR | 1234.50
            CHF 1'234.50 | CHF | 1234.50
            £1,234,567   | GBP | 1234567
            0,125        | EUR | 0.125
            1.234        | EUR | 1.234
            1234.567     | EUR | 1234.567
            """)
    void readsAPriceWithItsCurrency(String written, String currency, String amount) {
        WrittenPrice price = WrittenPrice.of(written).orElseThrow();
        assertThat(price.amount()).isEqualByComparingTo(amount);
        assertThat(price.unfit(currency)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"£4.50, EUR", "4.50 €, GBP", "USD 3, GBP", "US$3, CAD", "45 kr, GBP"})
    void refusesAnotherCurrency(String written, String currency) {
        assertThat(WrittenPrice.of(written).orElseThrow().unfit(currency))
                .hasValue("“%s” is not in %s, as this price is. Give it in %s, such as 4.50.".formatted(written, currency, currency));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,234 | 1,234 | 1234 | 1.234", "1.234 € | 1.234 € | 1234 | 1.234", "£12,000 | £12,000 | 12000 | 12.000"})
    void asksWhereItMayBeAThousandOrALittleOverOne(String text, String written, String large, String small) {
        WrittenPrice price = WrittenPrice.of(text).orElseThrow();
        assertThat(price.amount()).isNull();
        assertThat(price.unfit("EUR")).hasValue("“%s” may be a thousand and more or a little over one. Write it as %s or as %s.".formatted(written, large, small));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "dear", "£", "-4.50", "4.50 pcs", "£4.50 €", "4 50", "1,23,4", "1,234,5.6", "1.234.5", "4.50 to 5", "12 12 12"})
    void passesOverWhatIsNoPrice(String written) {
        assertThat(WrittenPrice.of(written)).isEmpty();
    }

    @Test
    void tellsAPlainNumberFromWhatWasWrittenByHand() {
        assertThat(WrittenPrice.of("4,50").orElseThrow().plain()).isTrue();
        assertThat(WrittenPrice.of("1 234,50").orElseThrow().plain()).isFalse();
        assertThat(WrittenPrice.of("£4").orElseThrow().plain()).isFalse();
    }
}
