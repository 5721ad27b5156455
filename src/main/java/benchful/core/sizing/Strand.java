package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The strand nearest to what was asked.
 *
 * @param beads in order from one end
 * @param counts of each bead, by name, in the order in which they first come
 * @param knots in all, those at the ends included
 * @param length finished, closure included
 * @param difference length less the target: longer is positive
 * @param thread cord within the piece, single, knots included, without tails or closure
 */
public record Strand(
        List<PlacedBead> beads,
        Map<String, Integer> counts,
        int knots,
        Quantity length,
        Quantity difference,
        Quantity thread,
        List<Sentence> reasons) {

    public Strand {
        beads = List.copyOf(beads);
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
        reasons = List.copyOf(reasons);
    }
}
