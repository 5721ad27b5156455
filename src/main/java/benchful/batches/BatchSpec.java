package benchful.batches;

import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.web.forms.fields.CurrencyCode;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
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
@Spec(name = "batch-1", title = "Kits made for sale, with no lesson")
public record BatchSpec(
        @ShortText String title,
        @Required @Range(from = 1, to = 1000) @Mend("Enter how many kits, from 1 to 1000.") int kits,
        @Required SkillLevel level,
        @Length(most = 100) Map<@Filled(40) @Mend("Name a size in at most 40 letters.") String,
                @Range(from = 0, to = 1000) @Mend("Enter how many kits of this size, from 0 to 1000.") Integer> sizes,
        LocalDate readyBy,
        Quantity packaging,
        @CurrencyCode String currency,
        @LongText String notes) {
    public BatchSpec {
        sizes = sizes == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    }
}
