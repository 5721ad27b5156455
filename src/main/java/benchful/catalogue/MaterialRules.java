package benchful.catalogue;

import benchful.core.Fault;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.MeasuringRange;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What must agree within a material's sheet: every amount measures the same kind of thing, and more packs never cost more. */
public final class MaterialRules {
    /** More can't be counted in square micrometres by the hundred. */
    private static final Quantity LONGEST_EDGE = Quantity.of(30, Unit.M);
    private static final Set<Dimension> COUNTED =
            Set.of(Dimension.COUNT, Dimension.LENGTH, Dimension.AREA, Dimension.VOLUME, Dimension.MASS);

    private final MaterialSpec sheet;
    private final List<Fault> faults = new ArrayList<>();

    private MaterialRules(MaterialSpec sheet) {
        this.sheet = sheet;
    }

    /** Every fault, in the order of the sheet; places are relative to the material. */
    public static List<Fault> faults(MaterialSpec sheet) {
        MaterialRules rules = new MaterialRules(sheet);
        rules.unit();
        rules.variant();
        if (rules.faults.isEmpty()) {
            rules.amounts();
        }
        return List.copyOf(rules.faults);
    }

    /** True where a material can be counted in this unit. */
    public static boolean counts(Unit unit) {
        return COUNTED.contains(unit.dimension()) && unit != Unit.PERCENT;
    }

    private void unit() {
        if (!counts(sheet.unit())) {
            fault("/unit", sheet.unit().dimension().equals(Dimension.UNSIZED)
                    ? "Say how large one is, such as “sheets 70 x 50 cm”, “m x 140 cm”, “cards of 2 m” or “tubes of 9 ml”."
                    : "A material is counted in pieces or by length, area, volume or mass. Choose such a unit.");
        }
    }

    private void variant() {
        if (sheet.variantOf() != null && sheet.variant().equals(sheet.name())) {
            fault("/name", "A variant of “%s” is called so, and then what it is, such as “%s”.".formatted(sheet.variantOf(), MaterialSpec.nameOf(sheet.variantOf(), "ivory")));
        }
    }

    private void amounts() {
        same("/on_hand", sheet.onHand());
        same("/minimum", sheet.minimum());
        measures("/cut_loss", sheet.cutLoss(), Dimension.LENGTH, "1 mm");
        measures("/unit_mass", sheet.unitMass(), Dimension.MASS, "3 g");
        for (int i = 0; i < sheet.pieces().size(); i++) {
            piece("/pieces/" + i, sheet.pieces().get(i));
        }
        for (int i = 0; i < sheet.offers().size(); i++) {
            offer("/offers/" + i, sheet.offers().get(i));
        }
        if (faults.isEmpty()) {
            sheetMass();
        }
    }

    private void offer(String at, Offer offer) {
        same(at + "/holds", offer.holds());
        if (offer.holds().signum() == 0) {
            fault(at + "/holds", "A pack holds something. Give an amount above 0.");
        }
        if (offer.lengths() != null && !sheet.unit().dimension().equals(Dimension.LENGTH)) {
            fault(at + "/lengths", "Only a material counted by length comes in lengths. Leave this empty.");
        }
        sheet(at + "/sheet/length", offer);
        breaks(at + "/breaks/", offer);
    }

    private void piece(String at, StockPiece piece) {
        measures(at + "/length", piece.length(), Dimension.LENGTH, "300 mm");
        measures(at + "/width", piece.width(), Dimension.LENGTH, "100 mm");
        noLarger(at + "/length", piece.length(), piece.width());
        boolean area = sheet.unit().dimension().equals(Dimension.AREA);
        if (!area && !sheet.unit().dimension().equals(Dimension.LENGTH)) {
            fault(at, "Only what is counted by length or area lies in pieces. Leave this out.");
        } else if (area != (piece.width() != null)) {
            fault(at + "/width", area ? "A piece of sheet has a width. Give it, such as 100 mm." : "What is counted by length has no width. Leave this out.");
        }
    }

    private void sheet(String at, Offer offer) {
        if (offer.sheet() == null) {
            return;
        }
        noLarger(at, offer.sheet().length(), offer.sheet().width());
        if (!sheet.unit().dimension().equals(Dimension.AREA)) {
            fault(at, "Only a material counted by area comes in sheets. Leave this empty, or count it in sheets, such as “sheets 70 x 50 cm”.");
        } else if (offer.holds().dimension().equals(Dimension.AREA)
                && (offer.holds().base().remainder(offer.sheet().area().base()).signum() != 0 || offer.holds().signum() == 0)) {
            fault(at, "A pack of %s does not hold a whole number of sheets of %s. Mend the one or the other.".formatted(offer.holds(), offer.sheet()));
        }
    }

    private void noLarger(String at, Quantity length, Quantity width) {
        if (width != null && (tooLong(length) || tooLong(width))) {
            fault(at, "A sheet is at most %s long and wide. Give its size, or cut it from a length instead.".formatted(LONGEST_EDGE));
        }
    }

    private static boolean tooLong(Quantity edge) {
        return edge.dimension().equals(Dimension.LENGTH) && edge.compareTo(LONGEST_EDGE) > 0;
    }

    private void breaks(String at, Offer offer) {
        int packs = 1;
        BigDecimal price = offer.price();
        for (int i = 0; i < offer.breaks().size(); i++) {
            Offer.PriceBreak next = offer.breaks().get(i);
            if (next.packs() <= packs) {
                fault(at + i + "/packs", "Write the lower prices by rising number of packs: this is to be more than %d.".formatted(packs));
            }
            if (next.price().compareTo(price) > 0) {
                fault(at + i + "/price", "More packs can't cost more each: give at most %s.".formatted(price.toPlainString()));
            }
            packs = next.packs();
            price = next.price();
        }
    }

    private void same(String at, Quantity amount) {
        String example = switch (sheet.unit().dimension().words()) {
            case "a count" -> "12 pcs";
            case "a length" -> "2 m";
            case "an area" -> "3 sheets 70 x 50 cm, or 100 cm2";
            case "a volume" -> "50 ml";
            default -> "20 g";
        };
        Unit way = sheet.unit();
        measures(at, amount, way.dimension(), way.counted() == null ? example : Quantity.of(3, way).toString());
    }

    private void measures(String at, Quantity amount, Dimension wanted, String example) {
        if (amount != null && !amount.dimension().equals(wanted)) {
            fault(at, "“%s” is %s. Give %s, such as %s.".formatted(amount, amount.dimension().words(), wanted.words(), example));
        }
    }

    /** What is counted in sheets from now on is weighed by the sheet. */
    private void sheetMass() {
        try {
            Optional.ofNullable(sheet.inSheets().unitMass()).ifPresent(MeasuringRange::bounded);
        } catch (IllegalArgumentException tooMuch) {
            fault("/unit_mass", "So much for 1 %s, a whole sheet is too heavy. %s".formatted(sheet.unit(), tooMuch.getMessage()));
        }
    }

    private void fault(String at, String detail) {
        faults.add(new Fault(at, detail));
    }
}
