package benchful.batches;

import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the tutor decides about kits for sale.
 *
 * @param title null for the project's name
 * @param kits how many, 1 to 1000
 * @param level whose waste allowance is added
 * @param sizes how many kits of which size; the rest are of the first size of the project
 * @param readyBy the day on which they are packed; null for no such day
 * @param packaging mass of the empty packaging of one kit; null where it is not weighed
 * @param currency ISO 4217 code the totals are shown in
 */
public record BatchSpec(
        String title, int kits, SkillLevel level, Map<String, Integer> sizes, LocalDate readyBy, Quantity packaging, String currency, String notes) {
    public BatchSpec {
        sizes = sizes == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    }
}
