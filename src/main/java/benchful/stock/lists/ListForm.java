package benchful.stock.lists;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Objects;

/**
 * What the page for lists is asked.
 *
 * @param kind {@code prices} or {@code stock}
 * @param supplier of all rows of a price list that name none; empty for none
 * @param addsNew whether materials that are not in the catalogue are added
 */
@TemplateData
record ListForm(String kind, String supplier, boolean addsNew) {
    static final ListForm BLANK = new ListForm("prices", "", false);

    static ListForm of(MultivaluedMap<String, String> fields) {
        String kind = List.of("prices", "stock").contains(fields.getFirst("kind")) ? fields.getFirst("kind") : "prices";
        return new ListForm(kind, Objects.requireNonNullElse(fields.getFirst("supplier"), ""), "true".equals(fields.getFirst("adds-new")));
    }

    boolean prices() {
        return kind.equals("prices");
    }
}
