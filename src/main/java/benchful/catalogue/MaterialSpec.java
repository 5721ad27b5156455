package benchful.catalogue;

import benchful.core.SkillLevel;
import benchful.core.quantity.Dimension;
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
import java.util.Objects;
import java.util.Optional;

/**
 * A material: how it is counted, what is spoilt of it, and in which packs it is sold.
 *
 * @param unit what it is counted in, such as pcs, m, sheets of a size or cards of a length; tells whether it goes by the piece, by
 *     length, area, volume or mass
 * @param variantOf the material that this is a variant of, such as one of its colours; its name then begins with that one's and a comma,
 *     and what is not said here, offers too, is as with that one; null for none
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
        @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 120) @Mend("Name one of your materials.") String variantOf,
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

    private static final String BETWEEN = ", ";

    public MaterialSpec {
        waste = waste == null || waste.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(waste));
        hazards = hazards == null ? List.of() : List.copyOf(hazards);
        onHand = sized(onHand, unit);
        minimum = sized(minimum, unit);
        offers = offers == null ? List.of() : sized(offers, unit);
        pieces = pieces == null ? List.of() : List.copyOf(pieces);
    }

    /** A material of which nothing more is known. */
    public static MaterialSpec of(String name, Unit unit) {
        return MaterialSpecBuilder.builder().name(name).unit(unit).build();
    }

    private static Quantity sized(Quantity amount, Unit way) {
        return amount == null || way == null ? amount : amount.sized(way);
    }

    private static List<Offer> sized(List<Offer> offers, Unit way) {
        return way == null ? List.copyOf(offers) : offers.stream().map(offer -> offer.sized(way)).toList();
    }

    /**
     * The same as people count it: what was counted by area and is sold in sheets or off a roll is counted so, in the size that stands
     * first, and what one weighs is a sheet's mass.
     */
    public MaterialSpec inSheets() {
        Optional<Unit> sold = offers.stream().map(Offer::way).filter(Objects::nonNull).findFirst();
        if (sold.isEmpty() || unit.counted() != null || !unit.dimension().equals(Dimension.AREA)) {
            return this;
        }
        Unit sheet = sold.get();
        Quantity mass = unitMass == null ? null : unitMass.times(sheet.factor()).over(unit.factor());
        return withUnit(sheet).withUnitMass(mass).withOnHand(in(onHand, sheet)).withMinimum(in(minimum, sheet)).withOffers(offers.stream().map(Offer::inSheets).toList());
    }

    /** What is on hand as it is counted; none where nothing is said. */
    public Quantity shelved() {
        return onHand == null ? Quantity.zero(unit) : onHand.in(unit);
    }

    private static Quantity in(Quantity amount, Unit way) {
        return amount == null || !amount.dimension().equals(way.dimension()) ? amount : amount.in(way).measurable();
    }

    /** What is added for a group of this level [%]. */
    public BigDecimal waste(SkillLevel level) {
        for (int i = level.ordinal(); i >= 0; i--) {
            BigDecimal percent = waste.get(SkillLevel.values()[i]);
            if (percent != null) {
                return percent;
            }
        }
        return BigDecimal.ZERO;
    }

    /** What a variant of a material is called. */
    public static String nameOf(String material, String variant) {
        return material + BETWEEN + variant.strip();
    }

    /** What distinguishes it from other variants, "ivory"; null where it is none. */
    public String variant() {
        return variantOf == null ? null : name.startsWith(variantOf + BETWEEN) ? name.substring(variantOf.length() + BETWEEN.length()) : name;
    }

    /** A variant with what it does not say itself: that is as with its material. Shelf and least are always its own. */
    public MaterialSpec like(MaterialSpec material) {
        return MaterialSpecBuilder.builder(this).waste(waste.isEmpty() ? material.waste : waste).confidence(confidence == null ? material.confidence : confidence)
                .cutLoss(cutLoss == null ? material.cutLoss : cutLoss).unitMass(unitMass == null && unit.equals(material.unit) ? material.unitMass : unitMass)
                .hazards(hazards.isEmpty() ? material.hazards : hazards).offers(offers.isEmpty() ? material.offers : offers)
                .note(note == null ? material.note : note).build();
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
