package benchful.core.buying;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Mixes of three sizes, each sold one by one by a supplier of its own who charges delivery, in whole pence. */
class MixSearchTest {
    /** @param prices of one of each size, then the delivery of each */
    record Problem(List<List<Integer>> enough, int[] prices, int[] delivery, int silent) {}

    static List<Problem> generated() {
        Random random = new Random(61);
        return IntStream.range(0, 80).mapToObj(i -> {
            List<List<Integer>> enough = new ArrayList<>();
            IntStream.rangeClosed(0, 1 + random.nextInt(6)).forEach(m -> enough.add(random.ints(3, 0, 3).boxed().toList()));
            return new Problem(enough, random.ints(3, 20, 300).toArray(), random.ints(3, 0, 500).toArray(), i % 4);
        }).toList();
    }

    /** Where an answer leaves open whether a mix is enough, nothing is claimed that is not so. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void findsTheCheapestMixThatIsEnoughOrABoundBelowIt(Problem problem) {
        Mixes mixes = new Mixes(problem);
        ShoppingList list = Buyer.buy(mixes.request());
        Money least = problem.enough().stream().map(mix -> cost(problem, mix)).min(Money::compareTo).orElseThrow();

        assertThat(list.bound()).isLessThanOrEqualTo(least);
        assertThat(list.total()).isGreaterThanOrEqualTo(least);
        if (list.proven() || problem.silent() == 0) {
            assertThat(list.total()).isEqualTo(list.bound()).isEqualTo(least);
        }
    }

    private static Money cost(Problem problem, List<Integer> mix) {
        return Money.ofMinor(CurrencyUnit.GBP, IntStream.range(0, 3).mapToLong(s -> mix.get(s) == 0 ? 0 : problem.delivery()[s] + (long) mix.get(s) * problem.prices()[s]).sum());
    }

    /** One of each of the first two is 2.50, two of the third 2.60; with a delivery of 0.20 for the second the third is cheaper. */
    @Test
    void takesTheCheaperOfTwoMixes() {
        List<List<Integer>> enough = List.of(List.of(1, 1, 0), List.of(0, 0, 2));
        isSettled(new Problem(enough, new int[] {100, 150, 130}, new int[] {0, 0, 0}, 0), "GBP 2.50");
        isSettled(new Problem(enough, new int[] {100, 150, 130}, new int[] {0, 20, 0}, 0), "GBP 2.60");
    }

    @Test
    void buysNothingWhereNothingIsEnough() {
        isSettled(new Problem(List.of(List.of(1, 0, 0), List.of(0, 0, 0)), new int[] {100, 150, 130}, new int[] {50, 50, 50}, 0), "GBP 0.00");
    }

    /** The second at 0.90 would be cheaper than the first, were its delivery not 0.50. */
    @Test
    void paysADeliveryOnlyWhereItSaves() {
        List<List<Integer>> enough = List.of(List.of(2, 0, 0), List.of(1, 1, 0), List.of(0, 2, 0));
        isSettled(new Problem(enough, new int[] {100, 90, 500}, new int[] {0, 50, 0}, 0), "GBP 2.00");
        isSettled(new Problem(enough, new int[] {100, 70, 500}, new int[] {0, 50, 0}, 0), "GBP 1.90");
    }

    private static void isSettled(Problem problem, String cost) {
        ShoppingList list = Buyer.buy(new Mixes(problem).request());
        assertThat(list.total()).isEqualTo(list.bound()).isEqualTo(Money.parse(cost));
        assertThat(list.proven()).isTrue();
    }

    /** Two of the first, or one of the second at twice the price less a penny. */
    @Test
    void saysThatOneMoreMightDoWhereNobodyKnows() {
        Problem problem = new Problem(List.of(List.of(2, 0, 0), List.of(0, 1, 0)), new int[] {100, 199, 500}, new int[] {0, 0, 0}, 1);
        ShoppingList list = Buyer.buy(new Mixes(problem).request());

        assertThat(list.total()).isEqualTo(Money.parse("GBP 1.99"));
        assertThat(list.bound()).isEqualTo(Money.parse("GBP 1.00"));
        assertThat(list.proof()).isEqualTo("Best choice found; another might cost up to GBP 0.99 less.");
    }

    /** Knows which mixes are enough, and of each so many-th that is not does not say so. */
    private static final class Mixes implements Assortment {
        private final Problem problem;
        private int asked;

        Mixes(Problem problem) {
            this.problem = problem;
        }

        BuyingRequest request() {
            List<Want> wants = IntStream.range(0, 3).mapToObj(s -> new Want("wire", Quantity.of(problem.enough().get(0).get(s), Unit.PIECE), Quantity.zero(Unit.PIECE), List.of(offer(s)), null)).toList();
            return new BuyingRequest(CurrencyUnit.GBP, wants, List.of(this), null);
        }

        private PackOffer offer(int size) {
            Money none = Money.zero(CurrencyUnit.GBP);
            Supplier supplier = new Supplier("S" + size, none, Money.ofMinor(CurrencyUnit.GBP, problem.delivery()[size]), null, new LeadTime(1, false), BigDecimal.ZERO);
            return new PackOffer(supplier, Quantity.of(1, Unit.PIECE), BigMoney.ofMinor(CurrencyUnit.GBP, problem.prices()[size]), List.of());
        }

        @Override
        public List<Integer> wants() {
            return List.of(0, 1, 2);
        }

        @Override
        public List<Quantity> each() {
            return List.of(Quantity.of(1, Unit.PIECE), Quantity.of(1, Unit.PIECE), Quantity.of(1, Unit.PIECE));
        }

        @Override
        public List<Integer> most() {
            return List.of(2, 2, 2);
        }

        @Override
        public List<Rule> rules() {
            boolean nothing = problem.enough().stream().anyMatch(mix -> mix.stream().allMatch(n -> n == 0));
            return nothing ? List.of() : List.of(new Rule(List.of(new Floor(List.of(1L, 1L, 1L), 1))));
        }

        @Override
        public Trial tried(List<Integer> numbers) {
            for (List<Integer> mix : problem.enough()) {
                Trial trial = new Trial(mix, List.of());
                if (trial.isEnough(numbers)) {
                    return trial;
                }
            }
            boolean silent = problem.silent() > 0 && asked++ % problem.silent() == 0;
            return new Trial(problem.enough().get(asked % problem.enough().size()), silent ? List.of()
                    : List.of(new Rule(IntStream.range(0, 3).mapToObj(s -> new Floor(IntStream.range(0, 3).mapToObj(o -> o == s ? 1L : 0L).toList(), numbers.get(s) + 1)).toList())));
        }
    }
}
