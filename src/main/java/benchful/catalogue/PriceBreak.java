package benchful.catalogue;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;

/** From so many packs of an offer on, each costs this before VAT. */
@Embeddable
public class PriceBreak {
    int packs;
    BigDecimal price;

    /** For the database only. */
    protected PriceBreak() {}

    PriceBreak(int packs, BigDecimal price) {
        this.packs = packs;
        this.price = price;
    }
}
