package benchful.core.buying;

import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * One material that comes in several sizes, such as stock lengths or sheets, of which many mixes are enough: more of one size
 * makes up for less of another. Which mixes are enough only whoever cuts them can tell; buying asks about those that would cost
 * least, and learns by each answer.
 */
public interface Assortment {
    /** Which wants of the request stand for its sizes. Their needs are a mix that is enough, to begin with. */
    List<Integer> wants();

    /** What one of each size holds, in the order of the wants. */
    List<Quantity> each();

    /** How many of each size no mix needs more than. */
    List<Integer> most();

    /** How many of a size an amount of it is [base units]. */
    default int number(int size, BigDecimal amount) {
        return amount.divide(each().get(size).base(), 0, RoundingMode.HALF_UP).intValueExact();
    }

    /** What holds of every mix that is enough, as far as is known to begin with. */
    List<Rule> rules();

    /** Asked of so many of each size: whether they are enough, or what would be. */
    Trial tried(List<Integer> numbers);

    /** One of the floors at least is reached by every mix that is enough. */
    record Rule(List<Floor> anyOf) {
        public Rule {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** The numbers of each size times their weights add up to {@code least} or more. */
    record Floor(List<Long> weights, long least) {
        public Floor {
            weights = List.copyOf(weights);
        }
    }

    /**
     * @param mix one that is enough: no more of any size than asked about, if that was enough
     * @param rules that leave out what was asked about; none where it is enough, or not proven too little
     */
    record Trial(List<Integer> mix, List<Rule> rules) {
        public Trial {
            mix = List.copyOf(mix);
            rules = List.copyOf(rules);
        }

        boolean isEnough(List<Integer> numbers) {
            for (int size = 0; size < mix.size(); size++) {
                if (mix.get(size) > numbers.get(size)) {
                    return false;
                }
            }
            return true;
        }
    }
}
