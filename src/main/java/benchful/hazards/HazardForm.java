package benchful.hazards;

import benchful.web.forms.SpecForm;
import benchful.web.forms.TextList;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What the form of a hazard shows.
 *
 * @param id of the entry; null for a new one
 */
@TemplateData
public record HazardForm(SpecForm form, String id) {
    private static final TextList CAUTIONS = TextList.plain("/cautions");
    private static final TextList GHS = TextList.coded("/ghs", "text");
    private static final TextList PRECAUTIONS = TextList.coded("/precautions", "text");
    private static final TextList PICTOGRAMS = TextList.coded("/pictograms", "name");
    private static final TextList SIGNS = TextList.coded("/signs", "name");
    private static final TextList GEAR = TextList.plain("/protective_gear");
    private static final TextList FIRST_RESPONSE = TextList.plain("/first_response");
    private static final TextList SOURCES = TextList.plain("/sources");
    static final List<TextList> LISTS = List.of(CAUTIONS, GHS, PRECAUTIONS, PICTOGRAMS, SIGNS, GEAR, FIRST_RESPONSE, SOURCES);

    public boolean isNew() {
        return id == null;
    }

    public String action() {
        return isNew() ? "/hazards" : "/hazards/" + id;
    }

    public List<String> ventilations() {
        return List.of("none", "windows", "extractor");
    }

    public TextList cautions() {
        return CAUTIONS;
    }

    public TextList ghs() {
        return GHS;
    }

    public TextList precautions() {
        return PRECAUTIONS;
    }

    public List<String> signals() {
        return List.of("danger", "warning");
    }

    public TextList pictograms() {
        return PICTOGRAMS;
    }

    public TextList signs() {
        return SIGNS;
    }

    public TextList gear() {
        return GEAR;
    }

    public TextList firstResponse() {
        return FIRST_RESPONSE;
    }

    public TextList sources() {
        return SOURCES;
    }
}
