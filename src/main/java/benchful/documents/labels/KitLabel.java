package benchful.documents.labels;

import java.util.List;

/**
 * What a kit's label says, before it is fitted.
 *
 * @param name the student's, "Student 5" or "Spare 1"
 * @param piece the project's name and the size
 * @param contents "39 amazonite round 6 mm", in the order of packing
 * @param from the studio's name; empty where not known
 * @param cautions names of the hazards that the contents call for
 */
public record KitLabel(String name, String piece, List<String> contents, String from, List<String> cautions) {
    public KitLabel {
        contents = List.copyOf(contents);
        cautions = List.copyOf(cautions);
    }
}
