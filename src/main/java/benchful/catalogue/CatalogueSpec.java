package benchful.catalogue;

import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Spec;
import java.util.List;

/** Materials with those who sell them: a catalogue file ({@code /schema/catalogue-1.json}), or the part of it a plan needs. */
@Spec(name = "catalogue-1", title = "Materials and those who sell them", file = "a catalogue file")
public record CatalogueSpec(@Length(most = 2000) List<MaterialSpec> materials, @Length(most = 100) List<SupplierSpec> suppliers) {
    public CatalogueSpec {
        materials = materials == null ? List.of() : List.copyOf(materials);
        suppliers = suppliers == null ? List.of() : List.copyOf(suppliers);
    }
}
