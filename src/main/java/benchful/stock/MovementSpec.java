package benchful.stock;

import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.OneOf;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import java.util.List;
import java.util.Optional;

/**
 * A movement of stock as the tutor writes it down.
 *
 * @param amount what came or went; for a count, what was found
 */
@Spec(name = "movement-1", title = "A movement of stock, as it is written down")
public record MovementSpec(
        @Required @OneOf({"received", "counted", "spoilt", "used", "packed", "returned"})
                @Mend("Choose what happened: received, counted, spoilt, used, packed or returned.") MovementKind kind,
        @Required Quantity amount,
        @ShortText String note) {

    /** What does not fit a material counted in this unit. */
    List<Fault> faults(Unit unit) {
        Optional<String> unlike = unlike(amount, unit);
        if (unlike.isPresent()) {
            return fault(unlike.get());
        }
        return amount.signum() == 0 && kind != MovementKind.COUNTED ? fault("Give an amount above 0.") : List.of();
    }

    /** Why an amount can't be one of what is counted in this unit; empty where it can. */
    public static Optional<String> unlike(Quantity amount, Unit unit) {
        return amount.sized(unit).dimension().equals(unit.dimension()) ? Optional.empty()
                : Optional.of("“%s” is %s, but this is counted in %s. Give such an amount.".formatted(amount, amount.dimension().words(), Formats.words(unit)));
    }

    private static List<Fault> fault(String detail) {
        return List.of(new Fault("/amount", detail));
    }
}
