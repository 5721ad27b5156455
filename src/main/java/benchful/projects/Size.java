package benchful.projects;

import benchful.core.quantity.Quantity;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A named choice of measures for one piece: small, with a length of 42 cm. Every measure of the sheet has its value here. */
public record Size(
        @Required @Filled(40) @Mend("Give the size a name, such as “Medium” or “45 cm”.") String name,
        @Length(most = 60) Map<@FormulaName String, Quantity> measures) {
    public Size {
        measures = measures == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    }
}
