package benchful.projects;

import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Percent;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * What one piece needs of one material.
 *
 * @param material its name in the catalogue
 * @param amount formula: how much one piece takes, or, where {@code pieces} is given, how long each cut piece is
 * @param width formula: how wide each piece is, where rectangles are cut from sheet; null where they are not
 * @param pieces formula: into how many pieces of {@code amount} it is cut for one piece; null where it is not cut
 * @param grain true where rectangles must lie with their length along the sheet's
 * @param shared true where {@code amount} serves the whole class (a bottle of glue on the bench), not each student
 * @param serves of a shared line, for how many who make a piece one such amount is there (2 for a pair, 6 for a table, a batch); null for all
 * @param lent true where it comes back after the class, such as practice pieces or a block of wax: it is brought, not used up
 * @param inKit false where it stays on the bench and is not packed into the kits; what is shared or lent never is
 * @param waste percentage that replaces the catalogue's allowance on this line; null for the catalogue's
 * @param choice what the student chooses here, such as "colour"; null where there is no choice
 * @param alternatives materials of the catalogue of which one can be chosen in place of {@code material}, each bought for
 *     itself; none where a choice is only a word on the kit, as with a mixed bag of beads
 */
@RecordBuilder
public record MaterialLine(
        @Required @Filled(120) @Mend("Name the material as in the catalogue.") String material,
        @Required @FormulaText String amount,
        @JsonInclude(JsonInclude.Include.NON_NULL) @FormulaText String width,
        @FormulaText String pieces,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean grain,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean shared,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Range(from = 2, to = 200) @Mend("Say for how many one such amount is there, from 2 to 200, or leave it empty for the whole class.") Integer serves,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean lent,
        Boolean inKit,
        @Percent BigDecimal waste,
        @ShortText String choice,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 20)
                List<@Filled(120) @Mend("Name a material of the catalogue that can be chosen instead.") String> alternatives,
        @ShortText String note) implements MaterialLineBuilder.With {

    public MaterialLine {
        alternatives = ProjectSpec.copy(alternatives);
    }

    /** So much for each student, uncut, in the kit, with nothing to choose. */
    public static MaterialLine of(String material, String amount) {
        return MaterialLineBuilder.builder().material(material).amount(amount).build();
    }

    /** The same line where a material has got another name. */
    MaterialLine renamed(String from, String to) {
        return withMaterial(renamed(material, from, to)).withAlternatives(alternatives.stream().map(name -> renamed(name, from, to)).toList());
    }

    private static String renamed(String name, String from, String to) {
        return name.equalsIgnoreCase(from) ? to : name;
    }

    /** Its material and those that can be chosen in place of it. */
    public List<String> offered() {
        return Stream.concat(Stream.of(material), alternatives.stream()).toList();
    }

    /** How many times a shared amount is there for so many who make a piece. */
    public int servings(int makers) {
        return serves == null ? 1 : Math.max(1, (makers + serves - 1) / serves);
    }

    /** Packed into each student's kit. */
    public boolean packed() {
        return !shared && !lent && !Boolean.FALSE.equals(inKit);
    }
}
