package benchful.catalogue.suppliers;

import benchful.catalogue.CatalogueRules;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierSheet;
import benchful.core.Fault;
import benchful.web.forms.SheetPost;
import java.util.List;

/** A supplier that takes a sheet from its form. */
record SupplierTarget(Supplier supplier, CatalogueRules rules) implements SheetPost.Target<SupplierSheet> {

    @Override
    public long version() {
        return supplier == null ? 0 : supplier.version();
    }

    @Override
    public SupplierSheet stored() {
        return supplier.toSheet();
    }

    @Override
    public List<Fault> faults(SupplierSheet sheet) {
        return rules.faults(sheet, supplier);
    }

    @Override
    public String save(SupplierSheet sheet) {
        if (supplier == null) {
            Supplier.stored(sheet, false);
        } else {
            supplier.replace(sheet);
        }
        Supplier.flush();
        return "/suppliers";
    }
}
