package benchful.core.needs;

import benchful.core.quantity.Quantity;

/**
 * Equal pieces to be cut.
 *
 * @param label whom they are for: "small", or "spare" for those that may spoil
 */
public record CutNeed(String label, Quantity length, int count) {}
