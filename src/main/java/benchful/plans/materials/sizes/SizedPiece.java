package benchful.plans.materials.sizes;

import benchful.core.Fault;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.sizing.Strand;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One piece of a project in one size, worked out.
 *
 * @param values measures and answers of workings by name
 * @param reasons how each working came out, by its name
 * @param strands the beads of each strand or bracelet in their places, by the working's name
 * @param lines the material lines that could be worked out, in the sheet's order
 * @param repeats how often each step with repeats is done, by step id
 * @param faults what could not be worked out; pointers are into the project's sheet
 */
public record SizedPiece(
        String size,
        Map<String, Quantity> values,
        Map<String, List<Sentence>> reasons,
        Map<String, Strand> strands,
        List<Line> lines,
        Map<String, BigDecimal> repeats,
        List<Fault> faults) {

    public SizedPiece {
        values = copy(values);
        reasons = copy(reasons);
        strands = copy(strands);
        lines = List.copyOf(lines);
        repeats = copy(repeats);
        faults = List.copyOf(faults);
    }

    /**
     * What the piece takes on one material line.
     *
     * @param line its place in the sheet, from 0
     * @param each the amount, of one cut piece where it is cut
     * @param pieces how many cut pieces; null where it is not cut
     * @param rectangle of one cut piece; null where it is not cut from sheet
     */
    public record Line(int line, String material, Quantity each, Integer pieces, Extent rectangle) {
        public Line(int line, String material, Quantity each, Integer pieces) {
            this(line, material, each, pieces, null);
        }

        public Quantity amount() {
            return pieces == null ? each : each.times(pieces);
        }
    }

    private static <T> Map<String, T> copy(Map<String, T> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
