package benchful.orders;

import benchful.catalogue.Supplier;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A supplier stays as long as something is still to come from it. */
@ApplicationScoped
class OrderUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        if (kind != Supplier.class) {
            return List.of();
        }
        return PurchaseOrder.open().stream().filter(o -> o.seller != null && id.equals(o.seller.id()))
                .map(o -> new Use("the order %d to %s".formatted(o.id, o.supplier), "/orders/" + o.id)).toList();
    }
}
