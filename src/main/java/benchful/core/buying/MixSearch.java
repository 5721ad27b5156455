package benchful.core.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Chooses packs, suppliers and the mix of sizes of what is cut, so that all together cost least.
 *
 * <p>{@link OrderSolver} buys what meets the rules that are known of mixes; no choice costs less. Each assortment is asked whether
 * the mix is enough. If all are, nothing can be cheaper. If not, each answers with a mix that is, which is bought and compared
 * with the best so far, and with rules that leave the mix out, and the least is asked for anew: cuts after Benders,
 * "Partitioning procedures for solving mixed-variables programming problems", Numerische Mathematik 4 (1962). It ends when the
 * {@link Effort} is spent, or after a number of rounds, with the best choice and the last bound.
 */
final class MixSearch {
    private static final int MOST_ROUNDS = 40;

    private final List<Want> wants;
    private final List<Assortment> assortments;
    private final CurrencyUnit currency;
    private final List<Want> widest;
    private final Effort effort = new Effort();
    private final List<OrderSolver.Cover> covers = new ArrayList<>();

    /** @param wants their needs are mixes that are enough */
    MixSearch(List<Want> wants, List<Assortment> assortments, CurrencyUnit currency) {
        this.wants = wants;
        this.assortments = assortments;
        this.currency = currency;
        this.widest = with(assortments.stream().map(Assortment::most).toList());
        List<Integer> mixed = assortments.stream().flatMap(a -> a.wants().stream()).toList();
        covers.addAll(OrderSolver.Cover.each(wants, w -> !mixed.contains(w)));
        assortments.forEach(a -> a.rules().forEach(rule -> add(a, rule)));
    }

    Choice choose() {
        Choice best = FixedNeeds.choose(wants, currency, effort);
        Money bound = Money.zero(currency);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<OrderSolver.Solution> solution = OrderSolver.solve(widest, covers, effort);
            if (solution.isEmpty()) {
                break;
            }
            Money least = Money.ofMinor(currency, solution.get().bound());
            bound = least.isGreaterThan(bound) ? least : bound;
            if (!best.total().isGreaterThan(bound)) {
                return best.known(bound, true);
            }
            List<List<Integer>> numbers = assortments.stream().map(a -> numbers(a, solution.get().packs())).toList();
            List<Assortment.Trial> trials = IntStream.range(0, numbers.size()).mapToObj(i -> assortments.get(i).tried(numbers.get(i))).toList();
            List<Want> enough = with(trials.stream().map(Assortment.Trial::mix).toList());
            if (IntStream.range(0, numbers.size()).allMatch(i -> trials.get(i).isEnough(numbers.get(i)))) {
                return best.or(Choice.of(new Selection(enough, solution.get().packs()), currency, bound, true)).known(bound, solution.get().proven());
            }
            best = best.or(FixedNeeds.choose(enough, currency, effort));
            if (!learnt(trials)) {
                break;
            }
        }
        return best.known(bound, false);
    }

    private boolean learnt(List<Assortment.Trial> trials) {
        int before = covers.size();
        IntStream.range(0, trials.size()).forEach(i -> trials.get(i).rules().forEach(rule -> add(assortments.get(i), rule)));
        return covers.size() > before;
    }

    private void add(Assortment assortment, Assortment.Rule rule) {
        if (rule.anyOf().stream().allMatch(floor -> floor.least() > 0)) {
            covers.add(OrderSolver.Cover.of(assortment, rule));
        }
    }

    private List<Integer> numbers(Assortment assortment, List<Map<PackOffer, Integer>> packs) {
        return IntStream.range(0, assortment.wants().size()).mapToObj(size -> {
            BigDecimal bought = packs.get(assortment.wants().get(size)).entrySet().stream()
                    .map(e -> e.getKey().holds().base().multiply(BigDecimal.valueOf(e.getValue()))).reduce(BigDecimal.ZERO, BigDecimal::add);
            return assortment.number(size, bought);
        }).toList();
    }

    private List<Want> with(List<List<Integer>> mixes) {
        List<Want> mixed = new ArrayList<>(wants);
        for (int i = 0; i < mixes.size(); i++) {
            Assortment assortment = assortments.get(i);
            for (int size = 0; size < assortment.wants().size(); size++) {
                mixed.set(assortment.wants().get(size), wants.get(assortment.wants().get(size)).of(assortment.each().get(size).times(mixes.get(i).get(size))));
            }
        }
        return mixed;
    }
}
