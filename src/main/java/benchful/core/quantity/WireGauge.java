package benchful.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Diameters of wire by gauge number: the two tables run close and are not the same.
 *
 * <p>American (AWG): 0.005 in x 92^((36 - n) / 39), to four significant figures; source: ASTM B258-02. Imperial standard
 * (SWG): a table in thousandths of an inch; source: BS 3737:1964, withdrawn, as tabulated in public tables.
 */
public final class WireGauge {
    private static final MathContext FOUR_FIGURES = new MathContext(4, RoundingMode.HALF_UP);
    private static final int LEAST_AMERICAN = -3;
    private static final int MOST_AMERICAN = 56;
    /** Thousandths of an inch, from gauge 0. */
    private static final String[] IMPERIAL = {
        "324", "300", "276", "252", "232", "212", "192", "176", "160", "144", "128", "116", "104", "92", "80", "72", "64", "56", "48",
        "40", "36", "32", "28", "24", "22", "20", "18", "16.4", "14.8", "13.6", "12.4", "11.6", "10.8", "10", "9.2", "8.4", "7.6", "6.8",
        "6", "5.2", "4.8", "4.4", "4", "3.6", "3.2", "2.8", "2.4", "2", "1.6", "1.2", "1"
    };

    private WireGauge() {}

    /** @param number -3 (4/0) to 56 */
    public static Quantity american(int number) {
        within(number, LEAST_AMERICAN, MOST_AMERICAN, "American");
        BigDecimal mils = new BigDecimal(5 * Math.pow(92, (36 - number) / 39.0)).round(FOUR_FIGURES);
        return new Quantity(mils.movePointLeft(3), Unit.INCH).in(Unit.MM);
    }

    /** @param number 0 to 50 */
    public static Quantity imperial(int number) {
        within(number, 0, IMPERIAL.length - 1, "imperial standard");
        return new Quantity(new BigDecimal(IMPERIAL[number]).movePointLeft(3), Unit.INCH).in(Unit.MM);
    }

    private static void within(int number, int least, int most, String table) {
        if (number < least || number > most) {
            throw new IllegalArgumentException("The %s gauge runs from %d to %d, but %d is asked.".formatted(table, least, most, number));
        }
    }
}
