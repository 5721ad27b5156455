package benchful.web;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.IntStream;

/** Amounts as a bench in the United States writes them: inches in fractions, feet with inches, less than a pound in ounces. */
final class UsMeasures {
    /** Parts of an inch that its finest rules show. */
    private static final int FINEST = 64;
    private static final int COARSEST = 16;
    private static final BigDecimal INCHES = BigDecimal.valueOf(12);
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private UsMeasures() {}

    /** "7 1/2", "5/16" where that is what it is, to a 64th of an inch; nothing otherwise. */
    static Optional<String> exact(BigDecimal inches) {
        BigDecimal parts = inches.multiply(BigDecimal.valueOf(FINEST));
        return parts.stripTrailingZeros().scale() > 0 ? Optional.empty() : Optional.of(fraction(parts.toBigIntegerExact().longValueExact(), FINEST));
    }

    /**
     * "7 1/2": the nearest 16th of an inch; where that is more than a hundredth of the length off, the nearest 32nd or 64th, and
     * where these are too, decimals. Rules are divided into 16ths, finer ones into 32nds and 64ths (common practice, no source).
     */
    static String nearest(BigDecimal inches) {
        return IntStream.iterate(COARSEST, parts -> parts <= FINEST, parts -> 2 * parts).filter(parts -> isNear(inches, parts)).mapToObj(parts -> fraction(parts(inches, parts), parts))
                .findFirst().orElseGet(() -> Formats.number(inches, 2));
    }

    private static boolean isNear(BigDecimal inches, int parts) {
        BigDecimal off = BigDecimal.valueOf(parts(inches, parts)).subtract(inches.multiply(BigDecimal.valueOf(parts))).abs();
        return off.compareTo(inches.abs().multiply(BigDecimal.valueOf(parts)).multiply(HUNDREDTH)) <= 0;
    }

    private static long parts(BigDecimal inches, int parts) {
        return inches.multiply(BigDecimal.valueOf(parts)).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    /** In its lowest terms. */
    private static String fraction(long of, int parts) {
        long part = Math.abs(of) % parts;
        long whole = of / parts;
        if (part == 0) {
            return Formats.number(BigDecimal.valueOf(whole), 0);
        }
        int common = (int) Long.lowestOneBit(part);
        String rest = "%d/%d".formatted(part / common, parts / common);
        String sign = of < 0 ? "−" : "";
        return whole == 0 ? sign + rest : Formats.number(BigDecimal.valueOf(whole), 0) + " " + rest;
    }

    /** As it is measured out at the bench, in the unit it was written in. */
    static String measured(Quantity amount) {
        if (amount.unit() == Unit.INCH) {
            return nearest(amount.amount()) + " in";
        }
        if (amount.unit() == Unit.FOOT && amount.amount().stripTrailingZeros().scale() > 0) {
            return feet(amount);
        }
        return amount.unit() == Unit.POUND && amount.amount().abs().compareTo(BigDecimal.ONE) < 0 ? Formats.words(amount.in(Unit.OUNCE)) : Formats.words(amount);
    }

    private static String feet(Quantity amount) {
        BigDecimal whole = amount.amount().setScale(0, RoundingMode.DOWN);
        String rest = nearest(amount.amount().subtract(whole).multiply(INCHES));
        return whole.signum() <= 0 || rest.equals("12") || rest.equals("0") ? Formats.words(amount) : "%s ft %s in".formatted(Formats.number(whole, 0), rest);
    }
}
