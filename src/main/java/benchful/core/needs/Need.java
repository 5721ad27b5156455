package benchful.core.needs;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;

/**
 * What to bring of one material, in the material's unit.
 *
 * @param net what is used if nothing spoils
 * @param waste the allowance
 * @param total net and waste; whole pieces where it is counted
 * @param lent whether it comes back: then it need only be there, and serves one class after another
 * @param cuts the pieces to be cut, waste included; empty where it is not cut to length
 */
public record Need(
        String material, Quantity net, Quantity waste, Quantity total, boolean lent, List<CutNeed> cuts, List<Sentence> reasons) {
    public Need {
        cuts = List.copyOf(cuts);
        reasons = List.copyOf(reasons);
    }

    /** What is used up. */
    public Need(String material, Quantity net, Quantity waste, Quantity total, List<CutNeed> cuts, List<Sentence> reasons) {
        this(material, net, waste, total, false, cuts, reasons);
    }

    /** The same, which comes back. */
    public Need asLent() {
        return new Need(material, net, waste, total, true, cuts, reasons);
    }
}
