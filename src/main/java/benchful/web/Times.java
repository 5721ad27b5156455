package benchful.web;

import benchful.core.quantity.Handwritten;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times as a tutor writes them: {@code 20 min}, {@code 1 h 30 min}, {@code 1.5 h}, {@code 1:30}, {@code 24 h}, {@code 90 s}, {@code 2 d}. */
public final class Times {
    private static final String NUMBER = "(\\d{1,7}+(?:[.,]\\d{1,4}+)?+)\\s*+";
    /** No part is ever taken back, or a long row of blanks would be tried in every division among the parts. */
    private static final Pattern WRITTEN = Pattern.compile("\\s*+-?+\\s*+(?:" + NUMBER + "d(?:ays?+)?+)?+"
            + "\\s*+(?:" + NUMBER + "h(?:(?:ou)?+rs?+)?+\\.?+)?+"
            + "\\s*+(?:" + NUMBER + "(?:min(?:utes?+|s)?+\\.?+|['′]))?+"
            + "\\s*+(?:" + NUMBER + "s(?:ec(?:onds?+|s)?+)?+\\.?+)?+\\s*+");
    /** Hours and minutes as a clock shows them; minutes and seconds where it says so. */
    private static final Pattern CLOCK = Pattern.compile("\\s*+(-?+)(\\d{1,3}+):([0-5]\\d)(?::([0-5]\\d))?+\\s*+(h|min)?+\\s*+");
    private static final int LONGEST = 200;
    private static final int MINUTE = 60;
    private static final int HOUR = 3600;
    private static final int DAY = 86_400;
    private static final int HOURS_UP_TO = 96;

    private Times() {}

    /**
     * A bare number counts minutes; a minus before the whole makes a gap an overlap. Parts of a second are rounded half up.
     *
     * @throws IllegalArgumentException with a sentence for the writer
     */
    public static Duration parse(String written) {
        String spelt = written.length() > LONGEST ? written : Handwritten.amount(written);
        if (spelt.matches("\\s*\\d{1,6}(\\.\\d{1,4})?\\s*")) {
            return time(spelt.strip(), MINUTE);
        }
        Matcher clock = CLOCK.matcher(spelt);
        if (clock.matches()) {
            return clock(clock);
        }
        Matcher m = WRITTEN.matcher(spelt);
        if (spelt.length() > LONGEST || spelt.chars().noneMatch(c -> c >= '0' && c <= '9') || !m.matches()) {
            throw new IllegalArgumentException(
                    "“%s” is not a time. Write it like 20 min, 1 h 30 min, 24 h or 90 s.".formatted(Sentence.quoted(written)));
        }
        Duration time = time(m.group(1), DAY).plus(time(m.group(2), HOUR)).plus(time(m.group(3), MINUTE)).plus(time(m.group(4), 1));
        return spelt.strip().startsWith("-") ? time.negated() : time;
    }

    private static Duration clock(Matcher clock) {
        boolean minutes = "min".equals(clock.group(5));
        Duration time = minutes ? time(clock.group(2), MINUTE).plus(time(clock.group(3), 1))
                : time(clock.group(2), HOUR).plus(time(clock.group(3), MINUTE)).plus(time(clock.group(4), 1));
        return clock.group(1).isEmpty() ? time : time.negated();
    }

    /** Hours are kept as hours up to four days ("72 h"), which come as days ("7 days", "4 days 21 h"); less than a second is "0 min". */
    public static String words(Duration time) {
        if (time.toSeconds() == 0) {
            return "0 min";
        }
        StringBuilder words = new StringBuilder();
        boolean days = Math.abs(time.toHours()) >= HOURS_UP_TO;
        add(words, days ? time.toDaysPart() : 0, "days");
        add(words, days ? time.toHoursPart() : time.toHours(), "h");
        add(words, time.toMinutesPart(), "min");
        add(words, time.toSecondsPart(), "s");
        return (time.isNegative() ? "-" : "") + words.toString().strip();
    }

    private static void add(StringBuilder words, long number, String unit) {
        if (number != 0) {
            words.append(Math.abs(number)).append(' ').append(unit).append(' ');
        }
    }

    private static Duration time(String number, int seconds) {
        return number == null ? Duration.ZERO
                : Duration.ofSeconds(new BigDecimal(number.replace(',', '.')).multiply(BigDecimal.valueOf(seconds)).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }
}
