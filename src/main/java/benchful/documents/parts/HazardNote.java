package benchful.documents.parts;

import benchful.hazards.HazardSpec;
import java.util.List;

/**
 * What print-outs say about a hazard.
 *
 * @param name "Solvent vapour and solvent-based glue"
 * @param harm what can happen, a sentence
 * @param cautions sentences, the weightiest first
 * @param firstResponse what to do if it happens
 * @param gear protective gear
 * @param ventilation "none", "windows" or "extractor"
 * @param signs of ISO 7010, then pictograms of the GHS
 * @param disposal where leftovers go; may be empty
 */
public record HazardNote(String id, String name, String harm, List<String> cautions, List<String> firstResponse, List<String> gear,
        String ventilation, List<HazardSpec.Sign> signs, String disposal) {
    public HazardNote {
        cautions = List.copyOf(cautions);
        firstResponse = List.copyOf(firstResponse);
        gear = List.copyOf(gear);
        signs = List.copyOf(signs);
    }
}
