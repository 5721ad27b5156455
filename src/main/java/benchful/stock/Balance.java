package benchful.stock;

import benchful.core.quantity.Quantity;

/**
 * How much there is of a material.
 *
 * @param onHand what lies on the shelf; below zero where more was taken than was ever counted
 * @param free the part of it that is reserved for no class
 */
public record Balance(Quantity onHand, Quantity free) {

    /** True where the movements say that less than nothing lies on the shelf: something was not written down. */
    public boolean negative() {
        return onHand.signum() < 0;
    }
}
