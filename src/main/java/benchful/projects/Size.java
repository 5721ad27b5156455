package benchful.projects;

import benchful.core.quantity.Quantity;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A named choice of measures for one piece: small, with a length of 42 cm. Every measure of the sheet has its value here. */
public record Size(String name, Map<String, Quantity> measures) {
    public Size {
        measures = measures == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    }
}
