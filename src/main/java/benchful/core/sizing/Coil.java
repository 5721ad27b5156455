package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The wire of a coil.
 *
 * @param turn wire in one turn [length]
 * @param length wire in all, straight ends included [length]
 * @param height of the coil, wound close [length]
 * @param outside diameter [length]
 * @param mass of the wire; null where no density was given
 */
public record Coil(Quantity turn, Quantity length, Quantity height, Quantity outside, @Nullable Quantity mass, List<Sentence> reasons) {
    public Coil {
        reasons = List.copyOf(reasons);
    }
}
