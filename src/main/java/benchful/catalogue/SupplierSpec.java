package benchful.catalogue;

import benchful.core.buying.LeadTime;
import benchful.web.Formats;
import benchful.web.forms.fields.CurrencyCode;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;

/**
 * Somebody who sells materials.
 *
 * @param currency ISO 4217 code of its prices
 * @param minimumOrder least value of goods before VAT that it takes an order for; null for none
 * @param delivery charge for one delivery before VAT; null for none
 * @param freeAbove goods value from which delivery is free; null for never
 * @param leadDays days from order to delivery
 * @param weekdays true where only Mondays to Fridays count as such days
 * @param vat percentage added to goods and delivery; null for none
 * @param customerNumber by which it knows the studio; null for none
 */
@Spec(name = "supplier-1", title = "Somebody who sells materials")
public record SupplierSpec(
        @Required @Filled(120) @Mend("Give the supplier a name.") String name,
        @Required @CurrencyCode String currency,
        @Price BigDecimal minimumOrder,
        @Price BigDecimal delivery,
        @Price BigDecimal freeAbove,
        @Range(from = 0, to = 365) @Mend("Give the days from order to delivery, from 0 to 365.") int leadDays,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean weekdays,
        @Range(from = 0, to = 100) @Mend("Give the VAT percentage, from 0 to 100.") BigDecimal vat,
        @ShortText String contact,
        @Length(most = 60) @Mend("Write the customer number in at most 60 characters.") String customerNumber) {

    public LeadTime lead() {
        return new LeadTime(leadDays, weekdays);
    }

    /** "same day", "3 days", "3 weekdays". */
    public String leadWords() {
        return leadDays == 0 ? "same day" : Formats.counted(leadDays, weekdays ? "weekday" : "day");
    }
}
