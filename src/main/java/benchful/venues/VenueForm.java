package benchful.venues;

import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;

/**
 * What the form of a venue shows.
 *
 * @param id of the stored venue; null for a new one
 * @param hazards of the library, by short name
 */
@TemplateData
public record VenueForm(SpecForm form, Long id, Map<String, String> hazards) {

    public boolean isNew() {
        return id == null;
    }

    public String action() {
        return isNew() ? "/venues" : "/venues/" + id;
    }

    public List<String> ventilations() {
        return List.of("none", "windows", "extractor");
    }

    public List<ToolRows.Row> tools() {
        return ToolRows.of(form);
    }
}
