package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.catalogue.SupplierSheet;
import benchful.classes.ClassSetup;
import benchful.projects.ProjectSheet;
import benchful.venues.VenueSheet;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * Everything a plan is computed from, in one file: what {@code POST /api/plan} takes and what a class page gathers from the
 * database before it plans. Its JSON Schema is {@code /schema/class-1.json}.
 *
 * @param setup written {@code class} in files
 */
public record ClassFile(
        ProjectSheet project, @JsonProperty("class") ClassSetup setup, VenueSheet venue, List<MaterialSheet> materials, List<SupplierSheet> suppliers) {

    public ClassFile {
        materials = materials == null ? List.of() : List.copyOf(materials);
        suppliers = suppliers == null ? List.of() : List.copyOf(suppliers);
    }
}
