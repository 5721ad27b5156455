package benchful.core.cutting;

import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.List;

/**
 * Which sheet is cut into which rectangles.
 *
 * @param sheets in the order in which to cut them; those on hand first
 * @param cost of the new sheets, in the unit of the stock's costs
 * @param bound no plan of cuts from edge to edge costs less
 * @param proof a sentence that says so, or how much less another might cost
 */
public record SheetPlan(List<CutSheet> sheets, BigDecimal cost, BigDecimal bound, String proof, List<Sentence> reasons) implements SheetOutcome {
    public SheetPlan {
        sheets = List.copyOf(sheets);
        reasons = List.copyOf(reasons);
        if (bound.compareTo(cost) > 0) {
            throw new IllegalArgumentException("The bound %s lies above the cost %s.".formatted(bound, cost));
        }
    }

    /** How many new sheets it takes. */
    public int bought() {
        return (int) sheets.stream().filter(CutSheet::bought).count();
    }

    public boolean isProven() {
        return bound.compareTo(cost) == 0;
    }

    /** The same where sheets are lengths off a roll, of which only some were tried. */
    public SheetPlan offARoll(BigDecimal itsBound) {
        return new SheetPlan(sheets, cost, itsBound.min(cost), itsBound.compareTo(cost) >= 0 ? "Proven least: no smaller area holds all pieces."
                : "Lengths off the roll were tried in turn; a shorter one might do.", reasons);
    }

    /** The same where its sheets were chosen for what all purchases cost together, not for what they cost alone. */
    public SheetPlan amongPurchases(BigDecimal itsCost, BigDecimal itsBound) {
        return new SheetPlan(sheets, itsCost, itsBound.min(itsCost),
                "Which sheets to buy is weighed with all other purchases and their deliveries; how sure that is stands with the total.", reasons);
    }
}
