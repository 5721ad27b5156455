package benchful.core.needs;

import benchful.core.quantity.Quantity;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One material line of the project, for the whole class.
 *
 * @param takes by taker and size; all cut to pieces, or none
 * @param shared the amount that serves the whole class, or some of it; null for a line that each student takes
 * @param servings how many times a shared amount is there, from 1
 */
public record NeedLine(List<Take> takes, @Nullable Quantity shared, int servings, Allowance allowance) {
    public NeedLine {
        takes = List.copyOf(takes);
        Objects.requireNonNull(allowance, "allowance");
        if (shared != null && !takes.isEmpty()) {
            throw new IllegalArgumentException("A line is either shared or taken by each student.");
        }
        if (takes.stream().map(take -> take.pieces() == null).distinct().count() > 1) {
            throw new IllegalArgumentException("A line is either cut to pieces or not.");
        }
    }

    /** A line that each takes for herself, or that is there once for all. */
    public NeedLine(List<Take> takes, @Nullable Quantity shared, Allowance allowance) {
        this(takes, shared, 1, allowance);
    }

    boolean cut() {
        return !takes.isEmpty() && takes.get(0).pieces() != null;
    }
}
