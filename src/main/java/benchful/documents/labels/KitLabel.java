package benchful.documents.labels;

import java.util.List;

/**
 * What a kit's label says, before it is fitted.
 *
 * @param name the student's, "Student 5" or "Spare 1"
 * @param place seat and size: "Seat 3 · 42 cm"
 * @param piece the project's name
 * @param contents "39 amazonite round 6 mm", in the order of packing, to be ticked one by one
 * @param from the studio's name, of kits for sale with its batch and addresses; empty where not known
 * @param cautions names of the hazards that the contents call for
 */
public record KitLabel(String name, String place, String piece, List<String> contents, String from, List<String> cautions) {
    public KitLabel {
        contents = List.copyOf(contents);
        cautions = List.copyOf(cautions);
    }
}
