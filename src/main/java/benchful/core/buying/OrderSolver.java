package benchful.core.buying;

import benchful.core.quantity.Quantity;
import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.joda.money.BigMoneyProvider;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Packs and suppliers for many materials at once, so that goods, deliveries and VAT together cost least.
 *
 * <p>An integer programme. For each offer and each of its price tiers t: n packs, and b = 1 where that tier is used, with
 * from x b <= n <= to x b and at most one tier. Each cover: one of its sums of holds x n reaches what it must. Each supplier: y = 1 where it is
 * ordered from, its goods >= minimum x y; f = 1 only where goods >= the threshold; delivery is paid where y - f = 1.
 * Money is in the currency's smallest units. A line's cost here is not rounded but lowered by the most that rounding could
 * lower it, so the solver's bound holds for rounded costs too. One thread and a limit of counted nodes make the answer the
 * same on every machine.
 */
final class OrderSolver {
    private static final String LIMITS = "limits/nodes = %d\nparallel/maxnthreads = 1\nrandomization/randomseedshift = 1\n";
    private static final double TOLERANCE = 1e-6;
    private static final double INFINITY = Double.POSITIVE_INFINITY;
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final MPSolver solver;
    private final MPObjective objective;
    private final List<Want> wants;
    private final Map<Supplier, Terms> suppliers = new LinkedHashMap<>();
    private final List<Line> lines = new ArrayList<>();

    private OrderSolver(MPSolver solver, List<Want> wants) {
        this.solver = solver;
        this.objective = solver.objective();
        this.wants = wants;
        objective.setMinimization();
    }

    /**
     * @param packs for each want, by offer
     * @param bound no choice costs less, in smallest units of the currency
     * @param proven the search was complete: what lies between the choice's cost and the bound is rounding of lines
     */
    record Solution(List<Map<PackOffer, Integer>> packs, long bound, boolean proven) {}

    /**
     * What must be bought: one of these sums reaches 1.
     *
     * @param anyOf the share that each base unit of a want counts for, by the want
     */
    record Cover(List<Map<Integer, Double>> anyOf) {
        /** What each of these wants misses, if somebody sells it. */
        static List<Cover> each(List<Want> wants, IntPredicate which) {
            return IntStream.range(0, wants.size()).filter(w -> which.test(w) && wants.get(w).isOpen()).mapToObj(w -> of(wants, w)).toList();
        }

        private static Cover of(List<Want> wants, int want) {
            return new Cover(List.of(Map.of(want, 1 / wants.get(want).missing().base().doubleValue())));
        }

        static Cover of(Assortment assortment, Assortment.Rule rule) {
            return new Cover(rule.anyOf().stream().map(floor -> shares(assortment, floor)).toList());
        }

        private static Map<Integer, Double> shares(Assortment assortment, Assortment.Floor floor) {
            Map<Integer, Double> shares = new LinkedHashMap<>();
            for (int size = 0; size < floor.weights().size(); size++) {
                double of = floor.weights().get(size) / (double) floor.least() / assortment.each().get(size).base().doubleValue();
                shares.put(assortment.wants().get(size), of);
            }
            return shares;
        }
    }

    /**
     * Empty where the effort ended the search before it found a choice.
     *
     * @param wants say what is offered and how much of it can be of use; those that nobody sells, or that are met, are left out
     * @param covers what must be bought
     */
    static Optional<Solution> solve(List<Want> wants, List<Cover> covers, Effort effort) {
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver("SCIP");
        try {
            return new OrderSolver(solver, wants).solve(covers, effort);
        } finally {
            solver.delete();
        }
    }

    private Optional<Solution> solve(List<Cover> covers, Effort effort) {
        IntStream.range(0, wants.size()).filter(w -> wants.get(w).isOpen()).forEach(this::offer);
        covers.forEach(this::meet);
        int nodes = effort.nodes(solver.numVariables());
        if (nodes < 1) {
            return Optional.empty();
        }
        solver.setSolverSpecificParametersAsString(LIMITS.formatted(nodes));
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        MPSolver.ResultStatus status = solver.solve(exact);
        effort.spend(solver.numVariables(), solver.nodes());
        if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.FEASIBLE) {
            return Optional.empty();
        }
        double bound = objective.bestBound();
        long least = Math.max(0, (long) Math.ceil(bound - TOLERANCE * Math.max(1, bound)));
        return Optional.of(new Solution(packs(), least, status == MPSolver.ResultStatus.OPTIMAL));
    }

    private void offer(int w) {
        Want want = wants.get(w);
        for (PackOffer offer : want.offers()) {
            MPConstraint oneTier = solver.makeConstraint(0, 1);
            Terms terms = suppliers.computeIfAbsent(offer.supplier(), Terms::new);
            for (Tier tier : Tier.of(offer, want.missing())) {
                Line line = new Line(w, offer, tier);
                lines.add(line);
                oneTier.setCoefficient(line.used, 1);
                terms.add(line);
            }
        }
    }

    /** Of several sums each has a switch, and one switch must be on. */
    private void meet(Cover cover) {
        if (cover.anyOf().size() == 1) {
            reach(cover.anyOf().get(0)).setLb(1);
            return;
        }
        MPConstraint one = solver.makeConstraint(1, INFINITY);
        for (Map<Integer, Double> sum : cover.anyOf()) {
            MPVariable on = solver.makeBoolVar("");
            reach(sum).setCoefficient(on, -1);
            one.setCoefficient(on, 1);
        }
    }

    private MPConstraint reach(Map<Integer, Double> sum) {
        MPConstraint reached = solver.makeConstraint(0, INFINITY);
        lines.stream().filter(line -> sum.containsKey(line.want))
                .forEach(line -> reached.setCoefficient(line.packs, line.offer.holds().base().doubleValue() * sum.getOrDefault(line.want, 0.0)));
        return reached;
    }

    private List<Map<PackOffer, Integer>> packs() {
        List<Map<PackOffer, Integer>> packs = new ArrayList<>();
        wants.forEach(want -> packs.add(new LinkedHashMap<>()));
        for (Line line : lines) {
            int n = (int) Math.round(line.packs.solutionValue());
            if (n > 0) {
                packs.get(line.want).merge(line.offer, n, Integer::sum);
            }
        }
        return packs;
    }

    private static double minor(BigMoneyProvider money) {
        return money.toBigMoney().getAmount().movePointRight(money.toBigMoney().getCurrencyUnit().getDecimalPlaces()).doubleValue();
    }

    /** An offer at one of its prices. */
    private final class Line {
        private final int want;
        private final PackOffer offer;
        private final MPVariable packs;
        private final MPVariable used;
        private final double price;

        Line(int want, PackOffer offer, Tier tier) {
            this.want = want;
            this.offer = offer;
            this.price = minor(offer.priceFor(tier.from()));
            this.packs = solver.makeIntVar(0, tier.to(), "");
            this.used = solver.makeBoolVar("");
            at(0, INFINITY, packs, 1, used, -tier.from());
            at(-INFINITY, 0, packs, 1, used, -tier.to());
            BigDecimal tax = BigDecimal.ONE.add(offer.supplier().vat().movePointLeft(2));
            objective.setCoefficient(packs, price * tax.doubleValue());
            objective.setCoefficient(used, -rounding(tier).doubleValue());
        }

        /** The most that rounding the line's value and its VAT can take off, in smallest units. */
        private BigDecimal rounding(Tier tier) {
            int places = offer.supplier().currency().getDecimalPlaces();
            BigDecimal net = offer.priceFor(tier.from()).getAmount().movePointRight(places);
            BigDecimal vat = net.multiply(offer.supplier().vat().movePointLeft(2));
            BigDecimal tax = BigDecimal.ONE.add(offer.supplier().vat().movePointLeft(2));
            BigDecimal ofNet = whole(net) ? BigDecimal.ZERO : HALF.multiply(tax);
            return whole(net) && whole(vat) ? BigDecimal.ZERO : ofNet.add(HALF);
        }

        private static boolean whole(BigDecimal value) {
            return value.stripTrailingZeros().scale() <= 0;
        }
    }

    private void at(double least, double most, MPVariable a, double factorA, MPVariable b, double factorB) {
        MPConstraint constraint = solver.makeConstraint(least, most);
        constraint.setCoefficient(a, factorA);
        constraint.setCoefficient(b, factorB);
    }

    /** A supplier's order: made or not, its least value, its delivery. */
    private final class Terms {
        private final MPVariable ordered = solver.makeBoolVar("");
        private final MPConstraint minimum;
        private final @Nullable MPConstraint threshold;

        Terms(Supplier supplier) {
            minimum = solver.makeConstraint(0, INFINITY);
            minimum.setCoefficient(ordered, -minor(supplier.minimumOrder()));
            Money freeAbove = supplier.freeAbove();
            threshold = freeAbove == null ? null : solver.makeConstraint(0, INFINITY);
            MPVariable paid = solver.makeBoolVar("");
            MPConstraint delivered = solver.makeConstraint(-INFINITY, 0);
            delivered.setCoefficient(ordered, 1);
            delivered.setCoefficient(paid, -1);
            objective.setCoefficient(paid, minor(supplier.delivery()) + minor(Vat.on(supplier.delivery(), supplier.vat())));
            if (threshold != null && freeAbove != null) {
                MPVariable free = solver.makeBoolVar("");
                delivered.setCoefficient(free, -1);
                threshold.setCoefficient(free, -minor(freeAbove));
            }
        }

        void add(Line line) {
            minimum.setCoefficient(line.packs, line.price);
            if (threshold != null) {
                threshold.setCoefficient(line.packs, line.price);
            }
            at(-INFINITY, 0, line.used, 1, ordered, -1);
        }
    }

    /**
     * A stretch of numbers of packs with one price.
     *
     * @param from fewest packs
     * @param to most packs that can be worth buying
     */
    private record Tier(int from, int to) {
        static List<Tier> of(PackOffer offer, Quantity missing) {
            int most = most(offer, missing);
            List<Integer> starts = new ArrayList<>(List.of(1));
            offer.breaks().forEach(b -> starts.add(b.packs()));
            List<Tier> tiers = new ArrayList<>();
            for (int i = 0; i < starts.size(); i++) {
                tiers.add(new Tier(starts.get(i), i + 1 < starts.size() ? starts.get(i + 1) - 1 : Math.max(most, starts.get(i))));
            }
            return tiers.stream().filter(tier -> tier.from() <= tier.to()).toList();
        }

        /** Enough packs to cover the need alone, or to reach the supplier's minimum or free delivery alone. */
        private static int most(PackOffer offer, Quantity missing) {
            int enough = missing.base().divide(offer.holds().base(), 0, RoundingMode.CEILING).intValueExact();
            BigDecimal least = offer.breaks().stream().map(b -> b.price().getAmount()).reduce(offer.price().getAmount(), BigDecimal::min);
            if (least.signum() == 0) {
                return enough;
            }
            Supplier supplier = offer.supplier();
            BigDecimal aim = supplier.freeAbove() == null || supplier.delivery().isZero()
                    ? supplier.minimumOrder().getAmount()
                    : supplier.minimumOrder().getAmount().max(supplier.freeAbove().getAmount());
            BigDecimal reach = aim.divide(least, 0, RoundingMode.CEILING).min(BigDecimal.valueOf(100_000));
            return Math.max(enough, reach.intValueExact());
        }
    }
}
