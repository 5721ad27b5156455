package benchful.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How days, clocks, amounts and the program's own words are written on pages and paper. One tutor has one installation, so one
 * writing stands for the whole process: the studio's, read at the start and when it is changed. Files and the API know nothing of it.
 */
public enum Writing {
    BRITISH(Locale.UK, "en", "EEE d MMM yyyy", "d MMM", "HH:mm"),
    AMERICAN(Locale.US, "en-US", "EEE, MMM d, yyyy", "MMM d", "h:mm\u00a0a");

    private static volatile Writing current = BRITISH;

    private final Locale locale;
    private final String language;
    private final DateTimeFormatter day;
    private final DateTimeFormatter shortDay;
    private final DateTimeFormatter clock;

    Writing(Locale locale, String language, String day, String shortDay, String clock) {
        this.locale = locale;
        this.language = language;
        this.day = DateTimeFormatter.ofPattern(day, locale);
        this.shortDay = DateTimeFormatter.ofPattern(shortDay, locale);
        this.clock = DateTimeFormatter.ofPattern(clock, locale);
    }

    /** The one that applies. */
    public static Writing current() {
        return current;
    }

    /** From now on this one applies. */
    public static void use(Writing writing) {
        current = writing;
    }

    public Locale locale() {
        return locale;
    }

    /** As pages and print-outs say it of themselves, after BCP 47. */
    public String language() {
        return language;
    }

    DateTimeFormatter day() {
        return day;
    }

    DateTimeFormatter shortDay() {
        return shortDay;
    }

    DateTimeFormatter clock() {
        return clock;
    }

    /** Words of the program as this writing spells them; never for what a person typed. */
    public String spelt(String words) {
        return this == BRITISH ? words : American.spelt(words);
    }

    /** The same of a sentence that quotes what a person typed “like this”: that stays as it is. */
    public String speltAroundQuotes(String words) {
        return this == BRITISH ? words : American.around(words);
    }

    /** The words that {@link Spelling} spells otherwise, found within whole texts. */
    private static final class American {
        private static final Pattern QUOTED = Pattern.compile("“[^”]*+”");

        private static final Map<String, String> WORDS = read();
        private static final Pattern WORD = Pattern.compile("(?<![\\p{L}/_-])\\p{L}+(?![\\p{L}_])");

        static String spelt(String words) {
            return WORD.matcher(words).replaceAll(found -> Matcher.quoteReplacement(word(found.group())));
        }

        static String around(String words) {
            StringBuilder all = new StringBuilder();
            int from = 0;
            for (MatchResult quoted : (Iterable<MatchResult>) QUOTED.matcher(words).results()::iterator) {
                all.append(spelt(words.substring(from, quoted.start()))).append(quoted.group());
                from = quoted.end();
            }
            return all.append(spelt(words.substring(from))).toString();
        }

        private static String word(String word) {
            String other = WORDS.get(word);
            if (other != null) {
                return other;
            }
            String small = WORDS.get(Formats.small(word));
            return small == null ? word : Formats.capital(small);
        }

        private static Map<String, String> read() {
            Properties words = new Properties();
            try (InputStream in = Writing.class.getResourceAsStream("/messages/spelling_en-US.properties")) {
                words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return words.entrySet().stream().collect(Collectors.toMap(word -> (String) word.getKey(), word -> (String) word.getValue()));
        }
    }
}
