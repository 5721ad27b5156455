package benchful.plans;

import benchful.core.needs.Take;
import benchful.core.quantity.Quantity;
import java.util.List;

/**
 * The packed contents for one student, the demonstration or a spare.
 *
 * @param number from 1, in the order of packing
 * @param title whom it is for: the student's name, "Student 5", "Demonstration" or "Spare 1"
 * @param name the student's name; null where not known
 * @param seat null where none is set
 * @param mass of all contents; null where a material's mass is not known
 */
public record Kit(
        int number, Take.Taker taker, String title, String name, String seat, String size, List<Content> contents, Quantity mass) {

    public Kit {
        contents = List.copyOf(contents);
    }

    /**
     * One thing in a kit, or on the bench for all.
     *
     * @param amount in the material's unit; of all pieces where it is cut
     * @param pieces how many cut pieces; null where it is not cut
     * @param each length of a cut piece; null where it is not cut
     * @param choice what could be chosen, such as "colour"; null for nothing
     * @param chosen what this student chose; null where not known
     */
    public record Content(
            String material, Quantity amount, Integer pieces, Quantity each, String choice, String chosen, String note) {}
}
