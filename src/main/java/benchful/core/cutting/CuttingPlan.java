package benchful.core.cutting;

import benchful.core.quantity.Sentence;
import java.util.List;

/**
 * Which length is cut into which pieces.
 *
 * @param lengths in the order in which to cut them; those on hand first
 * @param bound no plan can do with fewer new lengths
 */
public record CuttingPlan(List<CutLength> lengths, int bound, List<Sentence> reasons) implements CuttingOutcome {
    public CuttingPlan {
        lengths = List.copyOf(lengths);
        reasons = List.copyOf(reasons);
        if (bound > bought(lengths)) {
            throw new IllegalArgumentException("The bound %d lies above the %d lengths used.".formatted(bound, bought(lengths)));
        }
    }

    /** How many new lengths it takes. */
    public int bought() {
        return bought(lengths);
    }

    public boolean isProven() {
        return bound == bought();
    }

    public String proof() {
        return isProven() ? "Proven least: no plan takes fewer new lengths."
                : "Best plan found; another might take %d fewer.".formatted(bought() - bound);
    }

    private static int bought(List<CutLength> lengths) {
        return (int) lengths.stream().filter(CutLength::bought).count();
    }
}
