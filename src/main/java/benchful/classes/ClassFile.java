package benchful.classes;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.SupplierSpec;
import benchful.projects.ProjectSpec;
import benchful.venues.VenueSpec;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Everything a plan is computed from, and photographs of what came of it, in one file: what {@code POST /api/plan} takes and what a class page gathers from the
 * database before it plans. Its JSON Schema is {@code /schema/class-1.json}.
 *
 * @param photos of the pieces that the class finished; nothing is planned from them, so that only a file that is exported or brought in carries them
 * @param setup written {@code class} in files
 */
@Spec(name = "class-1", title = "A class with everything its plan is computed from", file = "a class file")
public record ClassFile(
        @Required ProjectSpec project,
        @Required @JsonProperty("class") ClassSetup setup,
        VenueSpec venue,
        @Length(most = 500) List<MaterialSpec> materials,
        @Length(most = 100) List<SupplierSpec> suppliers,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = MOST_PHOTOS) @Mend("A class has at most 12 photographs. Leave some out.") List<PhotoSpec> photos) {
    public static final int MOST_PHOTOS = 12;

    public ClassFile {
        materials = materials == null ? List.of() : Variants.whole(materials, project, setup);
        suppliers = suppliers == null ? List.of() : List.copyOf(suppliers);
        photos = photos == null ? List.of() : List.copyOf(photos);
    }

    /** What a plan is computed from, without photographs. */
    public ClassFile(ProjectSpec project, ClassSetup setup, VenueSpec venue, List<MaterialSpec> materials, List<SupplierSpec> suppliers) {
        this(project, setup, venue, materials, suppliers, null);
    }

    public ClassFile withPhotos(List<PhotoSpec> taken) {
        return new ClassFile(project, setup, venue, materials, suppliers, taken);
    }

    public CatalogueSpec catalogue() {
        return new CatalogueSpec(materials, suppliers);
    }

    /** The tools of which it is written down how many there are, by the venue and the class, or else by the project. */
    public Map<String, Integer> tools() {
        Map<String, Integer> room = new TreeMap<>();
        if (venue != null) {
            venue.tools().forEach((tool, n) -> room.merge(tool, n, Integer::sum));
        }
        setup.tools().forEach((tool, n) -> room.merge(tool, n, Integer::sum));
        project.tools().stream().filter(t -> t.owned() != null).forEach(t -> room.putIfAbsent(t.name(), t.owned()));
        return room;
    }

    /** The tools of which neither the venue nor the class says how many there are, but the project does. */
    public Map<String, Integer> onlyOwned() {
        Map<String, Integer> owned = new TreeMap<>();
        project.tools().stream().filter(t -> t.owned() != null && !setup.tools().containsKey(t.name()) && (venue == null || !venue.tools().containsKey(t.name())))
                .forEach(t -> owned.putIfAbsent(t.name(), t.owned()));
        return owned;
    }

    /** How many of a tool can be in use at once; of one that no step names, one for each student. */
    public int atOnce(String tool) {
        int students = setup.headcount();
        return project.steps().stream().flatMap(s -> s.tools().stream().filter(t -> t.tool().equals(tool)).map(t -> t.planned().of(s.kind().isOwnWork() ? students : 1)))
                .max(Integer::compare).orElse(students);
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
