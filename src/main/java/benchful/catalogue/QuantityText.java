package benchful.catalogue;

import benchful.core.quantity.Quantity;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;

/** An amount is stored as it was written, so that 2 m comes back as 2 m and not as 2000 mm; never with more digits than can be measured. */
@Converter(autoApply = true)
public final class QuantityText implements AttributeConverter<Quantity, String> {

    @Override
    public String convertToDatabaseColumn(Quantity quantity) {
        return quantity == null ? null : quantity.measurable().toString();
    }

    @Override
    public Quantity convertToEntityAttribute(String written) {
        return written == null ? null : Quantity.parse(written);
    }
}
