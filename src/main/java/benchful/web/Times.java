package benchful.web;

import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times as a tutor writes them: {@code 20 min}, {@code 1 h 30 min}, {@code 24 h}, {@code 90 s}, {@code 2 d}. */
public final class Times {
    /** No part is ever taken back, or a long row of blanks would be tried in every division among the parts. */
    private static final Pattern WRITTEN = Pattern.compile("\\s*+-?+\\s*+(?:(\\d{1,4}+)\\s*+d(?:ays?+)?+)?+"
            + "\\s*+(?:(\\d{1,5}+)\\s*+h(?:ours?+)?+)?+"
            + "\\s*+(?:(\\d{1,6}+)\\s*+min(?:utes?+|s)?+)?+"
            + "\\s*+(?:(\\d{1,7}+)\\s*+s(?:ec(?:onds?+)?+)?+)?+\\s*+");

    private Times() {}

    /**
     * A bare number counts minutes; a minus before the whole makes a gap an overlap.
     *
     * @throws IllegalArgumentException with a sentence for the writer
     */
    public static Duration parse(String written) {
        if (written.matches("\\s*\\d{1,6}\\s*")) {
            return Duration.ofMinutes(Long.parseLong(written.strip()));
        }
        Matcher m = WRITTEN.matcher(written);
        if (written.chars().noneMatch(c -> c >= '0' && c <= '9') || !m.matches()) {
            throw new IllegalArgumentException(
                    "“%s” is not a time. Write it like 20 min, 1 h 30 min, 24 h or 90 s.".formatted(Sentence.quoted(written)));
        }
        Duration time = Duration.ofDays(part(m, 1)).plusHours(part(m, 2)).plusMinutes(part(m, 3)).plusSeconds(part(m, 4));
        return written.strip().startsWith("-") ? time.negated() : time;
    }

    /** Whole hours are kept as hours up to any number ("72 h"); less than a second is "0 min". */
    public static String words(Duration time) {
        if (time.toSeconds() == 0) {
            return "0 min";
        }
        StringBuilder words = new StringBuilder();
        add(words, time.toHours(), "h");
        add(words, time.toMinutesPart(), "min");
        add(words, time.toSecondsPart(), "s");
        return (time.isNegative() ? "-" : "") + words.toString().strip();
    }

    private static void add(StringBuilder words, long number, String unit) {
        if (number != 0) {
            words.append(Math.abs(number)).append(' ').append(unit).append(' ');
        }
    }

    private static long part(Matcher m, int group) {
        return m.group(group) == null ? 0 : Long.parseLong(m.group(group));
    }
}
