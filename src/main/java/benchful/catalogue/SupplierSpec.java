package benchful.catalogue;

import benchful.core.buying.LeadTime;
import benchful.web.Formats;
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
 */
public record SupplierSpec(
        String name,
        String currency,
        BigDecimal minimumOrder,
        BigDecimal delivery,
        BigDecimal freeAbove,
        int leadDays,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean weekdays,
        BigDecimal vat,
        String contact) {

    public LeadTime lead() {
        return new LeadTime(leadDays, weekdays);
    }

    /** "same day", "3 days", "3 weekdays". */
    public String leadWords() {
        return leadDays == 0 ? "same day" : Formats.counted(leadDays, weekdays ? "weekday" : "day");
    }
}
