package benchful.documents.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths on paper, as style sheets and people write them. */
public final class Millimetres {
    private Millimetres() {}

    /** At most three decimals, with a point and without a unit. */
    public static String words(double millimetres) {
        return BigDecimal.valueOf(millimetres).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
