package benchful.classes;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.SupplierSpec;
import benchful.projects.ProjectSpec;
import benchful.venues.VenueSpec;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Everything a plan is computed from, in one file: what {@code POST /api/plan} takes and what a class page gathers from the
 * database before it plans. Its JSON Schema is {@code /schema/class-1.json}.
 *
 * @param setup written {@code class} in files
 */
@Spec(name = "class-1", title = "A class with everything its plan is computed from", file = "a class file")
public record ClassFile(
        @Required ProjectSpec project,
        @Required @JsonProperty("class") ClassSetup setup,
        VenueSpec venue,
        @Length(most = 500) List<MaterialSpec> materials,
        @Length(most = 100) List<SupplierSpec> suppliers) {

    public ClassFile {
        materials = materials == null ? List.of() : Variants.whole(materials, project, setup);
        suppliers = suppliers == null ? List.of() : List.copyOf(suppliers);
    }

    public CatalogueSpec catalogue() {
        return new CatalogueSpec(materials, suppliers);
    }

    /** The last day on which something can arrive: the one before the first meeting; null where there is no meeting. */
    public LocalDate arriveBy() {
        return setup.meetings().stream().map(m -> m.date().minusDays(1)).min(Comparator.naturalOrder()).orElse(null);
    }

    /** The same project, room and catalogue with another setup. */
    public ClassFile with(ClassSetup other) {
        return new ClassFile(project, other, venue, materials, suppliers);
    }

    /** The same class with its project's sheet changed. */
    public ClassFile with(ProjectSpec changed) {
        return new ClassFile(changed, setup, venue, materials, suppliers);
    }

    /** The same class in another room; null where it is not known. */
    public ClassFile in(VenueSpec room) {
        return new ClassFile(project, setup, room, materials, suppliers);
    }

    /** Without whom to call in an emergency: nothing that is planned needs to know. */
    public ClassFile withoutContacts() {
        return with(setup.withoutContacts());
    }

    /** Whether the other file plans the same project in the same way and room, whatever stock and prices are. */
    public boolean sameClass(ClassFile other) {
        return project.equals(other.project) && setup.equals(other.setup) && Objects.equals(venue, other.venue);
    }
}
