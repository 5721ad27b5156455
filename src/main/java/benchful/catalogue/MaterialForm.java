package benchful.catalogue;

import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the form of a material shows.
 *
 * @param id of the stored material; null for a new one
 * @param hazards by short name, the name people read
 */
@TemplateData
public record MaterialForm(SpecForm form, Long id, List<String> suppliers, Map<String, String> hazards) {
    private static final List<String> WAYS = List.of("sheets 70 x 50 cm", "m x 140 cm", "cards of 2 m", "spools of 100 m", "reels of 25 m", "tubes of 9 ml", "tins of 250 ml", "packs of 10",
            "pairs", "dozen", "reams");

    /** Materials that it may be a variant of. */
    public List<String> others() {
        return Material.names();
    }

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

    /** Ways to count, to choose from; others may be typed. */
    public List<String> units() {
        return Stream.concat(CatalogueRules.units().stream(), WAYS.stream()).toList();
    }
}
