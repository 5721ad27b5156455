package benchful.core.quantity;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Inside circumferences of rings by size. ISO 8653:2016: the size is the circumference in millimetres. American: diameter =
 * 0.458 in + 0.032 in x size. British: circumference = 36.25 mm + 1.25 mm x the letter's place, A being 1, half sizes between;
 * both as tabulated in public tables, where makers differ by up to half a size.
 */
public final class RingSize {
    private static final BigDecimal MOST = BigDecimal.valueOf(25);
    private static final Pattern LETTER = Pattern.compile("([A-Z])(½|1/2|\\.5)?");

    private RingSize() {}

    /** @param size 0 to 25, halves and quarters too */
    public static Quantity american(BigDecimal size) {
        if (size.signum() < 0 || size.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("American ring sizes run from 0 to 25, but %s is asked.".formatted(size.toPlainString()));
        }
        BigDecimal inches = new BigDecimal("0.032").multiply(size).add(new BigDecimal("0.458"));
        return new Quantity(new Quantity(inches, Unit.INCH).base().multiply(Quantity.PI).round(Quantity.PRECISION), Unit.MM);
    }

    /** @param size a letter from A to Z, with ½ for a half size */
    public static Quantity british(String size) {
        Matcher m = LETTER.matcher(size.strip().toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            throw new IllegalArgumentException("British ring sizes are letters from A to Z, with ½ for a half, but “%s” is asked.".formatted(size));
        }
        int halves = 2 * (m.group(1).charAt(0) - 'A' + 1) + (m.group(2) == null ? 0 : 1);
        return new Quantity(new BigDecimal("0.625").multiply(BigDecimal.valueOf(halves)).add(new BigDecimal("36.25")), Unit.MM);
    }
}
