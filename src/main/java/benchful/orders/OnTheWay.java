package benchful.orders;

import benchful.catalogue.Material;
import benchful.core.quantity.Quantity;
import benchful.plans.Incoming;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What stands on open orders and has not come: drafts count too, so that nothing is written down twice. A line that can't be read counts as nothing. */
@ApplicationScoped
class OnTheWay implements Incoming {

    @Override
    @Transactional
    public Map<Long, Quantity> towards(Collection<Long> classIds) {
        List<PurchaseOrder> orders = PurchaseOrder.open();
        Map<Long, Quantity> coming = new HashMap<>();
        orders.stream().filter(o -> o.classIds.isEmpty() || o.classIds.stream().anyMatch(classIds::contains))
                .flatMap(o -> o.lines.stream())
                .filter(OrderLine::readable).filter(l -> l.outstanding() > 0 && l.stocked != null && measured(l.stocked, l.holds()))
                .forEach(l -> coming.merge(l.stocked.id(), l.holds().times(l.outstanding()), Quantity::plus));
        return coming;
    }

    /** False where the material has been counted in another kind of unit since it was ordered. */
    private static boolean measured(Material material, Quantity holds) {
        return material.unit().dimension().equals(holds.dimension());
    }
}
