package benchful.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact amount with its unit, such as {@code 42 cm} or {@code 12 pcs}. Two quantities are equal when they are the same
 * amount, whatever unit each was written in.
 *
 * @param amount in {@code unit}; any finite decimal
 */
public record Quantity(BigDecimal amount, Unit unit) implements Comparable<Quantity> {
    /** Enough digits that a chain of conversions does not show; 34 significant ones. */
    public static final MathContext PRECISION = MathContext.DECIMAL128;

    /** The ratio of a circle's circumference to its diameter, to 34 significant digits. */
    public static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279503");

    /** Decimal places of an amount that somebody wrote. */
    private static final int MOST_WRITTEN = 12;

    /** Longer texts than any amount that is written out. */
    private static final int LONGEST = 400;
    /** What is counted by things of a size: {@code 20 sheets 70 x 50 cm}. */
    private static final Pattern COUNTED = Pattern.compile("\\s*+([+-]?\\d++(?:[.,]\\d++)?+)\\s++(\\p{L}.*+)");
    private static final Pattern WRITTEN = Pattern.compile("\\s*+([+-]?\\d++(?:[.,]\\d++)?+)\\s*+([A-Za-z_%]\\w*+)?+\\s*+");

    public Quantity {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(unit, "unit");
        amount = plain(amount);
    }

    public static Quantity of(String amount, Unit unit) {
        return new Quantity(new BigDecimal(amount), unit);
    }

    public static Quantity of(long amount, Unit unit) {
        return new Quantity(BigDecimal.valueOf(amount), unit);
    }

    public static Quantity zero(Unit unit) {
        return new Quantity(BigDecimal.ZERO, unit);
    }

    /**
     * Reads what a person writes: {@code 42 cm}, {@code 0,6mm}, {@code 1/2 m}, {@code 12}, {@code 20 sheets 70 x 50 cm}. A bare number counts pieces. All that
     * {@link #toString} writes is read, however many digits a division left.
     *
     * @throws IllegalArgumentException with a sentence for the writer
     */
    public static Quantity parse(String written) {
        return inSigns(written).orElseGet(() -> byHand(written));
    }

    /** As the program itself writes most amounts: a number and the sign of a unit. */
    private static Optional<Quantity> inSigns(String written) {
        Matcher m = written.length() > LONGEST ? null : WRITTEN.matcher(written);
        return m == null || !m.matches() || m.group(2) == null || m.group(1).contains(",") ? Optional.empty()
                : Unit.parse(m.group(2)).map(unit -> new Quantity(new BigDecimal(m.group(1)), unit));
    }

    private static Quantity byHand(String written) {
        String spelt = written.length() > LONGEST ? written : Handwritten.amount(written);
        Matcher m = WRITTEN.matcher(spelt);
        if (spelt.length() > LONGEST || !m.matches()) {
            Matcher counted = COUNTED.matcher(spelt);
            if (spelt.length() <= LONGEST && counted.matches() && Counted.parse(counted.group(2)).isPresent()) {
                return new Quantity(new BigDecimal(counted.group(1)), Unit.of(Counted.parse(counted.group(2)).get()));
            }
            throw new IllegalArgumentException(
                    "“%s” is not an amount. Write a number and a unit, such as 42 cm, 12 pcs or 5 ml.".formatted(Sentence.quoted(written)));
        }
        String symbol = m.group(2) == null ? Unit.PIECE.symbol() : m.group(2);
        Unit unit = Unit.parse(symbol).orElseThrow(() -> new IllegalArgumentException(
                "“%s” is not a unit here. Use mm, cm, m, in, ft, yd, g, kg, oz, lb, ml, l, tsp, tbsp, floz, cup, pt, qt, gal, cm2, in2, in3 or pcs, or say what is counted, such as 3 sheets 70 x 50 cm."
                        .formatted(Sentence.quoted(symbol))));
        return new Quantity(new BigDecimal(m.group(1)), unit);
    }

    /** The same where "20 sheets" were written and the material is counted in sheets of a size, or in packs, or the like, and where a length was and it runs off a roll. */
    public Quantity sized(Unit way) {
        Extent run = way.counted() == null ? null : way.counted().run();
        if (run != null && dimension().equals(Dimension.LENGTH)) {
            return new Quantity(in(run.length().unit()).amount(), way);
        }
        boolean open = unit.counted() != null && !unit.counted().sized() && way.counted() != null && way.counted().container() == unit.counted().container();
        return open ? new Quantity(amount, way) : this;
    }

    /** True where it is a whole number of its unit. */
    public boolean whole() {
        return amount.scale() <= 0;
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The amount in base units (mm, g and their powers). */
    public BigDecimal base() {
        return amount.multiply(unit.factor());
    }

    /** From an amount in base units to {@code unit}; 34 significant digits where the division does not end. */
    public static Quantity ofBase(BigDecimal base, Unit unit) {
        return new Quantity(base.divide(unit.factor(), PRECISION), unit);
    }

    /** @throws IllegalArgumentException if the other unit measures something else */
    public Quantity in(Unit other) {
        if (!other.dimension().equals(dimension())) {
            throw new IllegalArgumentException(
                    "%s is %s and can't be given in %s.".formatted(measurable(), dimension().words(), other.symbol()));
        }
        return other.equals(unit) ? this : ofBase(base(), other);
    }

    public Quantity plus(Quantity other) {
        return new Quantity(amount.add(other.in(unit).amount), unit);
    }

    public Quantity minus(Quantity other) {
        return new Quantity(amount.subtract(other.in(unit).amount), unit);
    }

    public Quantity times(BigDecimal factor) {
        return new Quantity(amount.multiply(factor), unit);
    }

    /** Divided, to 34 significant digits where that does not end. */
    public Quantity over(BigDecimal divisor) {
        return new Quantity(amount.divide(divisor, PRECISION), unit);
    }

    public Quantity times(long factor) {
        return times(BigDecimal.valueOf(factor));
    }

    /** Rounded to so many decimal places in its own unit. */
    public Quantity rounded(int places, RoundingMode mode) {
        return new Quantity(amount.setScale(places, mode), unit);
    }

    /**
     * What was divided out gets an end before it is kept or handed on: an amount with more places than anybody writes is rounded
     * half up, as finely as a person can measure ({@link MeasuringRange}). What was written stays as it is.
     */
    public Quantity measurable() {
        return amount.scale() <= MOST_WRITTEN ? this : rounded(MeasuringRange.places(unit), RoundingMode.HALF_UP);
    }

    public int signum() {
        return amount.signum();
    }

    @Override
    public int compareTo(Quantity other) {
        return amount.compareTo(other.in(unit).amount);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Quantity q && q.dimension().equals(dimension()) && base().compareTo(q.base()) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(dimension(), plain(base()));
    }

    /** As written in sheets: {@code 42 cm}; pieces carry {@code pcs}. */
    @Override
    public String toString() {
        Counted counted = unit.counted();
        return amount.toPlainString() + " " + (counted == null || unit.runs() ? unit.symbol() : counted.word(amount) + counted.size());
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
