package benchful.packing;

import benchful.core.quantity.Quantity;
import io.quarkus.qute.TemplateData;

/**
 * One material of a class, as it lies on the shelf.
 *
 * @param need of the whole class
 * @param onHand on the shelf, for whomever
 * @param reserved for this class
 * @param packed for this class, and so off the shelf
 * @param others reserved for other classes
 * @param free on the shelf and reserved for nobody; below zero where more is promised than there is
 * @param coming on orders, for this class or for any
 */
@TemplateData
public record ReservationRow(
        long id, String name, Quantity need, Quantity onHand, Quantity reserved, Quantity packed, Quantity others, Quantity free, Quantity coming) {

    /** What is needed and not packed. */
    Quantity toReserve() {
        Quantity rest = need.minus(packed);
        return rest.signum() > 0 ? rest : Quantity.zero(need.unit());
    }

    /** What is neither packed nor reserved, nor free, nor on its way; zero where nothing is missing. */
    public Quantity missing() {
        Quantity there = packed.plus(reserved).plus(free).plus(coming);
        return need.compareTo(there) > 0 ? need.minus(there) : Quantity.zero(need.unit());
    }
}
