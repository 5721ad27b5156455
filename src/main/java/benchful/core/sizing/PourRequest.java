package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Something to be cast or poured.
 *
 * @param volume of the piece [volume]
 * @param density of the ready mix [mass / volume]; null where not known
 * @param mix null for a single part
 * @param densityA of the first part; null where not known
 * @param densityB of the second part; null where not known
 */
public record PourRequest(
        Quantity volume, @Nullable Quantity density, @Nullable Mix mix, @Nullable Quantity densityA, @Nullable Quantity densityB) {
    public PourRequest {
        Guard.positive(volume, Dimension.VOLUME, "The volume");
        density(density, "The density");
        density(densityA, "The density of part a");
        density(densityB, "The density of part b");
        boolean weighed = density != null || densityA != null && densityB != null;
        if (mix != null && mix.by() == Mix.By.WEIGHT && !weighed) {
            throw new IllegalArgumentException("A mix by weight needs the density of the mix, or of both parts, to tell its mass.");
        }
    }

    private static void density(@Nullable Quantity density, String what) {
        if (density != null) {
            Guard.positive(density, Unit.G_PER_CM3.dimension(), what);
        }
    }
}
