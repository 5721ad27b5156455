package benchful.catalogue;

import benchful.core.quantity.Unit;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;

/** A unit is stored by its symbol, as it is written in sheets. */
@Converter(autoApply = true)
public final class UnitText implements AttributeConverter<Unit, String> {

    @Override
    public String convertToDatabaseColumn(Unit unit) {
        return unit == null ? null : unit.symbol();
    }

    @Override
    public Unit convertToEntityAttribute(String symbol) {
        return symbol == null ? null : Unit.parse(symbol).orElseThrow();
    }
}
