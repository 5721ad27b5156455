package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Round wire to be wound close on a round mandrel; a jump ring is one turn.
 *
 * @param mandrel its diameter [length]
 * @param wire its diameter [length]
 * @param turns how many; parts of a turn count
 * @param straight wire added at the ends in all [length]
 * @param density of the metal [mass / volume]; null where the mass is not asked
 */
public record CoilRequest(Quantity mandrel, Quantity wire, BigDecimal turns, Quantity straight, @Nullable Quantity density) {
    private static final BigDecimal MOST_TURNS = BigDecimal.valueOf(100_000);

    public CoilRequest {
        Guard.positive(mandrel, Dimension.LENGTH, "The mandrel");
        Guard.positive(wire, Dimension.LENGTH, "The wire");
        Guard.notNegative(straight, Dimension.LENGTH, "The straight ends");
        if (turns.signum() <= 0 || turns.compareTo(MOST_TURNS) > 0) {
            throw new IllegalArgumentException("The turns must be more than 0 and at most %s, but are %s.".formatted(MOST_TURNS, turns));
        }
        if (density != null) {
            Guard.positive(density, Unit.G_PER_CM3.dimension(), "The density");
        }
    }
}
