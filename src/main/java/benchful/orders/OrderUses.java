package benchful.orders;

import benchful.catalogue.Material;
import benchful.catalogue.Supplier;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.function.Predicate;

/** A supplier, and a material, stays as long as an order of it is open. */
@ApplicationScoped
class OrderUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        return kind == Supplier.class ? open(o -> o.seller != null && id.equals(o.seller.id()))
                : kind == Material.class ? open(o -> o.lines.stream().anyMatch(l -> l.stocked != null && id.equals(l.stocked.id()))) : List.of();
    }

    private static List<Use> open(Predicate<PurchaseOrder> which) {
        return PurchaseOrder.open().stream().filter(which).map(o -> new Use("the order %d to %s".formatted(o.id, o.supplier), "/orders/" + o.id)).toList();
    }
}
