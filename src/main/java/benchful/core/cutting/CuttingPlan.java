package benchful.core.cutting;

import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.List;

/**
 * Which length is cut into which pieces.
 *
 * @param lengths in the order in which to cut them; those on hand first
 * @param cost of the new lengths, in the unit of the stock's costs
 * @param bound no plan costs less
 * @param proof a sentence that says so, or how much less another might cost
 */
public record CuttingPlan(List<CutLength> lengths, BigDecimal cost, BigDecimal bound, String proof, List<Sentence> reasons)
        implements CuttingOutcome {
    public CuttingPlan {
        lengths = List.copyOf(lengths);
        reasons = List.copyOf(reasons);
        if (bound.compareTo(cost) > 0) {
            throw new IllegalArgumentException("The bound %s lies above the cost %s.".formatted(bound, cost));
        }
    }

    /** How many new lengths it takes. */
    public int bought() {
        return (int) lengths.stream().filter(CutLength::bought).count();
    }

    public boolean isProven() {
        return bound.compareTo(cost) == 0;
    }

    /** The same where its lengths were chosen for what all purchases cost together, not for what they cost alone. */
    public CuttingPlan amongPurchases(BigDecimal itsCost, BigDecimal itsBound) {
        return new CuttingPlan(lengths, itsCost, itsBound.min(itsCost),
                "Which lengths to buy is weighed with all other purchases and their deliveries; how sure that is stands with the total.", reasons);
    }
}
