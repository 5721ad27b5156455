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
    public CatalogueSpec sheets() {
        return sheets(Material.all());
    }

    /** What each material says of itself: a variant leaves out what is as with its material. */
    @Transactional
    public List<MaterialSpec> own() {
        return Material.all().stream().map(MaterialsPages::formSheet).toList();
    }

    /** The materials with these names and all suppliers; names that are not in the catalogue are left out. */
    @Transactional
    public CatalogueSpec sheets(Collection<String> names) {
        return sheets(Material.named(names));
    }

    private static CatalogueSpec sheets(List<Material> materials) {
        List<SupplierSpec> suppliers = Supplier.all().stream().map(Supplier::toSpec).toList();
        return new CatalogueSpec(materials.stream().map(Material::toSpec).toList(), suppliers);
    }
}
