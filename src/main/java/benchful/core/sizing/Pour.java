package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to measure out for a pour. An amount that can't be told from the densities given is null.
 *
 * @param mass of the whole
 * @param a the first part
 * @param b the second part
 */
public record Pour(Quantity volume, @Nullable Quantity mass, Part a, Part b, List<Sentence> reasons) {
    public Pour {
        reasons = List.copyOf(reasons);
    }

    /** One part of the mix; either may be null. */
    public record Part(@Nullable Quantity mass, @Nullable Quantity volume) {
        static final Part UNKNOWN = new Part(null, null);
    }
}
