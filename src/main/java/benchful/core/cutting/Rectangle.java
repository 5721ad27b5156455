package benchful.core.cutting;

/**
 * Equal rectangles to be cut from sheet.
 *
 * @param label whom they are for
 * @param grain true where their length must lie along the sheet's; else they may be turned
 */
public record Rectangle(String label, SheetSize size, boolean grain, int count) {
    public Rectangle {
        if (count < 0) {
            throw new IllegalArgumentException("The count of “%s” can't be negative.".formatted(label));
        }
    }
}
