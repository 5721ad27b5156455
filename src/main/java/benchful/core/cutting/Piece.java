package benchful.core.cutting;

import benchful.core.quantity.Quantity;

/**
 * Equal pieces to be cut.
 *
 * @param label whom they are for
 * @param length of one [length], more than nothing
 */
public record Piece(String label, Quantity length, int count) {
    public Piece {
        if (length.signum() <= 0 || count < 0) {
            throw new IllegalArgumentException("A piece for “%s” must have a length, and its count can't be negative.".formatted(label));
        }
    }
}
