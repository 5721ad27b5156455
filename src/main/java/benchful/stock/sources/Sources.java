package benchful.stock.sources;

import benchful.core.buying.Bought;
import benchful.web.Formats;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.util.stream.Stream;

/**
 * The form in which is said where missing materials come from, on whichever page misses them.
 *
 * @param back to where that is
 */
@TemplateData
public record Sources(SpecForm form, String back) {

    private static final String NONE = "XXX";

    /**
     * @param bought what stock and orders give; what they leave unmet is missing
     * @param currency ISO 4217 code of the plan; null, or that of none, where it has none
     */
    public static Sources of(Stream<Bought> bought, String currency, String back) {
        ObjectNode tree = SpecFormat.json().createObjectNode();
        if (currency != null && !currency.equals(NONE)) {
            tree.put("currency", currency);
        }
        ArrayNode rows = tree.putArray("sources");
        bought.filter(b -> b.unmet().signum() > 0).forEach(b -> rows.addObject().put("material", b.material()).put("missing", Formats.words(b.unmet())));
        return new Sources(SpecForm.of(tree, 0), back);
    }

    /** True where nothing is missing. */
    public boolean none() {
        return form.rows("/sources").isEmpty();
    }
}
