package benchful.core.sizing;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Equal rectangles to be cut from sheet.
 *
 * @param pieces how many
 * @param kerf lost at each cut [length]
 * @param sheetWidth with {@code sheetHeight}, the sheet they come from; both null where not asked
 * @param thickness with {@code density}, for the mass; both null where not asked
 */
public record SheetRequest(
        Quantity width,
        Quantity height,
        int pieces,
        Quantity kerf,
        @Nullable Quantity sheetWidth,
        @Nullable Quantity sheetHeight,
        @Nullable Quantity thickness,
        @Nullable Quantity density) {

    public SheetRequest {
        Guard.positive(width, Dimension.LENGTH, "The width");
        Guard.positive(height, Dimension.LENGTH, "The height");
        Guard.between(pieces, 1, 100_000, "The number of pieces");
        Guard.notNegative(kerf, Dimension.LENGTH, "The kerf");
        together(sheetWidth, sheetHeight, "The sheet needs both its width and its height.");
        together(thickness, density, "The mass needs both thickness and density.");
        if (sheetWidth != null) {
            Guard.positive(sheetWidth, Dimension.LENGTH, "The sheet's width");
            Guard.positive(requireNonNull(sheetHeight), Dimension.LENGTH, "The sheet's height");
        }
        if (thickness != null) {
            Guard.positive(thickness, Dimension.LENGTH, "The thickness");
            Guard.positive(requireNonNull(density), Unit.G_PER_CM3.dimension(), "The density");
        }
    }

    private static void together(@Nullable Quantity one, @Nullable Quantity other, String message) {
        if ((one == null) != (other == null)) {
            throw new IllegalArgumentException(message);
        }
    }
}
