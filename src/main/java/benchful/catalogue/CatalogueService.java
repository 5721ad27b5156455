package benchful.catalogue;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;

/** The catalogue as a plan reads it: whole sheets, in a few queries however many materials there are. */
@ApplicationScoped
public class CatalogueService {

    /** Every material and supplier. */
    @Transactional
    public CatalogueSheet sheets() {
        return sheets(Material.all());
    }

    /** The materials with these names and all suppliers; names that are not in the catalogue are left out. */
    @Transactional
    public CatalogueSheet sheets(Collection<String> names) {
        return sheets(Material.named(names));
    }

    private static CatalogueSheet sheets(List<Material> materials) {
        List<SupplierSheet> suppliers = Supplier.all().stream().map(Supplier::toSheet).toList();
        return new CatalogueSheet(materials.stream().map(Material::toSheet).toList(), suppliers);
    }
}
