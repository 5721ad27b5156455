package benchful.web.forms;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What stands in a field by its type alone, for types that know nothing of forms. */
final class UsualFields {
    private static final Map<Class<?>, RecordComponent> OF_TYPE = Arrays.stream(Texts.class.getRecordComponents())
            .collect(Collectors.toMap(RecordComponent::getType, Function.identity()));

    private static final Map<Class<?>, String> KINDS = Map.of(String.class, "string", int.class, "integer", Integer.class, "integer",
            BigDecimal.class, "number", boolean.class, "boolean", Boolean.class, "boolean");

    private UsualFields() {}

    /** Never made; each component's name is the one its rule has in a schema. */
    private record Texts(
            @Length(least = 1, most = 80) @Matching("^\\s*\\d") @Mend("Give an amount with its unit, such as 42 cm or 12 pcs.") Quantity amount,
            @Length(least = 1, most = 40) @Matching("^\\s*\\d") @Mend("Give a time, such as 20 min, 1 h 30 min or 24 h.") Duration time,
            @Matching("^([01]\\d|2[0-3]):[0-5]\\d(:00)?$") @Mend("Give a time of day from 00:00 to 23:59.") LocalTime clock,
            @Matching("^\\d{4}-\\d{2}-\\d{2}$") @Mend("Give the date as year-month-day, such as 2027-03-06.") LocalDate date,
            @Mend("Choose a unit, such as cm, pcs, g or ml.") Unit unit) {}

    @Mend("Give a length and a width, such as 300 mm and 100 mm.")
    private record Rectangle(
            @Required @Mend("Give the length, such as 300 mm.") Quantity length, @Required @Mend("Give the width, such as 100 mm.") Quantity width) {}

    static Optional<RecordComponent> text(Class<?> type) {
        return Optional.ofNullable(OF_TYPE.get(type));
    }

    /** What its type alone allows in a field that is no list, map or record. */
    static ObjectNode plain(Class<?> type) {
        ObjectNode rule = SpecFormat.json().createObjectNode();
        if (type.isEnum()) {
            return rule.set("enum", SpecFormat.json().valueToTree(type.getEnumConstants()));
        }
        if (type == byte[].class) {
            return rule.put("type", "string").put("contentEncoding", "base64");
        }
        return rule.put("type", OF_TYPE.containsKey(type) ? "string" : Objects.requireNonNull(KINDS.get(type), () -> "a kind for " + type));
    }

    /** The record that says what the components of a record hold. */
    static Class<?> saying(Class<?> type) {
        return type == Extent.class ? Rectangle.class : type;
    }
}
