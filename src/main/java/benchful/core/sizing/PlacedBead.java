package benchful.core.sizing;

import benchful.core.quantity.Quantity;

/**
 * A bead in its place, for a drawing to scale.
 *
 * @param at its near edge, from the near edge of the first bead [length]
 * @param size along the strand [length]
 */
public record PlacedBead(String bead, Quantity at, Quantity size) {}
