package benchful.core.quantity;

import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sentence that explains a number. Its amounts and moments stay what they are, so that a reader of inches is told inches, and one of a 12-hour clock its hours.
 *
 * @param pattern the words, with <code>{0}</code>, <code>{1}</code>... where the values stand
 * @param values  each a {@link Quantity}, {@link LocalTime} or {@link LocalDateTime}
 */
public record Sentence(String pattern, List<Object> values) {
    private static final int LONGEST_QUOTED = 80;

    /** Who writes the values of sentences. */
    public interface Pen {
        String words(Quantity amount);

        String words(LocalTime time);

        String words(LocalDateTime moment);
    }

    public Sentence {
        values = List.copyOf(values);
        if (!values.stream().allMatch(Sentence::isValue)) {
            throw new IllegalArgumentException("Nobody writes all of " + values);
        }
    }

    /** @param words with {@code %s} for each part; parts that are amounts or moments are kept, others written out */
    public static Sentence of(String words, Object... parts) {
        List<Object> values = new ArrayList<>();
        return new Sentence(words.formatted(Stream.of(parts).map(part -> kept(part, values)).toArray()), values);
    }

    /** @param words as they are read, whatever they hold */
    public static Sentence plain(String words) {
        return new Sentence(words, List.of());
    }

    /** These one after the other, with something between each two. */
    public static Sentence joined(String between, List<Sentence> parts) {
        List<Object> values = new ArrayList<>();
        return new Sentence(String.join(between, parts.stream().map(part -> (String) kept(part, values)).toList()), values);
    }

    private static Object kept(Object part, List<Object> values) {
        if (part instanceof Sentence within) {
            String words = within.pattern;
            for (int i = within.values.size() - 1; i >= 0; i--) {
                words = words.replace(mark(i), mark(values.size() + i));
            }
            values.addAll(within.values);
            return words;
        }
        if (!isValue(part)) {
            return part;
        }
        values.add(part);
        return mark(values.size() - 1);
    }

    private static boolean isValue(Object part) {
        return part instanceof Quantity || part instanceof LocalTime || part instanceof LocalDateTime;
    }

    private static String mark(int value) {
        return "{" + value + "}";
    }

    /** The sentence with each value written by {@code pen}. */
    public String text(Pen pen) {
        String text = pattern;
        for (int i = 0; i < values.size(); i++) {
            text = text.replace(mark(i), written(values.get(i), pen));
        }
        return text;
    }

    private static String written(Object value, Pen pen) {
        return value instanceof Quantity amount ? pen.words(amount) : value instanceof LocalTime time ? pen.words(time) : pen.words((LocalDateTime) value);
    }

    /** What somebody wrote, cut short where it would fill the sentence that quotes it. */
    public static String quoted(String written) {
        return written.length() <= LONGEST_QUOTED ? written : written.substring(0, written.offsetByCodePoints(0, LONGEST_QUOTED / 2)) + "…";
    }

    /** A name in quotation marks, unless it brings marks of its own. */
    public static String named(String name) {
        return name.contains("“") ? name : "“%s”".formatted(name);
    }

    /** As programs read it: in metric units, rounded for reading to a tenth of a millimetre or a hundredth of a gram, and moments after ISO 8601. */
    @Override
    public String toString() {
        return text(new Iso());
    }

    private static final class Iso implements Pen {
        @Override
        public String words(Quantity amount) {
            return metric(amount);
        }

        @Override
        public String words(LocalTime time) {
            return time.toString();
        }

        @Override
        public String words(LocalDateTime moment) {
            return moment.toLocalDate() + " " + moment.toLocalTime();
        }
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
