package benchful.documents.parts;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.documents.paper.PrintOptions;
import benchful.plans.materials.kits.Kit;
import benchful.web.Formats;
import java.math.RoundingMode;

/**
 * Amounts as a hand at the bench measures them: lengths in millimetres below 10 cm, then centimetres, then metres. Where US customary units are wanted,
 * or where an amount was written in US customary units, those come first.
 */
public final class Amounts {
    private final boolean customary;
    private final boolean brief;

    private Amounts(boolean customary, boolean brief) {
        this.customary = customary;
        this.brief = brief;
    }

    public static Amounts on(PrintOptions options) {
        return new Amounts(options.customary(), false);
    }

    /** Where there is room for one unit only. */
    public static Amounts briefly(PrintOptions options) {
        return new Amounts(options.customary(), true);
    }

    public String words(Quantity amount) {
        if (amount.unit().isCustomary()) {
            return Formats.asWritten(amount);
        }
        String metric = Formats.measured(amount);
        return customary ? customary(amount, metric) : metric;
    }

    /** In the unit it was written in, so that measures of one piece read alike. */
    public String asWritten(Quantity amount) {
        String written = Formats.words(amount);
        return customary && !amount.unit().isCustomary() ? customary(amount, written) : written;
    }

    /** "54", "2 × 10 mm", "3 of 102 × 76 mm", "1.24 m". */
    public String words(Kit.Content content) {
        if (content.pieces() == null) {
            return words(content.amount());
        }
        return content.rectangle() == null ? "%d × %s".formatted(content.pieces(), words(content.each())) : Formats.several(content.pieces(), words(content.rectangle()));
    }

    /** Rectangles in millimetres, as they are marked out: "102 × 76 mm". */
    public String words(Extent rectangle) {
        String metric = Formats.words(new Extent(rectangle.length().in(Unit.MM).rounded(1, RoundingMode.HALF_UP), rectangle.width().in(Unit.MM).rounded(1, RoundingMode.HALF_UP)));
        if (!customary && rectangle.length().unit() != Unit.INCH) {
            return metric;
        }
        String inches = Formats.asWritten(new Extent(rectangle.length().in(Unit.INCH), rectangle.width().in(Unit.INCH)));
        return brief ? inches : "%s (%s)".formatted(inches, metric);
    }

    private String customary(Quantity amount, String metric) {
        Unit unit = Unit.PIECE;
        if (amount.dimension().equals(Dimension.LENGTH)) {
            unit = amount.compareTo(Quantity.of(3, Unit.YARD)) < 0 ? Unit.INCH : Unit.YARD;
        } else if (amount.dimension().equals(Dimension.MASS)) {
            unit = Unit.OUNCE;
        } else if (amount.dimension().equals(Dimension.VOLUME)) {
            unit = Unit.FLUID_OUNCE;
        }
        String words = unit == Unit.PIECE ? metric : Formats.asWritten(amount.in(unit)).replace("floz", "fl oz");
        return brief || unit == Unit.PIECE ? words : "%s (%s)".formatted(words, metric);
    }
}
