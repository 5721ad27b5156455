package benchful.venues;

import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What the form of a venue shows.
 *
 * @param id of the stored venue; null for a new one
 */
@TemplateData
public record VenueForm(SpecForm form, Long id) {

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
