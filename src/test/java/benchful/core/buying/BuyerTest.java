package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import benchful.core.buying.PackChooser.Choice;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class BuyerTest {
    private static final Supplier LOFT = supplier("Loft", "0", "0", null, 3, "0");
    private static final LocalDate ARRIVE = LocalDate.of(2027, 3, 5);

    @Test
    void mixesPacksForTheLeastPrice() {
        // 37: three of 10 at 4.00 and one of 7 at 3.10, not four of 10
        ShoppingList list = buy(want("bead", "37", "0", offer(LOFT, "10", "4.00"), offer(LOFT, "7", "3.10"), offer(LOFT, "1", "0.50")));

        assertThat(list.total()).isEqualTo(Money.parse("GBP 15.10"));
        assertThat(list.proven()).isTrue();
        assertThat(list.materials().get(0).leftover()).isEqualTo(Quantity.parse("0"));
    }

    @Test
    void buysMoreWhereAPriceBreakMakesItCheaper() {
        PackOffer offer = new PackOffer(LOFT, Quantity.parse("10"), BigMoney.parse("GBP 5.00"), List.of(new PackOffer.Break(10, BigMoney.parse("GBP 4.00"))));
        ShoppingList list = buy(want("bead", "90", "0", offer));

        assertThat(list.orders().get(0).purchases()).singleElement().extracting(Purchase::packs).isEqualTo(10);
        assertThat(list.total()).isEqualTo(Money.parse("GBP 40.00"));
    }

    @Test
    void buysOnlyWhatStockDoesNotCover() {
        ShoppingList list = buy(want("silk", "3 m", "1.2 m", offer(LOFT, "2 m", "2.40")));

        assertThat(list.materials().get(0).bought()).isEqualTo(Quantity.parse("2 m"));
        assertThat(list.materials().get(0).reasons()).extracting(Sentence::toString).containsExactly(
                "3 m are needed, 1.2 m are on hand, so 1.8 m are missing.", "1 pack of 2 m at GBP 2.40: GBP 2.40 before tax.", "200 mm are left over.");
        assertThat(buy(want("silk", "3 m", "3 m", offer(LOFT, "2 m", "2.40"))).orders()).isEmpty();
    }

    @Test
    void chargesDeliveryUntilTheThreshold() {
        Supplier barn = supplier("Barn", "0", "3.95", "20.00", 5, "20");

        assertThat(buy(want("a", "1", "0", offer(barn, "1", "19.99"))).orders().get(0).delivery()).isEqualTo(Money.parse("GBP 3.95"));
        assertThat(buy(want("a", "1", "0", offer(barn, "1", "20.00"))).orders().get(0).delivery()).isEqualTo(Money.parse("GBP 0.00"));
    }

    @Test
    void ordersSoThatGoodsArriveTheDayBefore() {
        BuyingRequest request = new BuyingRequest(CurrencyUnit.GBP, List.of(want("a", "1", "0", offer(LOFT, "1", "1.00"))), LocalDate.of(2027, 3, 3));
        SupplierOrder order = Buyer.buy(request).orders().get(0);

        assertThat(order.orderBy()).isEqualTo(LocalDate.of(2027, 3, 2));
        assertThat(order.late()).isTrue();
    }

    @Test
    void isNotLateOnTheLastDayToOrder() {
        Supplier quick = supplier("Quick", "0", "0", null, 1, "0");
        Want want = want("a", "1", "0", offer(LOFT, "1", "1.00"), offer(quick, "1", "2.00"));

        assertThat(Buyer.buy(new BuyingRequest(CurrencyUnit.GBP, List.of(want), LocalDate.of(2027, 3, 2))).orders())
                .extracting(SupplierOrder::supplier, SupplierOrder::orderBy, SupplierOrder::late).containsExactly(tuple("Loft", LocalDate.of(2027, 3, 2), false));
        assertThat(Buyer.buy(new BuyingRequest(CurrencyUnit.GBP, List.of(want), LocalDate.of(2027, 3, 3))).orders())
                .extracting(SupplierOrder::supplier, SupplierOrder::orderBy, SupplierOrder::late).containsExactly(tuple("Quick", LocalDate.of(2027, 3, 4), false));
    }

    @Test
    void roundsEachLineAndItsVatHalfUp() {
        // 3 x 0.335 = 1.005 -> 1.01; VAT 20 % of 1.01 = 0.202 -> 0.20
        Purchase purchase = Purchase.of(want("a", "3", "0"), offer(supplier("Barn", "0", "0", null, 0, "20"), "1", "0.335"), 3);

        assertThat(purchase.net()).isEqualTo(Money.parse("GBP 1.01"));
        assertThat(purchase.vat()).isEqualTo(Money.parse("GBP 0.20"));
    }

    /** 3 packs at 0.335 are 1.005; 1 left of 4 that cost 0.10 is worth 0.025; of 0.03 a sixth, 0.005, is VAT. */
    @Test
    void roundsHalfAPennyUp() {
        assertThat(offer(LOFT, "1", "0.335").cost(3)).isEqualTo(Money.parse("GBP 1.01"));
        assertThat(buy(want("a", "3", "0", offer(LOFT, "4", "0.10"))).materials().get(0).leftoverValue()).isEqualTo(Money.parse("GBP 0.03"));
        assertThat(Vat.in(Money.parse("GBP 0.03"), new BigDecimal("20"))).isEqualTo(Money.parse("GBP 0.01"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/vat-fractions.csv", useHeadersInDisplayName = true)
    void findsTheVatInAGrossPrice(String gross, BigDecimal percent, String vat) {
        assertThat(Vat.in(Money.parse("GBP " + gross), percent)).isEqualTo(Money.parse("GBP " + vat));
    }

    @Test
    void saysWhatNobodySells() {
        Supplier abroad = new Supplier("Abroad", Money.parse("EUR 0"), Money.parse("EUR 0"), null, new LeadTime(3, false), BigDecimal.ZERO);
        PackOffer euros = new PackOffer(abroad, Quantity.parse("1"), BigMoney.parse("EUR 1.00"), List.of());

        assertThat(buy(want("a", "5", "2", euros)).materials().get(0).unmet()).isEqualTo(Quantity.parse("3"));
    }

    /** What costs nothing is nowhere too dear to go on with: 40,000 of the one pack, and for each some thousand of the other. */
    @Tag("long")
    @Test
    @Timeout(20)
    void givesUpInTimeWhereThereAreFarTooManyChoices() {
        PackOffer[] offers = {offer(LOFT, "0.1", "0.00"), offer(LOFT, "0.3", "0.00")};
        Choice choice = PackChooser.choose(want("bead", "4000.05", "0", offers), CurrencyUnit.GBP);

        assertThat(choice.price()).isEqualTo(Money.parse("GBP 0.00"));
        assertThat(choice.bound()).isEqualTo(Money.parse("GBP 0.00"));
    }

    @Test
    void refusesAnAbsurdNumberOfPacks() {
        assertThatThrownBy(() -> want("wire", "100000 m", "0 m", offer(LOFT, "1 mm", "1")))
                .hasMessage("100000 m of “wire” would take more than 100000 packs of 1 mm from “Loft”. Check both amounts.");
    }

    /** Against every combination of up to 12 packs of each. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15})
    void noOtherChoiceOfPacksCostsLess(long seed) {
        Random random = new Random(seed);
        int need = 5 + random.nextInt(40);
        List<PackOffer> offers = IntStream.range(0, 3).mapToObj(i -> new PackOffer(
                supplier("S" + i, "0", "0", null, 1, random.nextBoolean() ? "20" : "0"), Quantity.parse(4 + random.nextInt(10) + ""),
                price(random, 300), random.nextBoolean() ? List.of() : List.of(new PackOffer.Break(2 + random.nextInt(5), price(random, 200))))).toList();
        Want want = new Want("a", Quantity.parse(need + ""), Quantity.parse("0"), offers, ARRIVE);

        assertThat(Buyer.alone(want, CurrencyUnit.GBP)).isEqualTo(least(offers, need));
    }

    private static Money least(List<PackOffer> offers, int need) {
        Money least = null;
        for (int code = 0; code < 13 * 13 * 13; code++) {
            int[] packs = {code % 13, code / 13 % 13, code / 169};
            Money cost = Money.zero(CurrencyUnit.GBP);
            BigDecimal holds = BigDecimal.ZERO;
            for (int i = 0; i < 3; i++) {
                Money net = offers.get(i).cost(packs[i]);
                cost = cost.plus(net).plus(Vat.on(net, offers.get(i).supplier().vat()));
                holds = holds.add(offers.get(i).holds().amount().multiply(BigDecimal.valueOf(packs[i])));
            }
            if (holds.intValueExact() >= need && (least == null || cost.isLessThan(least))) {
                least = cost;
            }
        }
        return least;
    }

    private static BigMoney price(Random random, int pence) {
        return BigMoney.ofMinor(CurrencyUnit.GBP, 50 + random.nextInt(pence));
    }

    private static ShoppingList buy(Want want) {
        return Buyer.buy(new BuyingRequest(CurrencyUnit.GBP, List.of(want), null));
    }

    private static Want want(String material, String need, String onHand, PackOffer... offers) {
        Quantity needed = Quantity.parse(need);
        return new Want(material, needed, onHand.equals("0") ? Quantity.zero(needed.unit()) : Quantity.parse(onHand), List.of(offers), ARRIVE);
    }

    private static PackOffer offer(Supplier supplier, String holds, String price) {
        return new PackOffer(supplier, Quantity.parse(holds), BigMoney.parse("GBP " + price), List.of());
    }

    private static Supplier supplier(String name, String minimum, String delivery, String freeAbove, int days, String vat) {
        return new Supplier(name, Money.parse("GBP " + minimum), Money.parse("GBP " + delivery),
                freeAbove == null ? null : Money.parse("GBP " + freeAbove), new LeadTime(days, false), new BigDecimal(vat));
    }
}
