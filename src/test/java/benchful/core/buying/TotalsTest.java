package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TotalsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/vat-rounding.csv", useHeadersInDisplayName = true)
    void roundsVatToThePennyAsPublished(String net, BigDecimal percent, BigDecimal exactPence, String vat) {
        assertThat(new BigDecimal(net).multiply(percent)).isEqualByComparingTo(exactPence);
        assertThat(Vat.on(Money.parse("GBP " + net), percent)).isEqualTo(Money.parse("GBP " + vat));
    }

    /** Three lines whose VAT is 0.5p each: by line 3p, on the sum it would be 2p. The page says that it goes by line. */
    @Test
    void addsTheVatOfLinesAndNeverReckonsItOnTheirSum() {
        List<Purchase> lines = List.of(line("GBP 0.10", 1, "5"), line("GBP 0.10", 1, "5"), line("GBP 0.10", 1, "5"));

        assertThat(Totals.of(lines, Money.parse("GBP 0"), new BigDecimal("5")))
                .isEqualTo(new Totals(Money.parse("GBP 0.30"), Money.parse("GBP 0.00"), Money.parse("GBP 0.03"), Money.parse("GBP 0.33")));
    }

    @Test
    void reckonsEachLineAndTheDeliveryAtItsOwnRate() {
        List<Purchase> lines = List.of(line("EUR 12.345", 2, "21"), line("EUR 3.50", 3, "0"));

        // 24.69 + 10.50; VAT 21 % of 24.69 = 5.1849 -> 5.18, of the delivery 4.95 = 1.0395 -> 1.04
        assertThat(Totals.of(lines, Money.parse("EUR 4.95"), new BigDecimal("21")))
                .isEqualTo(new Totals(Money.parse("EUR 35.19"), Money.parse("EUR 4.95"), Money.parse("EUR 6.22"), Money.parse("EUR 46.36")));
    }

    /** ISO 4217: the yen has no smaller coin, the dinar of Bahrain has a thousand. */
    @ParameterizedTest
    @CsvSource({"JPY 333.5, 3, 10, JPY 1001, JPY 100", "BHD 1.0005, 3, 10, BHD 3.002, BHD 0.300", "USD 0.3355, 3, 8.875, USD 1.01, USD 0.09"})
    void roundsToTheSmallestCoinOfTheCurrency(String price, int packs, String percent, String net, String vat) {
        Purchase line = line(price, packs, percent);

        assertThat(line.net()).isEqualTo(Money.parse(net));
        assertThat(line.vat()).isEqualTo(Money.parse(vat));
    }

    @Test
    void neverAddsTwoCurrencies() {
        assertThatThrownBy(() -> Totals.of(List.of(line("EUR 1.00", 1, "0")), Money.parse("GBP 1"), BigDecimal.ZERO))
                .isInstanceOf(CurrencyMismatchException.class);
    }

    /** Rounding by line differs from the exact sum by at most half a penny for each rounding, and the total is the sum of its parts. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void staysWithinHalfAPennyForEachRounding(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Purchase> lines = new ArrayList<>();
        BigDecimal exact = BigDecimal.ZERO;
        for (int i = 0; i < random.nextInt(1, 40); i++) {
            BigDecimal price = BigDecimal.valueOf(random.nextLong(0, 1_000_000), 4);
            int packs = random.nextInt(1, 50);
            lines.add(line("GBP " + price.toPlainString(), packs, "17.5"));
            exact = exact.add(price.multiply(BigDecimal.valueOf(packs)).multiply(new BigDecimal("1.175")));
        }
        Totals totals = Totals.of(lines, Money.zero(CurrencyUnit.GBP), new BigDecimal("17.5"));

        assertThat(totals.total()).isEqualTo(totals.goods().plus(totals.vat()).plus(totals.delivery()));
        assertThat(totals.total().getAmount().subtract(exact).abs()).isLessThanOrEqualTo(new BigDecimal("0.01088").multiply(BigDecimal.valueOf(lines.size())));
    }

    private static Purchase line(String price, int packs, String percent) {
        return Purchase.of("silk", packs, Quantity.parse("1"), BigMoney.parse(price), new BigDecimal(percent), null);
    }
}
