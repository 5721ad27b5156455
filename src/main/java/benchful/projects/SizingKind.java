package benchful.projects;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Unit;
import java.util.List;
import java.util.Set;

/**
 * The ways a piece is worked out beyond plain formulas: the values each takes and the answers it gives. Values in
 * {@link #required()} must be there; the others may be left out. Answers in brackets are given only where their values are.
 */
public enum SizingKind {
    /**
     * An open strand of beads. Values: {@code target} the finished length asked for; {@code closure} what the closure adds to
     * it, covers and wire guard included (0 mm); {@code knots} 1 for a knot between all beads (0); {@code ends} how many knots
     * sit under the closure's covers, 0 to 2 (0); {@code cord} its diameter; {@code knot} the length one knot adds
     * (2 x cord); {@code take} the cord one knot takes up (10.1 x cord); {@code symmetric} 1 to mirror the pattern about the
     * centre (0); {@code graduated} 1 where the pattern runs from the end to the centre bead, is mirrored, and its first run
     * fills up the ends (0); {@code maximum} most beads there are; {@code tolerance} how far from the length a mirrored strand may be
     * for a whole middle (20 mm), or a closed row for whole repeats (6 mm).
     * Answers: {@code beads}, {@code knots}, {@code length}, {@code difference} (longer than asked is positive),
     * {@code thread} (cord within the piece, single, without tails), and the count of each bead by its name.
     */
    STRAND(
            List.of("target"),
            List.of("closure", "knots", "ends", "cord", "knot", "take", "symmetric", "graduated", "maximum", "tolerance"),
            List.of("beads", "knots", "length", "difference", "thread")),
    /**
     * A closed row of beads about a wrist or a finger. Values: {@code wrist} measured close; {@code ease} added for comfort
     * (0 mm); the others as for a strand. Answers: those of a strand, its {@code length} along the beads' centres, and
     * {@code inside}, the inside circumference; {@code difference} is of the inside against wrist and ease.
     */
    BRACELET(
            List.of("wrist"),
            List.of("ease", "closure", "knots", "ends", "cord", "knot", "take", "symmetric", "graduated", "maximum", "tolerance"),
            List.of("beads", "knots", "length", "difference", "thread", "inside")),
    /**
     * Round wire wound on a round mandrel, a jump ring being one turn. Values: {@code mandrel} and {@code wire}, diameters;
     * {@code turns} (1); {@code straight} wire added at the ends in all (0 mm); {@code density}.
     * Answers: {@code turn} the wire of one turn, {@code length} of wire, {@code height} wound close, {@code outside}
     * diameter, [{@code mass}].
     */
    COIL(
            List.of("mandrel", "wire"),
            List.of("turns", "straight", "density"),
            List.of("turn", "length", "height", "outside", "mass")),
    /**
     * Something cast or poured, of one or two parts. Values: {@code volume} of the piece; {@code density} of the mix;
     * the parts either by weight, {@code weight_a} and {@code weight_b}, or by volume, {@code volume_a} and {@code volume_b};
     * {@code density_a}, {@code density_b} of the parts. Densities are written {@code 1.1 g_per_cm3}.
     * Answers: {@code volume}, [{@code mass}, {@code a_mass}, {@code b_mass}, {@code a_volume}, {@code b_volume}].
     */
    POUR(
            List.of("volume"),
            List.of("density", "weight_a", "weight_b", "volume_a", "volume_b", "density_a", "density_b"),
            List.of("volume", "mass", "a_mass", "b_mass", "a_volume", "b_volume")),
    /**
     * Equal rectangles cut from sheet. Values: {@code width} and {@code height} of a piece; {@code pieces} (1);
     * {@code kerf} lost at each cut (0 mm); {@code sheet_width}, {@code sheet_height}; {@code thickness}, {@code density}.
     * Answers: {@code pieces}, {@code area} of the pieces, [{@code mass}, {@code per_sheet} pieces from one sheet,
     * {@code sheets}].
     */
    SHEET(
            List.of("width", "height"),
            List.of("pieces", "kerf", "sheet_width", "sheet_height", "thickness", "density"),
            List.of("pieces", "area", "mass", "per_sheet", "sheets"));

    private static final Set<String> COUNTS = Set.of("knots", "ends", "symmetric", "graduated", "maximum", "turns", "pieces",
            "weight_a", "weight_b", "volume_a", "volume_b");
    private static final Set<String> DENSITIES = Set.of("density", "density_a", "density_b");

    private final List<String> required;
    private final List<String> optional;
    private final List<String> answers;

    SizingKind(List<String> required, List<String> optional, List<String> answers) {
        this.required = required;
        this.optional = optional;
        this.answers = answers;
    }

    public List<String> required() {
        return required;
    }

    public List<String> optional() {
        return optional;
    }

    /** What it can answer, beside the count of each bead. */
    public List<String> answers() {
        return answers;
    }

    /** True where it strings beads in a pattern. */
    public boolean strings() {
        return this == STRAND || this == BRACELET;
    }

    /** What kind of amount a value is. */
    public static Dimension dimension(String value) {
        if (value.equals("volume")) {
            return Dimension.VOLUME;
        }
        if (DENSITIES.contains(value)) {
            return Unit.G_PER_CM3.dimension();
        }
        return COUNTS.contains(value) ? Dimension.COUNT : Dimension.LENGTH;
    }
}
