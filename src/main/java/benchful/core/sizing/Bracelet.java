package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;

/**
 * The closed row of beads nearest to what was asked.
 *
 * @param strand its beads laid out straight; its length runs along the beads' centres
 * @param inside inside circumference [length]
 * @param difference inside less wrist and ease: looser is positive
 */
public record Bracelet(Strand strand, Quantity inside, Quantity difference, List<Sentence> reasons) {
    public Bracelet {
        reasons = List.copyOf(reasons);
    }
}
