package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a supplier asks beside the price of packs, and what is refused of it. */
class SupplierTest {
    private static final LeadTime THREE_DAYS = new LeadTime(3, false);
    private static final LocalDate FRIDAY = LocalDate.of(2027, 3, 5);

    @ParameterizedTest
    @CsvSource({"0.00, 0.00", "0.01, 4.00", "19.99, 4.00", "20.00, 0.00", "20.01, 0.00"})
    void deliversFreeFromTheThresholdOn(String goods, String delivery) {
        assertThat(supplier("0", "4.00", "20.00", "20").deliveryFor(gbp(goods))).isEqualTo(gbp(delivery));
    }

    @Test
    void deliversNothingFreeWithoutAThreshold() {
        assertThat(supplier("0", "4.00", null, "20").deliveryFor(gbp("1000000"))).isEqualTo(gbp("4.00"));
    }

    @Test
    void isNeverLateWhereADayIsNotKnown() {
        Supplier loft = supplier("0", "0", null, "0");
        assertThat(loft.late(FRIDAY, FRIDAY.minusDays(3))).isFalse();
        assertThat(loft.late(FRIDAY, FRIDAY.minusDays(2))).isTrue();
        assertThat(loft.late(null, FRIDAY)).isFalse();
        assertThat(loft.late(FRIDAY, null)).isFalse();
    }

    @Test
    void refusesChargesBelowNothingAndTwoCurrencies() {
        assertThat(supplier("0", "0", "0", "0").currency()).isEqualTo(CurrencyUnit.GBP);
        assertThatThrownBy(() -> supplier("-0.01", "0", "0", "0")).hasMessage("No charge, threshold or VAT of “Loft” can be negative.");
        assertThatThrownBy(() -> supplier("0", "-0.01", "0", "0")).hasMessageStartingWith("No charge");
        assertThatThrownBy(() -> supplier("0", "0", "-0.01", "0")).hasMessageStartingWith("No charge");
        assertThatThrownBy(() -> supplier("0", "0", "0", "-0.01")).hasMessageStartingWith("No charge");
        assertThatThrownBy(() -> new Supplier("Loft", gbp("0"), Money.parse("EUR 0"), null, THREE_DAYS, BigDecimal.ZERO)).isInstanceOf(CurrencyMismatchException.class);
        assertThatThrownBy(() -> new Supplier("Loft", gbp("0"), gbp("0"), Money.parse("EUR 0"), THREE_DAYS, BigDecimal.ZERO)).isInstanceOf(CurrencyMismatchException.class);
        assertThatThrownBy(() -> new LeadTime(-1, true)).hasMessage("Lead days can't be negative, as -1 is.");
    }

    /** 4.00 and a fifth for 8 m: 0.60 a metre; the break's price holds from its packs on. */
    @Test
    void pricesPacksByTheirNumber() {
        PackOffer offer = offer("8 m", "4.00", new PackOffer.Break(5, BigMoney.parse("GBP 3.00")), new PackOffer.Break(3, BigMoney.parse("GBP 3.50")));
        assertThat(offer.costOf(Quantity.parse("1 m"))).isEqualByComparingTo("0.6");
        assertThat(offer.priceFor(2)).isEqualTo(BigMoney.parse("GBP 4.00"));
        assertThat(offer.priceFor(3)).isEqualTo(BigMoney.parse("GBP 3.50"));
        assertThat(offer.priceFor(4)).isEqualTo(BigMoney.parse("GBP 3.50"));
        assertThat(offer.priceFor(5)).isEqualTo(BigMoney.parse("GBP 3.00"));
        assertThat(offer.cost(5)).isEqualTo(gbp("15.00"));
        assertThat(offer.worthTrying(1)).containsExactly(1, 3, 5);
        assertThat(offer.worthTrying(3)).containsExactly(3, 5);
        assertThat(offer.worthTrying(0)).containsExactly(0);
    }

    @Test
    void refusesPacksThatCannotBe() {
        assertThatThrownBy(() -> offer("0 m", "4.00")).hasMessage("A pack from “Loft” must hold something.");
        assertThatThrownBy(() -> offer("-1 m", "4.00")).hasMessage("A pack from “Loft” must hold something.");
        assertThatThrownBy(() -> offer("1 m", "-4.00")).hasMessage("A price break from “Loft” needs 2 packs or more, and no price can be negative.");
        assertThatThrownBy(() -> offer("1 m", "4.00", new PackOffer.Break(1, BigMoney.parse("GBP 3.00")))).hasMessageContaining("2 packs or more");
        assertThatThrownBy(() -> offer("1 m", "4.00", new PackOffer.Break(2, BigMoney.parse("GBP -3.00")))).hasMessageContaining("2 packs or more");
        assertThat(offer("1 m", "0", new PackOffer.Break(2, BigMoney.parse("GBP 0"))).cost(2)).isEqualTo(gbp("0"));
    }

    @Test
    void refusesToWantLessThanNothing() {
        assertThatThrownBy(() -> want("-1 m", "0 m")).hasMessage("Neither the need nor the stock of “silk” can be negative.");
        assertThatThrownBy(() -> want("1 m", "-1 m")).hasMessage("Neither the need nor the stock of “silk” can be negative.");
        assertThatThrownBy(() -> want("1 m", "1 g")).hasMessageContaining("can't be given in m");
        assertThat(want("100000 m", "0 m").missing()).isEqualTo(Quantity.parse("100000 m"));
        assertThat(want("1 m", "3 m").missing()).isEqualTo(Quantity.parse("0 m"));
        assertThatThrownBy(() -> want("100001 m", "0 m")).hasMessageContaining("more than 100000 packs");
    }

    @Test
    void addsUpAnOrderAndSaysWhatIsShortOfTheMinimum() {
        Supplier barn = supplier("15.00", "4.00", "20.00", "20");
        Purchase line = Purchase.of("silk", 3, Quantity.parse("2 m"), BigMoney.parse("GBP 3.00"), new BigDecimal("20"), FRIDAY);
        SupplierOrder order = SupplierOrder.of(barn, List.of(line), FRIDAY.minusDays(2));

        assertThat(order).isEqualTo(new SupplierOrder("Loft", List.of(line), gbp("9.00"), gbp("4.00"), gbp("2.60"), gbp("15.60"), gbp("6.00"), FRIDAY.minusDays(3), true));
        assertThat(order.deliveryVat()).isEqualTo(gbp("0.80"));
        assertThat(line.bought()).isEqualTo(Quantity.parse("6 m"));
        assertThat(line.gross()).isEqualTo(gbp("10.80"));
        assertThat(line.sentence()).hasToString("3 packs of 2 m at GBP 3.00: GBP 9.00 before tax.");
        Purchase whole = Purchase.of("silk", 5, Quantity.parse("2 m"), BigMoney.parse("GBP 3.00"), new BigDecimal("20"), null);
        assertThat(SupplierOrder.of(barn, List.of(whole), FRIDAY)).isEqualTo(
                new SupplierOrder("Loft", List.of(whole), gbp("15.00"), gbp("4.00"), gbp("3.80"), gbp("22.80"), null, null, false));
    }

    @Test
    void saysHowFarFromTheLeastAListMayBe() {
        ShoppingList open = new ShoppingList(List.of(order(FRIDAY), order(FRIDAY.minusDays(1)), order(null)), List.of(), gbp("10.00"), gbp("9.00"), false);
        assertThat(open.orderBy()).isEqualTo(FRIDAY.minusDays(1));
        assertThat(open.gap()).isEqualTo(gbp("1.00"));
        assertThat(open.proof()).isEqualTo("Best choice found; another might cost up to GBP 1.00 less.");
        assertThat(new ShoppingList(List.of(order(null)), List.of(), gbp("10.00"), gbp("9.99"), true).proof())
                .isEqualTo("Proven least, but for the rounding of lines, which may make another choice up to GBP 0.01 cheaper.");
        ShoppingList least = new ShoppingList(List.of(), List.of(), gbp("10.00"), gbp("10.00"), false);
        assertThat(least.proof()).isEqualTo("Proven least: no other choice of packs and suppliers costs less.");
        assertThat(least.orderBy()).isNull();
        assertThatThrownBy(() -> new ShoppingList(List.of(), List.of(), gbp("10.00"), gbp("10.01"), true)).hasMessage("The bound GBP 10.01 lies above the total GBP 10.00.");
    }

    private static SupplierOrder order(LocalDate by) {
        return new SupplierOrder("Loft", List.of(), gbp("0"), gbp("0"), gbp("0"), gbp("0"), null, by, false);
    }

    private static Want want(String need, String onHand) {
        return new Want("silk", Quantity.parse(need), Quantity.parse(onHand), List.of(offer("1 m", "4.00")), FRIDAY);
    }

    private static PackOffer offer(String holds, String price, PackOffer.Break... breaks) {
        return new PackOffer(supplier("0", "0", null, "20"), Quantity.parse(holds), BigMoney.parse("GBP " + price), List.of(breaks));
    }

    private static Supplier supplier(String minimum, String delivery, String freeAbove, String vat) {
        return new Supplier("Loft", gbp(minimum), gbp(delivery), freeAbove == null ? null : gbp(freeAbove), THREE_DAYS, new BigDecimal(vat));
    }

    private static Money gbp(String amount) {
        return Money.parse("GBP " + amount);
    }
}
