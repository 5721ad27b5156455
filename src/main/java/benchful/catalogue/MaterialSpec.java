package benchful.catalogue;

import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Percent;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A material: how it is counted, what is spoilt of it, and in which packs it is sold.
 *
 * @param unit what it is counted in; tells whether it goes by the piece, by length, area, volume or mass
 * @param waste percentage to add by skill level; a level that is missing takes that of the next less practised, none means 0
 * @param confidence where given, in (0, 1): bring enough that all students finish with this probability, taking the waste
 *     percentage as the chance that one unit spoils; for materials counted by the piece
 * @param cutLoss lost at each cut [length]; null for none
 * @param unitMass mass of one unit, for postage; null where not known
 * @param onHand what is on the shelf, free to use; null for nothing
 * @param minimum least that should lie on the shelf; below it the stock counts as low; null for none
 * @param pieces of what is on hand, the pieces whose size is known, such as offcuts: they are cut first; the rest is taken to
 *     lie as it is sold
 */
@Spec(name = "material-1", title = "A material, and the packs it is sold in")
@RecordBuilder
public record MaterialSpec(
        @Required @Filled(120) @Mend("Give the material a name.") String name,
        @Required Unit unit,
        Map<SkillLevel, @Percent BigDecimal> waste,
        @Range(above = 0, below = 1) @Mend("Give a probability above 0 and below 1, such as 0.95.") BigDecimal confidence,
        Quantity cutLoss,
        Quantity unitMass,
        Quantity onHand,
        Quantity minimum,
        @Length(most = 30) List<@HazardName String> hazards,
        @Length(most = 50) List<Offer> offers,
        @ShortText String note,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 1000) List<StockPiece> pieces) implements MaterialSpecBuilder.With {

    public MaterialSpec {
        waste = waste == null || waste.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(waste));
        hazards = hazards == null ? List.of() : List.copyOf(hazards);
        offers = offers == null ? List.of() : List.copyOf(offers);
        pieces = pieces == null ? List.of() : List.copyOf(pieces);
    }

    /** A material of which nothing more is known. */
    public static MaterialSpec of(String name, Unit unit) {
        return MaterialSpecBuilder.builder().name(name).unit(unit).build();
    }

    /** The same with nothing on hand. */
    public MaterialSpec unstocked() {
        return withOnHand(null).withPieces(null);
    }

    /** The same with so much on hand, of it these pieces. */
    public MaterialSpec onHand(Quantity amount, List<StockPiece> known) {
        return withOnHand(amount.signum() > 0 ? amount : null).withPieces(known);
    }
}
