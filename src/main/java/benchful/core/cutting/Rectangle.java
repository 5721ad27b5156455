package benchful.core.cutting;

import benchful.core.quantity.Extent;

/**
 * Equal rectangles to be cut from sheet.
 *
 * @param label whom they are for
 * @param grain true where their length must lie along the sheet's; else they may be turned
 */
public record Rectangle(String label, Extent size, boolean grain, int count) {
    public Rectangle {
        if (count < 0) {
            throw new IllegalArgumentException("The count of “%s” can't be negative.".formatted(label));
        }
    }

    /** Whether one of them lies on a sheet of this size. */
    public boolean liesOn(Extent sheet) {
        return grain ? size.length().compareTo(sheet.length()) <= 0 && size.width().compareTo(sheet.width()) <= 0 : size.within(sheet);
    }
}
