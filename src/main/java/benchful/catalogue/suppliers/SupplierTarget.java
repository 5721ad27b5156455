package benchful.catalogue.suppliers;

import benchful.catalogue.CatalogueRules;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierSpec;
import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;

/** A supplier that takes a sheet from its form. */
record SupplierTarget(Supplier supplier, CatalogueRules rules) implements SpecPost.Target<SupplierSpec> {

    @Override
    public long version() {
        return supplier == null ? 0 : supplier.version();
    }

    @Override
    public SupplierSpec stored() {
        return supplier.toSpec();
    }

    @Override
    public List<Fault> faults(SupplierSpec sheet) {
        return rules.faults(sheet, supplier);
    }

    @Override
    public String save(SupplierSpec sheet) {
        if (supplier == null) {
            Supplier.stored(sheet, false);
        } else {
            supplier.replace(sheet);
        }
        Supplier.flush();
        return "/suppliers";
    }
}
