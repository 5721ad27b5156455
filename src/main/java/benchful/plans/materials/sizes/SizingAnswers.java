package benchful.plans.materials.sizes;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.core.sizing.Strand;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one working gives: its answers by name, its reasons and, for beads, the strand to draw. */
final class SizingAnswers {
    /** Finer than anything is cut or weighed; keeps the endless digits of pi out of answers. */
    private static final int PLACES = 6;

    private final Map<String, Quantity> values = new LinkedHashMap<>();
    private final List<Sentence> reasons;
    private final Strand strand;

    SizingAnswers(List<Sentence> reasons, Strand strand) {
        this.reasons = reasons;
        this.strand = strand;
    }

    /** An answer that could not be told is null and left out. */
    SizingAnswers with(String name, Quantity value) {
        if (value != null) {
            values.put(name, value.rounded(PLACES, RoundingMode.HALF_UP));
        }
        return this;
    }

    SizingAnswers with(String name, Integer count) {
        return with(name, count == null ? null : Quantity.of(count, Unit.PIECE));
    }

    Map<String, Quantity> values() {
        return values;
    }

    List<Sentence> reasons() {
        return reasons;
    }

    Optional<Strand> strand() {
        return Optional.ofNullable(strand);
    }
}
