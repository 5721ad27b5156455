package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the bracelet whose inside comes nearest to wrist and ease.
 *
 * <p>Beads closed to a ring lie on a circle through their centres; the wrist lies within, one bead's radius nearer the
 * middle all round, so inside = length along the centres - pi x diameter of the largest bead. Source: geometry; the
 * trade's "add three beads" is the same rule with pi taken as 3.
 */
public final class BraceletSizer {
    private BraceletSizer() {}

    public static Bracelet size(BraceletRequest request) {
        Quantity curve = curve(request.pattern());
        Quantity wanted = request.wrist().plus(request.ease());
        Strand strand = StrandSizer.size(new StrandRequest(wanted.plus(curve), request.closure(), request.pattern(),
                request.arrangement(), request.knots(), request.maximum(), true, request.tolerance()));
        Quantity inside = strand.length().minus(curve);
        return new Bracelet(strand, inside, inside.minus(wanted), reasons(request, strand, curve, inside));
    }

    private static Quantity curve(List<BeadRun> pattern) {
        Quantity largest = pattern.stream().map(BeadRun::size).max(Comparator.naturalOrder()).orElseThrow();
        return Quantity.ofBase(largest.base().multiply(Quantity.PI), Unit.MM);
    }

    private static List<Sentence> reasons(BraceletRequest request, Strand strand, Quantity curve, Quantity inside) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(Sentence.of("Inside it measures %s, for a wrist of %s and %s of ease.", inside, request.wrist(), request.ease()));
        reasons.add(Sentence.of("The inside is %s shorter than the line through the beads: pi x the largest bead.", curve));
        reasons.addAll(strand.reasons());
        return reasons;
    }
}
