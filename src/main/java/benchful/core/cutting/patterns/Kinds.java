package benchful.core.cutting.patterns;

import benchful.core.cutting.CuttingRequest;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A cutting problem in whole numbers: equal pieces and equal lengths taken together, a cut's loss added to each of both.
 *
 * @param sizes by kind, falling, loss included [um]
 * @param demand pieces of each kind
 * @param lengths those on hand, those planned, and those that can be bought as often as needed, each by rising length
 */
public record Kinds(long[] sizes, int[] demand, List<EqualLengths> lengths) {
    private static final int COST_PLACES = 4;

    public static Kinds of(CuttingRequest request) {
        long loss = Micrometres.up(request.loss());
        TreeMap<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        request.pieces().forEach(p -> counts.merge(Micrometres.up(p.length()) + loss, p.count(), Math::addExact));
        return new Kinds(
                counts.keySet().stream().mapToLong(Long::longValue).toArray(),
                counts.values().stream().mapToInt(Integer::intValue).toArray(),
                lengths(request, loss));
    }

    private static List<EqualLengths> lengths(CuttingRequest request, long loss) {
        List<EqualLengths> lengths = new ArrayList<>(limited(request.onHand(), loss, false));
        lengths.addAll(limited(request.planned(), loss, true));
        request.stocks().stream()
                .map(s -> new EqualLengths(Micrometres.down(s.length()) + loss,
                        cost(s.cost()), EqualLengths.UNLIMITED, true))
                .sorted(Comparator.comparingLong(EqualLengths::capacity).thenComparing(EqualLengths::cost))
                .forEach(lengths::add);
        return lengths;
    }

    private static List<EqualLengths> limited(List<Quantity> all, long loss, boolean bought) {
        TreeMap<Long, Integer> numbers = new TreeMap<>();
        all.forEach(length -> numbers.merge(Micrometres.down(length) + loss, 1, Integer::sum));
        return numbers.entrySet().stream().map(e -> new EqualLengths(e.getKey(), 0, e.getValue(), bought)).toList();
    }

    public static long cost(BigDecimal cost) {
        return cost.movePointRight(COST_PLACES).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    /** The least cost from this one on that a plan can have: every plan's is a multiple of what divides all costs. */
    public long whole(long cost) {
        return -Math.floorDiv(-cost, step()) * step();
    }

    public long step() {
        BigInteger step = lengths.stream().map(l -> BigInteger.valueOf(l.cost())).reduce(BigInteger.ZERO, BigInteger::gcd);
        return Math.max(1, step.longValueExact());
    }

    /** Which of the lengths can be bought as often as needed. */
    public IntStream stocks() {
        return IntStream.range(0, lengths.size()).filter(l -> !lengths.get(l).limited());
    }

    /** Which of the lengths is the one of this capacity that can be bought as often as needed. */
    public int of(long capacity) {
        return stocks().filter(l -> lengths.get(l).capacity() == capacity).findFirst().orElseThrow();
    }

    public int kinds() {
        return sizes.length;
    }

    public int pieces() {
        return Arrays.stream(demand).reduce(0, Math::addExact);
    }

    long total() {
        long total = 0;
        for (int i = 0; i < sizes.length; i++) {
            total = Math.addExact(total, Math.multiplyExact(sizes[i], (long) demand[i]));
        }
        return total;
    }

    public long cost(List<Pattern> patterns) {
        return patterns.stream().mapToLong(p -> lengths.get(p.length()).cost()).sum();
    }

    /** What is left to do once a pattern has been cut so many times. */
    public Kinds without(Pattern pattern, int times) {
        int[] left = demand.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] -= times * pattern.counts()[i];
        }
        List<EqualLengths> rest = new ArrayList<>(lengths);
        rest.set(pattern.length(), lengths.get(pattern.length()).without(times));
        return new Kinds(sizes, left, rest);
    }

    /** How often a pattern can be cut before it gives a piece too many or its lengths are used up. */
    public int times(Pattern pattern) {
        int times = lengths.get(pattern.length()).available();
        for (int i = 0; i < demand.length; i++) {
            if (pattern.counts()[i] > 0) {
                times = Math.min(times, demand[i] / pattern.counts()[i]);
            }
        }
        return times;
    }
}
