package benchful.lives;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Unit;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Seeded choices, with the least and the greatest more often than an even hand would draw them. */
final class Chance {
    private static final int NINE_IN_TEN = 9;

    private final Random random;

    Chance(long seed) {
        this.random = new Random(seed);
    }

    boolean once(int times) {
        return random.nextInt(times) == 0;
    }

    boolean mostly() {
        return random.nextInt(10) < NINE_IN_TEN;
    }

    @SafeVarargs
    final <T> T of(T... these) {
        return these[random.nextInt(these.length)];
    }

    <T> T of(List<T> these) {
        return these.get(random.nextInt(these.size()));
    }

    /** From least to most, both included. */
    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    /** An ordinary number mostly, now and then the least or the greatest that is allowed. */
    int edge(int least, int ordinary, int most) {
        return once(6) ? least : once(12) ? most : between(least, ordinary);
    }

    /** A list of none, one or a few, and seldom of as many as are allowed. */
    <T> List<T> few(int least, int ordinary, int most, IntFunction<T> made) {
        int count = once(60) ? most : between(least, ordinary);
        return IntStream.range(0, count).mapToObj(made).toList();
    }

    /** Words of any length up to {@code most}: plain, with marks that HTML, YAML, CSV and formulas know, of other scripts. */
    String words(int most) {
        String text = of("A plain line", "x", "“Quoted” & <b>marked</b> {curly} {#if}", "=1+2", "Größe Ø 3 × 4", "結び目", "سلسلة", "- a list\n- of two\n\n# Heading",
                "'; drop table bench; --", "null", "a\tb", "~0/~1 % %s ${x}", "🧵 needle", "word ".repeat(most / 5 + 1));
        String line = most > 300 ? text : text.replaceAll("[\\n\\t]", " ");
        String fitting = line.length() > most ? line.substring(0, line.offsetByCodePoints(0, line.codePointCount(0, most))) : line;
        return fitting.isBlank() || Character.isHighSurrogate(fitting.charAt(fitting.length() - 1)) ? "x" : fitting.strip();
    }

    Unit unit(Dimension dimension) {
        return of(Unit.measured().stream().filter(u -> u.dimension().equals(dimension) && u != Unit.PERCENT).toList());
    }

    /** More than nothing, in any unit of the kind. */
    String amount(Dimension dimension) {
        return of("1", "3", "7.5", "12", "40", "0,25", "1.333333333333", "100") + " " + unit(dimension).symbol();
    }

    String time() {
        return of("1 min", "90 s", "20 min", "1 h 30 min", "5", "10 min", "3 min");
    }
}
