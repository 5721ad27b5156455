package benchful.catalogue;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A piece of known size that a material lies in: a length, an offcut, a sheet.
 *
 * @param width null for what is cut to length
 */
public record StockPiece(Quantity length, @JsonInclude(JsonInclude.Include.NON_NULL) Quantity width) {

    public static StockPiece of(Extent sheet) {
        return new StockPiece(sheet.length(), sheet.width());
    }

    /** Its length, or its area. */
    @JsonIgnore
    public Quantity amount() {
        return width == null ? length : sheet().area();
    }

    @JsonIgnore
    public Extent sheet() {
        return new Extent(length, width);
    }
}
