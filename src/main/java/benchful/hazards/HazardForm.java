package benchful.hazards;

import benchful.web.forms.Lines;
import benchful.web.forms.SheetForm;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What the form of a hazard shows.
 *
 * @param id of the entry; null for a new one
 */
@TemplateData
public record HazardForm(SheetForm form, String id) {
    private static final Lines CAUTIONS = Lines.plain("/cautions");
    private static final Lines GHS = Lines.coded("/ghs", "text");
    private static final Lines PICTOGRAMS = Lines.coded("/pictograms", "name");
    private static final Lines SIGNS = Lines.coded("/signs", "name");
    private static final Lines GEAR = Lines.plain("/protective_gear");
    private static final Lines FIRST_RESPONSE = Lines.plain("/first_response");
    private static final Lines SOURCES = Lines.plain("/sources");
    static final List<Lines> LISTS = List.of(CAUTIONS, GHS, PICTOGRAMS, SIGNS, GEAR, FIRST_RESPONSE, SOURCES);

    public boolean isNew() {
        return id == null;
    }

    public String action() {
        return isNew() ? "/hazards" : "/hazards/" + id;
    }

    public List<String> ventilations() {
        return List.of("none", "windows", "extractor");
    }

    public Lines cautions() {
        return CAUTIONS;
    }

    public Lines ghs() {
        return GHS;
    }

    public Lines pictograms() {
        return PICTOGRAMS;
    }

    public Lines signs() {
        return SIGNS;
    }

    public Lines gear() {
        return GEAR;
    }

    public Lines firstResponse() {
        return FIRST_RESPONSE;
    }

    public Lines sources() {
        return SOURCES;
    }
}
