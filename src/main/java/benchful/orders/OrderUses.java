package benchful.orders;

import benchful.catalogue.Material;
import benchful.catalogue.Supplier;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A supplier, and a material, stays as long as an order of it is open. */
@ApplicationScoped
class OrderUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        return kind == Supplier.class ? open("o.seller.id = ?1", id)
                : kind == Material.class ? open("exists (select 1 from OrderLine l where l.order = o and l.stocked.id = ?1)", id) : List.of();
    }

    private static List<Use> open(String which, Object id) {
        return PurchaseOrder.<PurchaseOrder>list("from PurchaseOrder o where o.status in (DRAFT, SENT, PART_RECEIVED) and " + which + " order by o.id desc", id).stream().map(o -> new Use("the order %d to %s".formatted(o.id(), o.supplier), "/orders/" + o.id())).toList();
    }
}
