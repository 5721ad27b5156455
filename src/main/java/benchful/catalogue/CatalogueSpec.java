package benchful.catalogue;

import java.util.List;

/** Materials with those who sell them: a catalogue file ({@code /schema/catalogue-1.json}), or the part of it a plan needs. */
public record CatalogueSpec(List<MaterialSpec> materials, List<SupplierSpec> suppliers) {
    public CatalogueSpec {
        materials = materials == null ? List.of() : List.copyOf(materials);
        suppliers = suppliers == null ? List.of() : List.copyOf(suppliers);
    }
}
