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
 * @param cuts the pieces to be cut, waste included; empty where it is not cut to length
 */
public record Need(
        String material, Quantity net, Quantity waste, Quantity total, List<CutNeed> cuts, List<Sentence> reasons) {
    public Need {
        cuts = List.copyOf(cuts);
        reasons = List.copyOf(reasons);
    }
}
