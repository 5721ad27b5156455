package benchful.hazards;

import benchful.venues.VenueSpec;
import java.util.List;

/**
 * A hazard in plain words.
 *
 * @param id short name, by which materials, tools and steps carry it: {@code solvent-vapour}
 * @param harm what can happen, a sentence
 * @param cautions sentences, the weightiest first
 * @param ghs statements usual for the material (UN GHS); the label on the bottle decides
 * @param pictograms of the GHS
 * @param signs of ISO 7010
 * @param ventilation what the room's air needs; null where nothing is said
 * @param firstResponse what to do first if it happens
 * @param minimumAge youngest age in years at which a closely supervised student usually does this; null for none
 * @param severity starting value for a risk assessment, 1 to 5; null where not judged
 * @param likelihood the same
 * @param sources where each part comes from, or that there is no source
 */
public record HazardSpec(
        String id,
        String name,
        String harm,
        List<String> cautions,
        List<Statement> ghs,
        List<Sign> pictograms,
        List<Sign> signs,
        List<String> protectiveGear,
        VenueSpec.Ventilation ventilation,
        List<String> firstResponse,
        Integer minimumAge,
        String storage,
        String disposal,
        Integer severity,
        Integer likelihood,
        List<String> sources) {

    public HazardSpec {
        cautions = copy(cautions);
        ghs = copy(ghs);
        pictograms = copy(pictograms);
        signs = copy(signs);
        protectiveGear = copy(protectiveGear);
        firstResponse = copy(firstResponse);
        sources = copy(sources);
    }

    /** A hazard statement: H317, May cause an allergic skin reaction. */
    public record Statement(String code, String text) {}

    /** A sign or pictogram: W021, Flammable material. */
    public record Sign(String code, String name) {}

    private static <T> List<T> copy(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
