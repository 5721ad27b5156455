package benchful.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A unit that a tutor writes: its symbol, what it measures and how many base units (mm, g and their powers) it is.
 * Factors are exact: inch 25.4 mm and avoirdupois pound 453.59237 g (international yard and pound, 1959),
 * troy ounce 31.1034768 g, grain 64.79891 mg and US gallon 231 cubic inches, which is 4 quarts, 8 pints, 16 cups, 128 fluid ounces, 256
 * tablespoons and 768 teaspoons (NIST Handbook 44, Appendix C). A unit may also be a thing that is counted, such as a sheet of a size
 * ({@link Counted}); units are the same where they are written the same.
 */
public final class Unit {
    public static final Unit PIECE = measured("pcs", Dimension.COUNT, "1");
    public static final Unit PERCENT = measured("%", Dimension.COUNT, "0.01");
    public static final Unit MM = measured("mm", Dimension.LENGTH, "1");
    public static final Unit CM = measured("cm", Dimension.LENGTH, "10");
    public static final Unit M = measured("m", Dimension.LENGTH, "1000");
    public static final Unit INCH = measured("in", Dimension.LENGTH, "25.4");
    public static final Unit FOOT = measured("ft", Dimension.LENGTH, "304.8");
    public static final Unit YARD = measured("yd", Dimension.LENGTH, "914.4");
    public static final Unit G = measured("g", Dimension.MASS, "1");
    public static final Unit KG = measured("kg", Dimension.MASS, "1000");
    public static final Unit OUNCE = measured("oz", Dimension.MASS, "28.349523125");
    public static final Unit POUND = measured("lb", Dimension.MASS, "453.59237");
    public static final Unit TROY_OUNCE = measured("ozt", Dimension.MASS, "31.1034768");
    public static final Unit PENNYWEIGHT = measured("dwt", Dimension.MASS, "1.55517384");
    public static final Unit GRAIN = measured("gr", Dimension.MASS, "0.06479891");
    public static final Unit ML = measured("ml", Dimension.VOLUME, "1000");
    public static final Unit LITRE = measured("l", Dimension.VOLUME, "1000000");
    public static final Unit CM3 = measured("cm3", Dimension.VOLUME, "1000");
    public static final Unit TEASPOON = measured("tsp", Dimension.VOLUME, "4928.92159375");
    public static final Unit TABLESPOON = measured("tbsp", Dimension.VOLUME, "14786.76478125");
    public static final Unit FLUID_OUNCE = measured("floz", Dimension.VOLUME, "29573.5295625");
    public static final Unit CUP = measured("cup", Dimension.VOLUME, "236588.2365");
    public static final Unit PINT = measured("pt", Dimension.VOLUME, "473176.473");
    public static final Unit QUART = measured("qt", Dimension.VOLUME, "946352.946");
    public static final Unit GALLON = measured("gal", Dimension.VOLUME, "3785411.784");
    public static final Unit CUBIC_INCH = measured("in3", Dimension.VOLUME, "16387.064");
    public static final Unit MM2 = measured("mm2", Dimension.AREA, "1");
    public static final Unit CM2 = measured("cm2", Dimension.AREA, "100");
    public static final Unit M2 = measured("m2", Dimension.AREA, "1000000");
    public static final Unit SQUARE_INCH = measured("in2", Dimension.AREA, "645.16");
    public static final Unit SQUARE_FOOT = measured("ft2", Dimension.AREA, "92903.04");
    public static final Unit SQUARE_YARD = measured("yd2", Dimension.AREA, "836127.36");
    public static final Unit G_PER_CM3 = measured("g_per_cm3", new Dimension(-3, 1), "0.001");

    private static final List<Unit> MEASURED = List.of(
            PIECE, PERCENT, MM, CM, M, INCH, FOOT, YARD, G, KG, OUNCE, POUND, TROY_OUNCE,
            PENNYWEIGHT, GRAIN, ML, LITRE, CM3, TEASPOON, TABLESPOON, FLUID_OUNCE, CUP, PINT, QUART,
            GALLON, CUBIC_INCH, MM2, CM2, M2, SQUARE_INCH, SQUARE_FOOT, SQUARE_YARD, G_PER_CM3);
    private static final Set<Unit> CUSTOMARY = Set.of(INCH, FOOT, YARD, OUNCE, POUND, FLUID_OUNCE, SQUARE_INCH);
    private static final Map<String, Unit> BY_SYMBOL = MEASURED.stream().collect(Collectors.toMap(Unit::symbol, Function.identity()));

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;
    private final @Nullable Counted counted;

    private Unit(String symbol, Dimension dimension, BigDecimal factor, @Nullable Counted counted) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
        this.counted = counted;
    }

    private static Unit measured(String symbol, Dimension dimension, String factor) {
        return new Unit(symbol, dimension, new BigDecimal(factor), null);
    }

    /** A thing that is counted. */
    public static Unit of(Counted counted) {
        return new Unit(counted.toString(), counted.dimension(), counted.base(), counted);
    }

    /** Those that amounts are measured in, and pieces. */
    public static List<Unit> measured() {
        return MEASURED;
    }

    /** Whether a bench in the United States writes what it measures out in it. */
    public boolean isCustomary() {
        return CUSTOMARY.contains(this);
    }

    /** As it is written: {@code cm}, {@code sheet 70 cm x 50 cm}. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many base units of its dimension one of this unit is. */
    public BigDecimal factor() {
        return factor;
    }

    /** The thing that it counts; null for one that measures. */
    public @Nullable Counted counted() {
        return counted;
    }

    /** Whether it counts what runs off a roll of a known width. */
    public boolean runs() {
        return counted != null && counted.runs();
    }

    /** Whether amounts in the unit that its things are measured in can always be written in it with an end. */
    public boolean ends() {
        BigInteger left = factor.stripTrailingZeros().unscaledValue();
        for (BigInteger prime : List.of(BigInteger.TWO, BigInteger.valueOf(5))) {
            while (left.signum() != 0 && left.mod(prime).signum() == 0) {
                left = left.divide(prime);
            }
        }
        return left.equals(BigInteger.ONE);
    }

    /** The measuring unit with this symbol, as written in sheets and formulas. */
    public static Optional<Unit> of(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /** The unit that is written so: {@code cm}, {@code sheets 70 x 50 cm}, {@code cards of 2 m}, {@code pairs}. */
    public static Optional<Unit> parse(String written) {
        return of(written.strip()).or(() -> Counted.parse(written).map(Unit::of));
    }

    /** The unit in which amounts of a dimension are held: pieces, mm, g, ml, mm2. */
    public static Optional<Unit> held(Dimension dimension) {
        return Stream.of(PIECE, MM, G, ML, MM2, G_PER_CM3).filter(u -> u.dimension.equals(dimension)).findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit unit && unit.symbol.equals(symbol);
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
    }

    @Override
    public String toString() {
        return symbol;
    }
}
