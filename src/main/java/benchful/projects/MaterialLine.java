package benchful.projects;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;

/**
 * What one piece needs of one material.
 *
 * @param material its name in the catalogue
 * @param amount formula: how much one piece takes, or, where {@code pieces} is given, how long each cut piece is
 * @param pieces formula: into how many pieces of {@code amount} it is cut for one piece; null where it is not cut to length
 * @param shared true where {@code amount} serves the whole class (a bottle of glue on the bench), not each student
 * @param inKit false where it stays on the bench and is not packed into the kits; a shared line never is
 * @param waste percentage that replaces the catalogue's allowance on this line; null for the catalogue's
 * @param choice what the student chooses here, such as "colour"; null where there is no choice
 */
public record MaterialLine(
        String material,
        String amount,
        String pieces,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean shared,
        Boolean inKit,
        BigDecimal waste,
        String choice,
        String note) {

    /** The same line, of a material of another name. */
    MaterialLine of(String otherMaterial) {
        return new MaterialLine(otherMaterial, amount, pieces, shared, inKit, waste, choice, note);
    }

    /** Packed into each student's kit. */
    public boolean packed() {
        return !shared && !Boolean.FALSE.equals(inKit);
    }
}
