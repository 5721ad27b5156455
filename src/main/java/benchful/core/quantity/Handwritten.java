package benchful.core.quantity;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Amounts as people write them down, turned into the signs that amounts and formulas are read by: {@code ½ m}, {@code 1 1/2 m} and
 * {@code 0,5 metres} are 0.5, 1.5 and 0.5 m, {@code 5 × height} is a product.
 */
public final class Handwritten {
    private static final Pattern VULGAR = Pattern.compile("(\\d?)([\\u00BC-\\u00BE\\u2150-\\u215E])");
    /** A part of one with its unit, or alone: what stands after a product or a division is left as the formula it is. */
    private static final Pattern PART = Pattern.compile("(?<![\\w.,/*)])(?<![*/] )(?:(\\d{1,6}) )?(\\d{1,4}) ?/ ?(\\d{1,4})(?= ?[A-Za-z%]|$)");
    private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern TIMES = Pattern.compile("(?<=[\\w)%])(\\s*)[x×·](\\s*)(?=[\\w(.])");
    private static final Pattern NUMBER_AND_WORD = Pattern.compile("(\\d)(\\s*)(fl\\.? ?oz|sq\\.? ?[a-z]{1,2}|[A-Za-z]+[²³]|[A-Za-z]++|[\"″])(?![\\w(])");
    private static final Map<String, String> UNITS = new HashMap<>();

    static {
        words("mm", "millimetre", "millimeter");
        words("cm", "centimetre", "centimeter");
        words("m", "metre", "meter");
        words("in", "inch", "inche", "\"", "″");
        words("ft", "foot", "feet");
        words("yd", "yard");
        words("g", "gram", "gramme", "gr");
        words("kg", "kilo", "kilogram");
        words("oz", "ounce");
        words("lb", "pound");
        words("ml", "millilitre", "milliliter");
        words("l", "litre", "liter", "ltr");
        words("cm3", "cm³", "cc");
        words("mm2", "mm²", "sqmm");
        words("cm2", "cm²", "sqcm");
        words("m2", "m²", "sqm");
        words("in2", "in²", "sqin");
        words("ft2", "ft²", "sqft");
        words("tsp", "teaspoon");
        words("tbsp", "tablespoon");
        words("floz", "fluidounce");
        words("pt", "pint");
        words("qt", "quart");
        words("gal", "gallon");
        words("pcs", "pc", "piece", "pce", "pcs");
        UNITS.remove("gr");
    }

    private Handwritten() {}

    private static void words(String symbol, String... words) {
        List.of(words).forEach(word -> {
            UNITS.put(word, symbol);
            UNITS.put(word + "s", symbol);
        });
    }

    /** An amount with points for commas, decimals for fractions that end, and symbols for the words of units. */
    public static String amount(String written) {
        return COMMA.matcher(units(fractions(written))).replaceAll(".");
    }

    /** The same for a formula, with stars for the signs of a product; commas that part the values of a function stay. */
    public static String formula(String written) {
        String spelt = units(fractions(written)).replace('−', '-').replace('–', '-').replace('÷', '/');
        String decimals = spelt.matches("(?s).*[a-z]\\s*\\(.*") ? spelt : COMMA.matcher(spelt).replaceAll(".");
        return TIMES.matcher(decimals).replaceAll(Handwritten::product);
    }

    /** An x within a word is a letter of it. */
    private static String product(MatchResult sign) {
        boolean apart = !sign.group(1).isEmpty() && !sign.group(2).isEmpty() || !sign.group().contains("x");
        return Matcher.quoteReplacement(apart ? " * " : sign.group());
    }

    private static String fractions(String written) {
        String spaced = VULGAR.matcher(written.replace('\u00A0', ' ').replace('\u202F', ' '))
                .replaceAll(m -> m.group(1) + (m.group(1).isEmpty() ? "" : " ") + Normalizer.normalize(m.group(2), Normalizer.Form.NFKC).replace('\u2044', '/'));
        return PART.matcher(spaced).replaceAll(m -> Matcher.quoteReplacement(decimal(m)));
    }

    /** As it stands where it has no end, such as 1/3. */
    private static String decimal(MatchResult part) {
        BigDecimal below = new BigDecimal(part.group(3));
        if (below.signum() == 0) {
            return part.group();
        }
        try {
            BigDecimal whole = part.group(1) == null ? BigDecimal.ZERO : new BigDecimal(part.group(1));
            return whole.add(new BigDecimal(part.group(2)).divide(below)).toPlainString();
        } catch (ArithmeticException e) {
            return part.group();
        }
    }

    private static String units(String written) {
        return NUMBER_AND_WORD.matcher(written).replaceAll(m -> Matcher.quoteReplacement(m.group(1) + (m.group(2).isEmpty() ? " " : m.group(2)) + symbol(m.group(3))));
    }

    /** The symbol of a unit by its word; the word itself where it is none. */
    private static String symbol(String word) {
        String bare = word.toLowerCase(Locale.ROOT).replaceAll("[. ]", "");
        boolean known = Unit.of(word).isPresent();
        return known ? word : UNITS.getOrDefault(bare, Unit.of(bare).isPresent() ? bare : word);
    }
}
