package benchful.catalogue;

import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * A material as a line of the list.
 *
 * @param offers each in words: "2 m at £4.20 from Harbour Cords"
 */
@TemplateData
public record MaterialRow(
        long id, String name, String unit, Quantity onHand, Quantity free, Quantity minimum, boolean low, boolean negative, List<String> offers, boolean sample) {

    static MaterialRow of(Material m) {
        return new MaterialRow(m.id(), m.name(), Formats.words(m.unit()), m.onHand(), m.free(), m.minimum(), m.low(), m.onHand().signum() < 0,
                m.sold().stream().map(MaterialRow::words).toList(), m.sample());
    }

    private static String words(SupplierOffer offer) {
        return "%s at %s from %s".formatted(OfferRow.pack(offer), Formats.words(offer.money(offer.price)), offer.supplier.name());
    }

    /** True where part of what lies there is reserved. */
    public boolean reserved() {
        return !free.equals(onHand);
    }
}
