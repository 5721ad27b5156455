package benchful.documents.paper;

import benchful.studio.Paper;
import benchful.studio.StudioSpec;

/**
 * How a print-out is wanted.
 *
 * @param customary whether amounts are written in US customary units first
 * @param eachStudent handouts: one for each student, with name, own size and own texts; else one for each size
 * @param labels where labels are stuck
 * @param address the address under which phones reach the class's handouts, no slash at the end; null for no codes
 */
public record PrintOptions(Paper paper, boolean customary, Version version, boolean eachStudent, LabelSetting labels, String address) {

    /** On the studio's own paper: no labels, no codes, one handout for each size. */
    public static PrintOptions usual(StudioSpec studio, Version version) {
        return new PrintOptions(studio.printsOn(), studio.customary(studio.printsOn()), version, false, null, null);
    }

    /** In the units that are usual with the paper. */
    public PrintOptions(Paper paper, Version version, boolean eachStudent, LabelSetting labels, String address) {
        this(paper, paper == Paper.LETTER, version, eachStudent, labels, address);
    }
}
