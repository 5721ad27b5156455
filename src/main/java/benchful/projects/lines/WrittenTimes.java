package benchful.projects.lines;

import benchful.web.Times;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The times of a step as they are written: {@code 10 min}, {@code 4-6-10 min each}, {@code 4/6/10 min x 5}, {@code 30 s to 1 min to 2 min}.
 *
 * @param times one to three, from quick to slow
 * @param repeats how often, as written; null where nothing is said
 * @param each whether it says that the time is of one of several
 */
record WrittenTimes(List<Duration> times, String repeats, boolean each) {
    private static final String UNIT = "(?:days?|d|hours?|hrs?|h|minutes?|mins?|min\\.?|m|seconds?|secs?|s|['′])";
    private static final String NUMBER = "\\d{1,6}(?:[.,]\\d{1,3})?(?: \\d/\\d)?";
    private static final String TIME = "(?:\\d{1,3}:\\d\\d(?::\\d\\d)?(?: ?(?:h|min)\\b)?|[¼-¾] ?" + UNIT + "(?![\\w])|" + NUMBER + "[¼-¾]?(?: ?" + UNIT + "(?![\\w]))?(?: ?\\d{1,4} ?" + UNIT + "(?![\\w])){0,2})";
    /** Numbers need a unit at the end, or they could be anything. */
    private static final String SPAN = "(?:(?:about|approx\\.?|ca\\.?|c\\.|~|usually) ?)?(" + TIME + "(?: ?(?:-|–|/|\\bto\\b|\\.\\.) ?" + TIME + "){0,2})";
    private static final String AFTER = "(?: ?(each|apiece|per piece|per one))?(?: ?[x×*] ?(\\S.*?)| (\\d{1,4}) times)?";
    private static final Pattern WHOLE = Pattern.compile("(?i)(?:(\\d{1,4}) ?(?:[x×]|times) ?)?" + SPAN + AFTER);
    private static final Pattern END = Pattern.compile("(?i)(.*?[^\\s:(–-])[\\s:(–-]+(" + SPAN + "(?: ?(?:each|apiece|per piece))?(?: ?[x×] ?\\S+)?)\\)?\\.?");
    private static final Pattern BEGINNING = Pattern.compile("(?i)(" + SPAN + ")[\\s:–-]+(\\p{L}.*)");
    private static final Pattern ONE = Pattern.compile("(?i)" + TIME);
    private static final Pattern UNITED = Pattern.compile("(?i).*?(" + UNIT + ")$");
    private static final int LONGEST = 300;

    /** A time at the end or at the beginning of other words. */
    record Beside(String words, String time) {}

    /** The words as a whole; nothing where they are something else. */
    static Optional<WrittenTimes> of(String words) {
        Matcher m = WHOLE.matcher(words);
        if (words.length() > LONGEST || !m.matches()) {
            return Optional.empty();
        }
        String repeats = m.group(4) != null ? m.group(4) : m.group(5) != null ? m.group(5) : m.group(1);
        return times(m.group(2)).map(times -> new WrittenTimes(times, repeats, m.group(3) != null));
    }

    static Optional<Beside> within(String words) {
        Matcher end = END.matcher(words);
        if (words.length() <= LONGEST && end.matches() && of(end.group(2)).isPresent()) {
            return Optional.of(new Beside(end.group(1).strip(), end.group(2)));
        }
        Matcher beginning = BEGINNING.matcher(words);
        return words.length() <= LONGEST && beginning.matches() && of(beginning.group(1)).isPresent()
                ? Optional.of(new Beside(beginning.group(3).strip(), beginning.group(1))) : Optional.empty();
    }

    private static Optional<List<Duration>> times(String span) {
        List<String> written = new ArrayList<>();
        ONE.matcher(span).results().forEach(m -> written.add(m.group().strip()));
        String last = written.get(written.size() - 1);
        Matcher unit = UNITED.matcher(last);
        if (!unit.matches() && !last.contains(":")) {
            return Optional.empty();
        }
        try {
            List<Duration> times = new ArrayList<>();
            for (String time : written) {
                boolean bare = unit.matches() && !time.contains(":") && !UNITED.matcher(time).matches();
                times.add(Times.parse((bare ? time + " " + unit.group(1) : time).replaceAll("(?i)(?<=[\\d ])m$", "min")));
            }
            return Optional.of(times);
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.empty();
        }
    }

    /** The quick, usual and slow time; of one or two the rest is a guess, and the reader says so. */
    List<Duration> three() {
        return switch (times.size()) {
            case 1 -> List.of(round(times.get(0).multipliedBy(2).dividedBy(3)), times.get(0), round(times.get(0).multipliedBy(3).dividedBy(2)));
            case 2 -> List.of(times.get(0), round(times.get(0).plus(times.get(1)).dividedBy(2)), times.get(1));
            default -> times;
        };
    }

    /** To whole minutes from three minutes on, else to ten seconds. */
    private static Duration round(Duration time) {
        long step = time.toSeconds() >= 180 ? 60 : 10;
        return Duration.ofSeconds(Math.max(1, (time.toSeconds() + step / 2) / step) * step);
    }

    /** As lines give the times of a row; empty where there are none that can be read. */
    static String written(JsonNode row) {
        List<String> typed = row.has("student")
                ? List.of(row.at("/student/quick").asText(), row.at("/student/usual").asText(), row.at("/student/slow").asText())
                : List.of(row.path("lasts").asText());
        try {
            return written(typed.stream().map(Times::parse).toList());
        } catch (IllegalArgumentException | ArithmeticException e) {
            return "";
        }
    }

    private static String written(List<Duration> times) {
        boolean minutes = times.stream().allMatch(t -> t.toSeconds() % 60 == 0 && !t.isNegative() && t.toMinutes() < 600);
        return minutes ? times.stream().map(t -> String.valueOf(t.toMinutes())).collect(Collectors.joining("-")) + " min"
                : times.stream().map(Times::words).collect(Collectors.joining(" to "));
    }
}
