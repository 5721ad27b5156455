package benchful.projects.lines;

import benchful.core.formula.Formula;
import benchful.core.formula.FormulaException;
import benchful.core.quantity.Handwritten;
import benchful.core.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how much of a material a piece takes: a plain amount, a formula, or pieces with their lengths. */
final class Amounts {
    private static final int LONGEST = 500;
    private static final Pattern FORMULA = Pattern.compile("[\\w\\s.+*/()%,²³×·÷−–¼-¾⅐-⅞\"-]+");
    private static final Pattern PIECES = Pattern.compile("(?:cut into |in )?(\\S.*?) ?(?:pieces?|lengths?|strips?|squares?) (?:of |at |each )?(\\S.*)");
    private static final Pattern BY = Pattern.compile("(\\S.*?) by (\\S.*)");
    private static final String NUMBER = "(\\d++(?:[.,]\\d++)?+)\\s*+";
    private static final String UNIT = "((?!x\\b)[A-Za-z]{1,12}+)?+\\s*+";
    private static final Pattern PRODUCT = Pattern.compile(NUMBER + UNIT + "[x×]\\s*+" + NUMBER + UNIT + "(?:[x×]\\s*+" + NUMBER + UNIT + ")?+");
    private static final Pattern SHEET_GOODS = Pattern.compile(
            "(?i).*\\b(paper|card|cardboard|board|cloth|felt|leather|fabric|glass|sheet|lining|canvas|foil|veneer|linen cloth|vellum|plywood|acetate|film|mesh)\\b.*");

    private final Vocabulary known;

    Amounts(Vocabulary known) {
        this.known = known;
    }

    /**
     * @param width null where it is no rectangle
     * @param pieces null where it is not cut
     * @param doubt null where there is none
     */
    record Amount(String amount, String width, String pieces, String doubt) {}

    /** @param material whose name tells whether it comes in sheets */
    Optional<Amount> read(String written, String material) {
        String words = written.strip();
        if (words.isEmpty() || words.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher pieces = PIECES.matcher(words);
        if (pieces.matches()) {
            Optional<String> number = formula(pieces.group(1));
            Optional<Amount> each = number.isEmpty() ? Optional.empty() : extent(pieces.group(2));
            if (each.isPresent()) {
                return each.map(e -> new Amount(e.amount, e.width, number.get(), null));
            }
        }
        Matcher product = PRODUCT.matcher(words);
        return product.matches() ? Optional.of(product(product, material)) : extent(words).map(e -> e.width == null ? e : new Amount(e.amount, e.width, "1", null));
    }

    private Optional<Amount> extent(String words) {
        Matcher by = BY.matcher(words);
        if (by.matches()) {
            Optional<String> length = formula(by.group(1));
            Optional<String> width = formula(by.group(2));
            return length.isEmpty() || width.isEmpty() ? Optional.empty() : Optional.of(new Amount(inUnitOf(length.get(), width.get()), width.get(), null, null));
        }
        Matcher product = PRODUCT.matcher(words);
        if (product.matches() && product.group(5) == null && product.group(4) != null) {
            return Optional.of(rectangle(product, 1));
        }
        return formula(words).map(f -> new Amount(f, null, null, null));
    }

    /** "20 x 15 cm" is a piece, "2 x 30 cm" two of a length, "2 x 20 x 15 cm" two pieces. */
    private static Amount product(Matcher m, String material) {
        if (m.group(4) == null && m.group(2) == null && m.group(5) == null) {
            return new Amount(plain(m.group(1)) + " * " + plain(m.group(3)), null, null, null);
        }
        if (m.group(5) != null) {
            Amount each = rectangle(m, 3);
            return new Amount(each.amount, each.width, plain(m.group(1)), null);
        }
        boolean sure = m.group(2) != null;
        if (m.group(4) == null) {
            String each = amount(m.group(1), m.group(2));
            return new Amount(each, null, plain(m.group(3)), sure ? "Taken as %s pieces of %s. Write “%s: %s” where it is so many of that size.".formatted(
                    plain(m.group(3)), each, (material + " " + each).strip(), plain(m.group(3))) : null);
        }
        if (sure || SHEET_GOODS.matcher(material).matches()) {
            Amount each = rectangle(m, 1);
            return new Amount(each.amount, each.width, "1",
                    sure ? null : "Taken as one piece of %s by %s. Write “%s pieces of %s” where it is that.".formatted(each.amount, each.width, plain(m.group(1)), each.width));
        }
        String length = amount(m.group(3), m.group(4));
        return new Amount(length, null, plain(m.group(1)), "Taken as %s pieces of %s. Write “%s by %s” where it is a rectangle.".formatted(
                plain(m.group(1)), length, amount(m.group(1), m.group(4)), length));
    }

    private static Amount rectangle(Matcher m, int first) {
        String unit = m.group(first + 1) == null ? m.group(first + 3) : m.group(first + 1);
        String other = m.group(first + 3) == null ? unit : m.group(first + 3);
        return new Amount(amount(m.group(first), unit), amount(m.group(first + 2), other), null, null);
    }

    private static String amount(String number, String unit) {
        return Handwritten.amount(unit == null ? number : number + " " + unit);
    }

    private static String plain(String number) {
        return number.replace(',', '.');
    }

    /** "12 by 9 cm": a bare number has the unit of the other. */
    private static String inUnitOf(String length, String width) {
        String unit = width.replaceFirst("^[\\d.]+\\s*", "");
        return length.matches("[\\d.]+") && Unit.of(unit).isPresent() ? length + " " + unit : length;
    }

    /** Whether numbers and words stand beside each other with no sign between, as in the name of a thread. */
    static boolean isRow(String words) {
        String spelt = Handwritten.amount(words).replaceAll(" [x×·] ", "*").replaceAll("(\\d) ([A-Za-z]+[23]?)(?![\\w(])", "$1");
        return spelt.matches(".*[\\w.)\"] +[\\w.(].*") && !PIECES.matcher(words).matches() && !BY.matcher(words).matches();
    }

    /** A sum or product with a word that is no measure yet. */
    Optional<Amount> withUnknown(String written) {
        String words = spelt(written.strip());
        if (words.isEmpty() || words.length() > LONGEST || !FORMULA.matcher(words).matches() || !words.matches(".*\\d.*[ )][+*/-] .*")) {
            return Optional.empty();
        }
        try {
            List<String> unknown = Formula.of(words).names().stream().filter(n -> !known.knows(Set.of(n))).toList();
            boolean names = unknown.stream().allMatch(n -> n.matches("[a-z][a-z0-9_]{0,39}"));
            return names ? Optional.of(new Amount(words, null, null,
                    "“%s” is no measure yet. Write it in the sizes, such as “Small: %s 15 cm”.".formatted(String.join("”, “", unknown), unknown.get(0)))) : Optional.empty();
        } catch (FormulaException e) {
            return Optional.empty();
        }
    }

    /** As formulas are stored; nothing where it is none. */
    Optional<String> formula(String written) {
        String words = written.strip();
        if (words.isEmpty() || words.length() > LONGEST || !FORMULA.matcher(words).matches()) {
            return Optional.empty();
        }
        return valid(words) ? Optional.of(words) : Optional.of(spelt(words)).filter(this::valid);
    }

    private String spelt(String words) {
        String spelt = words;
        for (var measure : known.spoken().entrySet()) {
            spelt = spelt.replaceAll("(?i)(?<![\\w])" + Pattern.quote(measure.getKey()) + "(?![\\w])", Matcher.quoteReplacement(measure.getValue()));
        }
        return Handwritten.formula(spelt).strip();
    }

    private boolean valid(String words) {
        try {
            Formula formula = Formula.of(words);
            boolean counts = words.chars().anyMatch(Character::isDigit) || formula.names().stream().anyMatch(known::names) || words.contains("_");
            return counts && known.knows(formula.names());
        } catch (FormulaException e) {
            return false;
        }
    }
}
