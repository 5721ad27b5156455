package benchful.stock;

import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.util.List;

/**
 * A movement of stock as the tutor writes it down.
 *
 * @param amount what came or went; for a count, what was found
 */
public record MovementSpec(MovementKind kind, Quantity amount, String note) {

    /** What does not fit a material counted in this unit. */
    List<Fault> faults(Unit unit) {
        if (!amount.dimension().equals(unit.dimension())) {
            return fault("“%s” is %s, but this is counted in %s. Give such an amount.".formatted(amount, amount.dimension().words(), unit.symbol()));
        }
        return amount.signum() == 0 && kind != MovementKind.COUNTED ? fault("Give an amount above 0.") : List.of();
    }

    private static List<Fault> fault(String detail) {
        return List.of(new Fault("/amount", detail));
    }
}
