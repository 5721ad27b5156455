package benchful.plans.materials.cutting;

import benchful.core.buying.Assortment.Floor;
import benchful.core.buying.Assortment.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * What a cutting plan tells of all mixes that are enough, n of each size at cost c.
 *
 * <p>A plan from some of the sizes: those of any mix cost the plan's bound or more, or another size is in the mix. A mix p that is
 * proven too little, since no plan comes by with less than B beside it: the sizes that a mix has more of cost c x (n - p) >= B, and
 * which these are is one of few sets.
 *
 * @param costs of one of each size, in ten-thousandths
 * @param pieces to be cut; more of one size than this are of no use
 */
record MixRules(List<Long> costs, int pieces) {
    /** Of so many sizes all sets of them are looked at; of more each alone, for one more of it. */
    private static final int FEW_SIZES = 4;

    /** @param least bound on the cost of a plan from these sizes; empty where they give none */
    Rule of(List<Integer> sizes, Optional<Long> least) {
        List<Floor> floors = new ArrayList<>();
        least.ifPresent(bound -> floors.add(new Floor(weights(size -> sizes.contains(size) ? costs.get(size) : 0), bound)));
        if (sizes.size() < costs.size()) {
            floors.add(new Floor(weights(size -> sizes.contains(size) ? 0 : 1), 1));
        }
        return new Rule(floors);
    }

    /** @param least that must be bought beside these numbers */
    Rule beyond(List<Integer> numbers, long least) {
        List<Integer> open = IntStream.range(0, costs.size()).filter(size -> numbers.get(size) < pieces).boxed().toList();
        if (open.size() > FEW_SIZES) {
            return new Rule(open.stream().map(size -> beyond(numbers, 1, List.of(size))).toList());
        }
        return new Rule(IntStream.range(1, 1 << open.size())
                .mapToObj(set -> beyond(numbers, least, IntStream.range(0, open.size()).filter(i -> (set >> i & 1) == 1).mapToObj(open::get).toList())).toList());
    }

    private Floor beyond(List<Integer> numbers, long least, List<Integer> more) {
        long there = more.stream().mapToLong(size -> Math.multiplyExact(costs.get(size), (long) numbers.get(size))).reduce(0, Math::addExact);
        long beside = more.size() > 1 ? least : -Math.floorDiv(-least, costs.get(more.get(0))) * costs.get(more.get(0));
        return new Floor(weights(size -> more.contains(size) ? costs.get(size) : 0), Math.addExact(there, beside));
    }

    static boolean isBelow(List<Integer> numbers, Floor floor) {
        return IntStream.range(0, numbers.size()).mapToLong(size -> Math.multiplyExact(floor.weights().get(size), (long) numbers.get(size)))
                .reduce(0, Math::addExact) < floor.least();
    }

    private List<Long> weights(IntToLongFunction weight) {
        return IntStream.range(0, costs.size()).mapToObj(weight::applyAsLong).toList();
    }
}
