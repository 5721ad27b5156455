package benchful.catalogue;

import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;

/**
 * What the form of a material shows.
 *
 * @param id of the stored material; null for a new one
 * @param hazards by short name, the name people read
 */
@TemplateData
public record MaterialForm(SpecForm form, Long id, List<String> suppliers, Map<String, String> hazards) {

    public boolean isNew() {
        return id == null;
    }

    public String action() {
        return isNew() ? "/materials" : "/materials/" + id;
    }

    /** Where leaving the form leads. */
    public String back() {
        return action();
    }

    public List<String> units() {
        return CatalogueRules.units();
    }
}
