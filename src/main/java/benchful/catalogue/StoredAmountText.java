package benchful.catalogue;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;

/** Amounts stand as texts in the database. */
@Converter(autoApply = true)
public final class StoredAmountText implements AttributeConverter<StoredAmount, String> {

    @Override
    public String convertToDatabaseColumn(StoredAmount amount) {
        return amount == null ? null : amount.text();
    }

    @Override
    public StoredAmount convertToEntityAttribute(String written) {
        return written == null ? null : new StoredAmount(written);
    }
}
