package benchful.catalogue;

import java.math.BigDecimal;

/**
 * Somebody who sells materials.
 *
 * @param currency ISO 4217 code of its prices
 * @param minimumOrder least value of goods before VAT that it takes an order for; null for none
 * @param delivery charge for one delivery before VAT; null for none
 * @param freeAbove goods value from which delivery is free; null for never
 * @param leadDays days from order to delivery
 * @param vat percentage added to goods and delivery; null for none
 */
public record SupplierSheet(
        String name,
        String currency,
        BigDecimal minimumOrder,
        BigDecimal delivery,
        BigDecimal freeAbove,
        int leadDays,
        BigDecimal vat,
        String contact) {}
