package benchful.projects.writing;

import benchful.catalogue.HazardNames;
import benchful.core.Fault;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.SpecReader;
import benchful.web.forms.SpecReader.Faulty;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;

/** Works out what a form would print, without storing anything. */
@ApplicationScoped
class Previews {
    private final HazardNames hazards;
    private final Sights sights;

    Previews(HazardNames hazards, Sights sights) {
        this.hazards = hazards;
        this.sights = sights;
    }

    /** @param id of the stored project; null for a new one */
    Preview of(ProjectFormFiller forms, Long id) {
        ObjectNode whole = FormPictures.whole(forms.tree(), id, forms.stored(), new FaultCollector());
        SpecReader<ProjectSpec> reader = ProjectFiles.reader(hazards);
        Printable printable = Printable.asFarAsItGoes(whole, reader);
        List<Fault> missing = reader.tree(FormPictures.bare(forms.tree())) instanceof Faulty<ProjectSpec> faulty ? faulty.faults() : List.of();
        Preview.Sight sight = printable.sheet() == null ? null : sights.of(withStored(printable.sheet(), id, forms.stored()), forms.previewed());
        return new Preview(sight, missing, printable.leftOut());
    }

    private static ProjectSpec withStored(ProjectSpec sheet, Long id, Map<String, String> stored) {
        Map<String, byte[]> contents = id == null ? Map.of() : QuarkusTransaction.joiningExisting().call(() -> ProjectPicture.contents(id));
        return sheet.withPictures(sheet.pictures().stream()
                .map(p -> p.hasContent() ? p : p.withContent(contents.getOrDefault(stored.getOrDefault(p.name(), p.name()), new byte[0]))).toList());
    }
}
