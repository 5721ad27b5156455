package benchful.core.cutting.patterns;

import benchful.core.cutting.StockFloor;
import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * Patterns worth cutting, and a bound on the cost of new lengths.
 *
 * <p>The linear programme "least cost of new lengths that give every piece, patterns in any fraction" is solved over the
 * patterns known; its prices u of the pieces ask the knapsack for a better pattern of each length, until there is none.
 * Source: Gilmore and Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961).
 *
 * <p>The bound is exact although the solver's prices are not: they are cut to whole numbers U, and by weak duality every
 * plan costs at least (sum of demand x U - sum over the lengths on hand of their best pattern's worth) x the least, over the
 * stock lengths, of cost / best pattern's worth, all in whole numbers.
 */
public final class ColumnGeneration {
    private static final double FINENESS = 1e9;
    private static final double TOLERANCE = 1e-7;
    private static final int MOST_ROUNDS = 2000;

    /** Steps that one solving of the linear programme counts for, however small it is. */
    private static final int SOLVING = 1_000;

    private final Kinds kinds;
    private final Filler filler;
    private final Work work;
    private final double unit;
    private final List<Pattern> patterns = new ArrayList<>();
    private double[] uses = {};
    private long bound;
    private @Nullable Prices prices;
    private @Nullable Prices last;
    private long least;

    /** @param known patterns to begin with; those that can't be cut any more are left out */
    public ColumnGeneration(Kinds kinds, List<Pattern> known, Work work) {
        this(kinds, known, new Knapsack(kinds.sizes(), kinds.demand(), work).filling(kinds.lengths()), work);
    }

    /** @param filler its patterns may give more of a kind than is needed */
    public ColumnGeneration(Kinds kinds, List<Pattern> known, Filler filler, Work work) {
        this.work = work;
        this.kinds = kinds;
        this.filler = filler;
        this.unit = Math.max(1, kinds.lengths().stream().mapToLong(EqualLengths::cost).max().orElse(1));
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver("GLOP");
        try {
            new Master(solver).run(known);
        } finally {
            solver.delete();
        }
    }

    public List<Pattern> patterns() {
        return patterns;
    }

    /** How often the linear programme cuts each pattern. */
    public double[] uses() {
        return uses;
    }

    /** No plan costs less. */
    public long bound() {
        return bound;
    }

    /**
     * Prices of the pieces that gave a bound, in whole numbers.
     *
     * @param pieces  by kind
     * @param lengths of each length, what its best pattern is worth at most
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Prices(long[] pieces, long[] lengths) {
        /** The length that can be bought as often as needed and gives most worth for its cost. */
        public Optional<Integer> cheapest(Kinds kinds) {
            return kinds.stocks().filter(l -> lengths[l] > 0).boxed()
                    .min((a, b) -> product(kinds.lengths().get(a).cost(), lengths[b]).compareTo(product(kinds.lengths().get(b).cost(), lengths[a])));
        }

        /** What all pieces are worth beyond the best patterns of the lengths that are there. */
        public BigInteger due(Kinds kinds, Predicate<EqualLengths> there) {
            BigInteger due = BigInteger.ZERO;
            for (int i = 0; i < pieces.length; i++) {
                due = due.add(product(pieces[i], kinds.demand()[i]));
            }
            for (int l = 0; l < lengths.length; l++) {
                EqualLengths length = kinds.lengths().get(l);
                due = there.test(length) ? due.subtract(product(lengths[l], length.available())) : due;
            }
            return due;
        }

        private static BigInteger product(long a, long b) {
            return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
        }
    }

    /** Those of the last round, by which fewest patterns come near the best; empty where the linear programme was not solved to its end. */
    public Optional<Prices> prices() {
        return Optional.ofNullable(last);
    }

    /**
     * By the prices that gave the bound, what one of each length is worth at most, and what the new lengths of every plan are worth
     * at least, those planned among them. Empty where no prices gave any.
     */
    public Optional<StockFloor> floor() {
        return Optional.ofNullable(prices).map(by -> new StockFloor(LongStream.of(by.lengths()).boxed().toList(), least));
    }

    /** The linear programme at work, costs in parts of the dearest length. Rows: pieces of each kind, then limited lengths. */
    private final class Master {
        private final MPSolver solver;
        private final MPConstraint[] demand;
        private final MPConstraint[] lengths;
        private final List<MPVariable> times = new ArrayList<>();

        Master(MPSolver solver) {
            this.solver = solver;
            this.demand = new MPConstraint[kinds.kinds()];
            this.lengths = new MPConstraint[kinds.lengths().size()];
            solver.objective().setMinimization();
            for (int i = 0; i < demand.length; i++) {
                demand[i] = solver.makeConstraint(kinds.demand()[i], MPSolver.infinity());
                MPVariable none = solver.makeNumVar(0, MPSolver.infinity(), "");
                demand[i].setCoefficient(none, 1);
                solver.objective().setCoefficient(none, kinds.pieces() + 1.0);
            }
            for (int l = 0; l < lengths.length; l++) {
                EqualLengths length = kinds.lengths().get(l);
                lengths[l] = solver.makeConstraint(-MPSolver.infinity(), length.limited() ? length.available() : MPSolver.infinity());
            }
        }

        void run(List<Pattern> known) {
            known.stream().filter(p -> kinds.times(p) > 0).forEach(this::add);
            boolean solved = solved();
            for (int round = 0; round < MOST_ROUNDS && solved && !work.isSpent() && price(); round++) {
                solved = solved();
            }
            if (solved) {
                uses = times.stream().mapToDouble(MPVariable::solutionValue).toArray();
            } else {
                patterns.clear();
            }
        }

        private boolean solved() {
            work.spend(SOLVING + (long) times.size() * demand.length);
            return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
        }

        /** Adds the best pattern for each length; false if none is better than what is known. */
        private boolean price() {
            long[] worths = new long[demand.length];
            for (int i = 0; i < worths.length; i++) {
                worths[i] = (long) Math.floor(Math.max(0, demand[i].dualValue()) * FINENESS);
            }
            long[] best = new long[lengths.length];
            List<Pattern> better = new ArrayList<>();
            for (int l = 0; l < lengths.length; l++) {
                EqualLengths length = kinds.lengths().get(l);
                if (length.available() > 0) {
                    Knapsack.Best found = filler.best(l, worths);
                    best[l] = found.bound();
                    double cost = length.cost() / unit + Math.max(0, -lengths[l].dualValue());
                    if (found.value() > (cost + TOLERANCE) * FINENESS) {
                        better.add(new Pattern(l, found.counts()));
                    }
                }
            }
            Prices at = new Prices(worths, best);
            raise(at);
            last = better.isEmpty() ? at : null;
            better.forEach(this::add);
            return !better.isEmpty();
        }

        private void raise(Prices at) {
            BigInteger sum = at.due(kinds, EqualLengths::limited);
            long raised = sum.signum() > 0 ? at.cheapest(kinds).map(length -> cost(sum, length, at.lengths()[length])).orElse(0L) : 0;
            if (raised > bound) {
                bound = raised;
                prices = at;
                least = at.due(kinds, length -> !length.bought()).longValueExact();
            }
        }

        /** Of so much worth in this length, rounded up. */
        private long cost(BigInteger worth, int length, long worthOfOne) {
            BigInteger each = BigInteger.valueOf(worthOfOne);
            return worth.multiply(BigInteger.valueOf(kinds.lengths().get(length).cost())).add(each).subtract(BigInteger.ONE).divide(each).longValueExact();
        }

        private void add(Pattern pattern) {
            patterns.add(pattern);
            MPVariable column = solver.makeNumVar(0, MPSolver.infinity(), "");
            times.add(column);
            solver.objective().setCoefficient(column, kinds.lengths().get(pattern.length()).cost() / unit);
            lengths[pattern.length()].setCoefficient(column, 1);
            for (int i = 0; i < demand.length; i++) {
                if (pattern.counts()[i] > 0) {
                    demand[i].setCoefficient(column, pattern.counts()[i]);
                }
            }
        }
    }
}
