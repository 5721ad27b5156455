package benchful.core.quantity;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A sentence that explains a number. Its amounts stay amounts, so that a reader of inches is told inches.
 *
 * @param pattern the words, with <code>{0}</code>, <code>{1}</code>... where the amounts stand
 */
public record Sentence(String pattern, List<Quantity> amounts) {
    private static final int LONGEST_QUOTED = 80;

    public Sentence {
        amounts = List.copyOf(amounts);
    }

    /** @param words with {@code %s} for each part; parts that are quantities are kept, others written out */
    public static Sentence of(String words, Object... parts) {
        List<Quantity> amounts = new ArrayList<>();
        Object[] written = parts.clone();
        for (int i = 0; i < parts.length; i++) {
            if (parts[i] instanceof Quantity q) {
                written[i] = "{" + amounts.size() + "}";
                amounts.add(q);
            }
        }
        return new Sentence(words.formatted(written), amounts);
    }

    /** The sentence with each amount written by {@code writer}. */
    public String text(Function<Quantity, String> writer) {
        String text = pattern;
        for (int i = 0; i < amounts.size(); i++) {
            text = text.replace("{" + i + "}", writer.apply(amounts.get(i)));
        }
        return text;
    }

    /** What somebody wrote, cut short where it would fill the sentence that quotes it. */
    public static String quoted(String written) {
        return written.length() <= LONGEST_QUOTED ? written : written.substring(0, written.offsetByCodePoints(0, LONGEST_QUOTED / 2)) + "…";
    }

    /** A name in quotation marks, unless it brings marks of its own. */
    public static String named(String name) {
        return name.contains("“") ? name : "“%s”".formatted(name);
    }

    /** In metric units, rounded for reading: to a tenth of a millimetre, a hundredth of a gram. */
    @Override
    public String toString() {
        return text(Sentence::metric);
    }

    private static String metric(Quantity q) {
        Quantity held = q.in(Unit.held(q.dimension()).orElse(q.unit()));
        boolean metres = held.unit() == Unit.MM && held.compareTo(Quantity.of(1, Unit.M)) >= 0;
        return metres ? held.in(Unit.M).rounded(3, RoundingMode.HALF_UP).toString() : held.rounded(places(held.unit()), RoundingMode.HALF_UP).toString();
    }

    private static int places(Unit held) {
        return held == Unit.MM || held == Unit.ML ? 1 : 2;
    }
}
