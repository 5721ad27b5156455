package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;

/**
 * Some equal beads in a row.
 *
 * @param size of one bead along the strand [length]
 */
public record BeadRun(String bead, Quantity size, int count) {
    public BeadRun {
        Guard.positive(size, Dimension.LENGTH, "The size of “" + bead + "”");
        Guard.between(count, 1, 2000, "The count of “" + bead + "”");
    }
}
