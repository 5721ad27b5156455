package benchful.catalogue;

import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A supplier is used by the materials that it has an offer for. */
@ApplicationScoped
class OfferUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        return kind == Supplier.class ? materials((Long) id) : List.of();
    }

    private static List<Use> materials(long supplier) {
        return SupplierOffer.<SupplierOffer>list("supplier.id = ?1", supplier).stream()
                .map(SupplierOffer::material)
                .distinct()
                .map(m -> new Use("the material " + m.name(), "/materials/" + m.id()))
                .toList();
    }
}
