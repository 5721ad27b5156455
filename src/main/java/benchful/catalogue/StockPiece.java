package benchful.catalogue;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A piece of known size that a material lies in: a length, an offcut, a sheet.
 *
 * @param width null for what is cut to length
 */
@Mend("Give a length, and for a sheet its width, such as 300 mm and 100 mm.")
public record StockPiece(
        @Required @Mend("Give the length, such as 300 mm.") Quantity length,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Mend("Give the width, such as 100 mm.") Quantity width) {

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
