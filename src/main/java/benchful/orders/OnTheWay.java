package benchful.orders;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.stored.Incoming;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stands on open orders and has not come: drafts count too, so that nothing is written down twice. A line that can't be read counts as nothing. */
@ApplicationScoped
class OnTheWay implements Incoming {
    /** In one query, however many orders are open. */
    private static final String OUTSTANDING = """
            select l, m.id, m.unit from OrderLine l join fetch l.order o join l.stocked m
            where m.id in :materials and o.status in (DRAFT, SENT, PART_RECEIVED) and l.received < l.packs
            and (o.classIds is empty or exists (select 1 from o.classIds c where c in :classes))""";

    @Override
    @Transactional
    public Map<Long, Quantity> towards(Collection<Long> classIds, Collection<Long> materials) {
        Map<Long, Quantity> coming = new HashMap<>();
        for (OutstandingLine l : lines(classIds, materials)) {
            l.amount().ifPresent(amount -> coming.merge(l.material(), amount, Quantity::plus));
        }
        return coming;
    }

    /** @param unit in which the material is counted now */
    private record OutstandingLine(OrderLine line, Long material, Unit unit) {
        /** Nothing where it can't be read, or the material has been counted in another kind of unit since it was ordered. */
        Optional<Quantity> amount() {
            return line.readable().filter(holds -> unit.dimension().equals(holds.dimension())).map(holds -> holds.times(line.outstanding()));
        }
    }

    private static List<OutstandingLine> lines(Collection<Long> classIds, Collection<Long> materials) {
        return OrderLine.getEntityManager().createQuery(OUTSTANDING, Object[].class).setParameter("classes", classIds).setParameter("materials", materials).getResultStream()
                .map(row -> new OutstandingLine((OrderLine) row[0], (Long) row[1], (Unit) row[2])).toList();
    }
}
