package benchful.core.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A unit that a tutor writes: its symbol, what it measures and how many base units (mm, g and their powers) it is.
 * Factors are exact: inch 25.4 mm and avoirdupois pound 453.59237 g (international yard and pound, 1959),
 * troy ounce 31.1034768 g, grain 64.79891 mg and US gallon 231 cubic inches, which is 4 quarts, 8 pints, 16 cups, 128 fluid ounces, 256
 * tablespoons and 768 teaspoons (NIST Handbook 44, Appendix C).
 */
public enum Unit {
    PIECE("pcs", Dimension.COUNT, "1"),
    PERCENT("%", Dimension.COUNT, "0.01"),
    MM("mm", Dimension.LENGTH, "1"),
    CM("cm", Dimension.LENGTH, "10"),
    M("m", Dimension.LENGTH, "1000"),
    INCH("in", Dimension.LENGTH, "25.4"),
    FOOT("ft", Dimension.LENGTH, "304.8"),
    YARD("yd", Dimension.LENGTH, "914.4"),
    G("g", Dimension.MASS, "1"),
    KG("kg", Dimension.MASS, "1000"),
    OUNCE("oz", Dimension.MASS, "28.349523125"),
    POUND("lb", Dimension.MASS, "453.59237"),
    TROY_OUNCE("ozt", Dimension.MASS, "31.1034768"),
    PENNYWEIGHT("dwt", Dimension.MASS, "1.55517384"),
    GRAIN("gr", Dimension.MASS, "0.06479891"),
    ML("ml", Dimension.VOLUME, "1000"),
    LITRE("l", Dimension.VOLUME, "1000000"),
    CM3("cm3", Dimension.VOLUME, "1000"),
    TEASPOON("tsp", Dimension.VOLUME, "4928.92159375"),
    TABLESPOON("tbsp", Dimension.VOLUME, "14786.76478125"),
    FLUID_OUNCE("floz", Dimension.VOLUME, "29573.5295625"),
    CUP("cup", Dimension.VOLUME, "236588.2365"),
    PINT("pt", Dimension.VOLUME, "473176.473"),
    QUART("qt", Dimension.VOLUME, "946352.946"),
    GALLON("gal", Dimension.VOLUME, "3785411.784"),
    CUBIC_INCH("in3", Dimension.VOLUME, "16387.064"),
    MM2("mm2", Dimension.AREA, "1"),
    CM2("cm2", Dimension.AREA, "100"),
    M2("m2", Dimension.AREA, "1000000"),
    SQUARE_INCH("in2", Dimension.AREA, "645.16"),
    SQUARE_FOOT("ft2", Dimension.AREA, "92903.04"),
    SQUARE_YARD("yd2", Dimension.AREA, "836127.36"),
    G_PER_CM3("g_per_cm3", new Dimension(-3, 1), "0.001");

    private static final Map<String, Unit> BY_SYMBOL =
            Arrays.stream(values()).collect(Collectors.toMap(Unit::symbol, Function.identity()));

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;

    Unit(String symbol, Dimension dimension, String factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
    }

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

    /** The unit with this symbol, as written in sheets and formulas. */
    public static Optional<Unit> of(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /** The unit in which amounts of a dimension are held: pieces, mm, g, ml, mm2. */
    public static Optional<Unit> held(Dimension dimension) {
        return Arrays.asList(PIECE, MM, G, ML, MM2, G_PER_CM3).stream().filter(u -> u.dimension.equals(dimension)).findFirst();
    }
}
