package benchful.projects;

import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A working of the piece, such as its strand: the answers are names that material lines, steps and later workings may use,
 * written {@code NAME_ANSWER}: a strand called {@code strand} gives {@code strand_beads}, {@code strand_knots},
 * {@code strand_length}. Which values a kind takes and which answers it gives stands at {@link SizingKind}.
 *
 * @param values the inputs by name, each a formula of measures and of earlier answers
 * @param beads for strands and bracelets, the pattern from one end
 */
public record Sizing(
        @Required @FormulaName String name,
        @Required @Mend("Choose what is worked out: strand, bracelet, coil, pour or sheet.") SizingKind kind,
        @Length(most = 60) Map<@FormulaName String, @FormulaText String> values,
        @Length(most = 40) List<Bead> beads) {
    public Sizing {
        values = values == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(values));
        beads = ProjectSpec.copy(beads);
    }

    /** The names under which formulas find what this working answers. */
    public List<String> answers() {
        return Stream.concat(beads.stream().map(b -> word(b.bead())), kind.answers().stream()).map(a -> name + "_" + a).distinct().toList();
    }

    /**
     * One run of a pattern.
     *
     * @param bead its name, as on the material line; its count is {@code NAME_BEAD} with all but letters and digits as {@code _}
     * @param size formula, the bead's length along the strand
     * @param count how many in a row; 1 where null
     */
    public record Bead(
            @Required @Length(least = 1, most = 60) @Mend("Name the bead.") String bead,
            @Required @FormulaText String size,
            @Range(from = 1, to = 2000) @Mend("Give how many beads in a row, from 1 to 2000.") Integer count) {}

    /** A bead's name as formulas write it. */
    public static String word(String bead) {
        return bead.replaceAll("[^\\p{L}\\p{N}]", "_");
    }
}
