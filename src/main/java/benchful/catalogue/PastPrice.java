package benchful.catalogue;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.LocalDate;

/** What one pack of an offer cost before VAT from a day until another. */
@Embeddable
public class PastPrice {
    BigDecimal price;
    LocalDate pricedOn;
    LocalDate until;

    /** For the database only. */
    protected PastPrice() {}

    PastPrice(BigDecimal price, LocalDate pricedOn, LocalDate until) {
        this.price = price;
        this.pricedOn = pricedOn;
        this.until = until;
    }
}
