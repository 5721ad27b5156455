package benchful.plans.materials.cutting;

import benchful.core.buying.Assortment;
import benchful.core.buying.Buyer;
import benchful.core.buying.Want;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.web.tasks.Asker;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Which mixes of its stock sizes are enough for a material that is cut. All sizes are weighed against each other at what one of
 * each costs, then those of each supplier and each alone; the plan whose whole packs cost least is the mix to begin with. Buying
 * may ask about others.
 *
 * @param <S> a size that the material comes in
 * @param <P> a plan of its cutting
 */
final class StockMixes<S, P> implements Assortment {
    /** A plan for each question is given this share of the work for the first ones. */
    private static final int SHARE_OF_A_QUESTION = 8;

    private final StockCutter<S, P> cutter;
    private final List<S> sizes;
    private final int first;
    private final LocalDate arriveBy;
    private final Map<List<Integer>, P> plans = new LinkedHashMap<>();
    private final MixRules rules;
    private final List<Rule> known = new ArrayList<>();
    private final List<Integer> most;
    private StockCutter.Attempt<P> all;
    private List<Integer> start;

    /** @param first which want among all is that of the first size */
    StockMixes(StockCutter<S, P> cutter, LocalDate arriveBy, int first) {
        this.cutter = cutter;
        this.sizes = cutter.sizes();
        this.first = first;
        this.arriveBy = arriveBy;
        this.rules = new MixRules(sizes.stream().map(size -> Kinds.cost(cutter.cost(size))).toList(), cutter.pieces());
        this.most = new ArrayList<>(Collections.nCopies(sizes.size(), cutter.pieces()));
    }

    /** Plans with the sizes on offer, and with some of them. @return why none is possible; empty where one is */
    Optional<Sentence> plan(CurrencyUnit currency) {
        List<List<S>> choices = cutter.choices();
        for (List<S> from : choices) {
            StockCutter.Attempt<P> attempt = cutter.attempt(from, List.of(), share(from, choices.size()));
            all = all == null ? attempt : all;
            learn(from.stream().map(sizes::indexOf).toList(), attempt);
        }
        floor(Collections.nCopies(sizes.size(), 0)).ifPresent(floor -> known.add(new Rule(List.of(floor))));
        start = plans.keySet().stream().min(Comparator.comparing(mix -> cost(mix, currency))).orElse(null);
        return start == null ? Optional.of(all.reason()) : Optional.empty();
    }

    /** Half of the work is for all sizes together, the other half for each choice of them. */
    private static Work share(List<?> from, int choices) {
        return Work.among(choices == 1 ? 1 : from.size() > 1 ? 2 : 2 * (choices - 1));
    }

    private void learn(List<Integer> from, StockCutter.Attempt<P> attempt) {
        known.add(rules.of(from, attempt.plan() == null ? Optional.empty() : Optional.of(Kinds.cost(attempt.bound()))));
        if (attempt.plan() != null) {
            List<Integer> mix = mix(attempt.plan());
            plans.putIfAbsent(mix, attempt.plan());
            if (from.size() == 1) {
                most.set(from.get(0), mix.get(from.get(0)));
            }
        }
    }

    String material() {
        return cutter.material.name();
    }

    /** True where no other mix can be of use to anybody. */
    boolean isSettled() {
        boolean least = sizes.size() == 1 && all.bound().compareTo(all.cost()) == 0;
        return least || start.stream().allMatch(n -> n == 0);
    }

    /** One for each size; together the mix to begin with. */
    List<Want> needs() {
        return needs(start);
    }

    /** @param mix one of those that were told to be enough */
    Cutting cutting(List<Integer> mix) {
        P plan = plans.get(mix);
        boolean forItself = plan == all.plan();
        BigDecimal cost = IntStream.range(0, sizes.size()).mapToObj(s -> cutter.cost(sizes.get(s)).multiply(BigDecimal.valueOf(mix.get(s)))).reduce(BigDecimal.ZERO, BigDecimal::add);
        return cutter.cutting(forItself ? plan : cutter.amongPurchases(plan, cost, all.bound()));
    }

    @Override
    public List<Integer> wants() {
        return IntStream.range(first, first + sizes.size()).boxed().toList();
    }

    @Override
    public List<Quantity> each() {
        return sizes.stream().map(size -> cutter.sold(size).get(0).amount()).toList();
    }

    @Override
    public List<Integer> most() {
        return most;
    }

    @Override
    public List<Rule> rules() {
        return known;
    }

    @Override
    public Trial tried(List<Integer> numbers) {
        Asker.check();
        Optional<List<Integer>> enough = plans.keySet().stream().filter(mix -> within(mix, numbers)).findFirst();
        if (enough.isPresent()) {
            return new Trial(enough.get(), List.of());
        }
        List<Integer> useful = numbers.stream().map(n -> Math.min(n, cutter.pieces())).toList();
        StockCutter.Attempt<P> attempt = cutter.attempt(sizes, copies(useful), Work.among(SHARE_OF_A_QUESTION));
        List<Integer> mix = mix(attempt.plan());
        plans.putIfAbsent(mix, attempt.plan());
        return new Trial(mix, without(useful, Kinds.cost(attempt.bound())).map(List::of).orElse(List.of()));
    }

    /** A floor of the linear programme, where that leaves these numbers out: it serves buying better than a choice of several. */
    private Optional<Rule> without(List<Integer> numbers, long least) {
        Optional<Rule> floor = floor(numbers).filter(found -> MixRules.isBelow(numbers, found)).map(found -> new Rule(List.of(found)));
        return floor.or(() -> least > 0 ? Optional.of(rules.beyond(numbers, least)) : Optional.empty());
    }

    private Optional<Floor> floor(List<Integer> numbers) {
        return sizes.isEmpty() ? Optional.empty()
                : cutter.floor(copies(numbers), Work.among(SHARE_OF_A_QUESTION)).map(floor -> new Floor(floor.worths(), floor.least()));
    }

    private static boolean within(List<Integer> mix, List<Integer> numbers) {
        return IntStream.range(0, mix.size()).allMatch(s -> mix.get(s) <= numbers.get(s));
    }

    private List<S> copies(List<Integer> numbers) {
        return IntStream.range(0, sizes.size()).boxed().flatMap(s -> Collections.nCopies(numbers.get(s), sizes.get(s)).stream()).toList();
    }

    private List<Integer> mix(P plan) {
        Map<S, Long> bought = cutter.bought(plan);
        return sizes.stream().map(size -> bought.getOrDefault(size, 0L).intValue()).toList();
    }

    private Money cost(List<Integer> mix, CurrencyUnit currency) {
        return needs(mix).stream().map(want -> Buyer.alone(want, currency)).reduce(Money.zero(currency), Money::plus);
    }

    private List<Want> needs(List<Integer> mix) {
        return IntStream.range(0, sizes.size()).mapToObj(s -> {
            List<StockCutter.Offer<S>> sold = cutter.sold(sizes.get(s));
            Quantity amount = sold.get(0).amount().times(mix.get(s)).in(cutter.material.unit());
            return new Want(material(), amount, Quantity.zero(cutter.material.unit()), sold.stream().map(StockCutter.Offer::pack).toList(), arriveBy);
        }).toList();
    }
}
