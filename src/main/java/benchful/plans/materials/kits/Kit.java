package benchful.plans.materials.kits;

import benchful.core.needs.Take;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The packed contents for one student, the demonstration or a spare.
 *
 * @param number from 1, in the order of packing
 * @param title whom it is for: the student's name, "Student 5", "Demonstration" or "Spare 1"
 * @param name the student's name; null where not known
 * @param seat null where none is set
 * @param bench what is not packed but waits on the bench, of which this is its taker's part
 * @param mass of all contents; null where a material's mass is not known
 */
public record Kit(
        int number, Take.Taker taker, String title, String name, String seat, String size, List<Content> contents, List<Content> bench, Quantity mass) {

    public Kit {
        contents = List.copyOf(contents);
        bench = List.copyOf(bench);
    }

    /**
     * One thing in a kit, or on the bench for all.
     *
     * @param amount in the material's unit; of all pieces where it is cut
     * @param pieces how many cut pieces; null where it is not cut
     * @param each length or area of a cut piece; null where it is not cut
     * @param rectangle of a cut piece; null where it is not cut from sheet
     * @param choice what could be chosen, such as "colour"; null for nothing
     * @param chosen the material that this student or the class chose; null where not known
     * @param insteadOf the material that was wanted, where this one stands in for it; null for none
     */
    public record Content(
            String material, Quantity amount, Integer pieces, Quantity each, Extent rectangle, String choice, String chosen, String insteadOf, String note) {

        /** "54", "2 × 10 cm", "3 of 102 × 76 mm". */
        public String words() {
            return pieces == null ? Formats.words(amount) : rectangle == null ? "%d × %s".formatted(pieces, Formats.words(each)) : Formats.several(pieces, Formats.words(rectangle));
        }

        /** What is still to be chosen; null for nothing. */
        @JsonIgnore
        public String open() {
            return chosen == null ? choice : null;
        }

        /** What the material's name does not say: "instead of cotton cord"; null for nothing. */
        @JsonIgnore
        public String detail() {
            return insteadOf == null ? null : "instead of " + insteadOf;
        }
    }
}
