package benchful.projects;

import benchful.core.Fault;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Works out one piece of a project in one of its sizes. What plans are computed from answers it, so that pages show the same. */
public interface PieceWorking {
    Piece work(ProjectSpec project, Size size);

    /**
     * @param values measures and answers of workings, by name
     * @param amounts what the piece takes, by the place of its material line from 0; a line that failed is left out
     * @param repeats how often each step with repeats is done, by step id
     * @param faults what could not be worked out; pointers are into the project's sheet
     */
    record Piece(Map<String, Quantity> values, Map<Integer, Amount> amounts, Map<String, BigDecimal> repeats, List<Fault> faults) {
        public Piece {
            values = Map.copyOf(values);
            amounts = Map.copyOf(amounts);
            repeats = Map.copyOf(repeats);
            faults = List.copyOf(faults);
        }
    }

    /**
     * @param pieces into how many of {@code each} it is cut; null where it is not cut
     * @param rectangle of each piece; null where it is not cut from sheet
     */
    record Amount(Quantity each, Integer pieces, Extent rectangle) {}
}
