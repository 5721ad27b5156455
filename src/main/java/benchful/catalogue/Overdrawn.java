package benchful.catalogue;

import benchful.core.quantity.Quantity;
import io.quarkus.qute.TemplateData;
import java.util.List;

/** A material whose stock is below nothing: more was taken than the shelf is said to hold, so it must be counted. */
@TemplateData
public record Overdrawn(long id, String name, Quantity onHand) {
    public static List<Overdrawn> among(List<String> materials) {
        return Material.named(materials).stream().filter(m -> m.onHand().signum() < 0).map(m -> new Overdrawn(m.id(), m.name(), m.onHand())).toList();
    }
}
