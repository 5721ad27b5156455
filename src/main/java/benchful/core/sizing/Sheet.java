package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Equal rectangles from sheet.
 *
 * @param area of the pieces, without what the cuts lose
 * @param mass of the pieces; null where not asked
 * @param perSheet pieces from one sheet laid in rows; null where not asked, 0 where a piece is larger than the sheet
 * @param sheets how many sheets that takes; null where not asked or where none fits
 */
public record Sheet(int pieces, Quantity area, @Nullable Quantity mass, @Nullable Integer perSheet, @Nullable Integer sheets, List<Sentence> reasons) {
    public Sheet {
        reasons = List.copyOf(reasons);
    }
}
