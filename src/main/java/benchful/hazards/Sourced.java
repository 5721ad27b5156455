package benchful.hazards;

import io.quarkus.qute.TemplateData;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which statements of a hazard a published source stands behind. A source says first what it is for, as in
 * {@code Cautions 1-3, 5; first response 2; age: HSE, ...}; what only common practice or memory stands for counts as without.
 */
public final class Sourced {
    private static final Pattern LINE = Pattern.compile("([A-Za-z][A-Za-z0-9 ,;-]*?): (.+)");
    private static final Pattern PART = Pattern.compile("(cautions?|first response|statements|age)((?: \\d{1,3}(?:-\\d{1,3})?,?)*+)");
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,3})(?:-(\\d{1,3}))?");

    private final HazardSpec sheet;
    private final Set<String> covered = new HashSet<>();
    private boolean told;

    private Sourced(HazardSpec sheet) {
        this.sheet = sheet;
        sheet.sources().forEach(this::read);
    }

    public static Sourced of(HazardSpec sheet) {
        return new Sourced(sheet);
    }

    /** A statement as the hazard's page shows it. */
    @TemplateData
    public record Line(String text, boolean practice) {}

    /** Whether the sources say at all what each is for; where a tutor's own do not, nothing is marked. */
    public boolean told() {
        return told;
    }

    public List<Line> cautions() {
        return lines("caution", sheet.cautions());
    }

    public List<Line> firstResponse() {
        return lines("first response", sheet.firstResponse());
    }

    /** Statements that a published source stands behind. */
    public int with() {
        return (int) kinds().filter(covered::contains).count();
    }

    /** Statements of the hazard: each caution, each first response, the label's statements together, and the age. */
    public int all() {
        return (int) kinds().count();
    }

    private Stream<String> kinds() {
        Stream<String> single = Stream.of(sheet.ghs().isEmpty() ? null : "statements", sheet.minimumAge() == null ? null : "age").filter(kind -> kind != null);
        return Stream.of(keys("caution", sheet.cautions()), keys("first response", sheet.firstResponse()), single).flatMap(keys -> keys);
    }

    private static Stream<String> keys(String kind, List<String> texts) {
        return IntStream.rangeClosed(1, texts.size()).mapToObj(n -> kind + n);
    }

    private List<Line> lines(String kind, List<String> texts) {
        return IntStream.range(0, texts.size()).mapToObj(i -> new Line(texts.get(i), told && !covered.contains(kind + (i + 1)))).toList();
    }

    private void read(String source) {
        Matcher line = LINE.matcher(source);
        if (!line.matches()) {
            return;
        }
        boolean published = !line.group(2).contains("no source") && !line.group(2).contains("from memory");
        for (String part : line.group(1).toLowerCase(Locale.ROOT).split("; ?")) {
            Matcher about = PART.matcher(part.strip());
            if (about.matches()) {
                told = true;
                cover(published, about.group(1).startsWith("caution") ? "caution" : about.group(1), about.group(2));
            }
        }
    }

    private void cover(boolean published, String kind, String numbers) {
        if (published && numbers.isEmpty()) {
            covered.add(kind);
        }
        Matcher each = NUMBERS.matcher(numbers);
        while (published && each.find()) {
            int first = Integer.parseInt(each.group(1));
            int last = each.group(2) == null ? first : Integer.parseInt(each.group(2));
            IntStream.rangeClosed(first, last).forEach(n -> covered.add(kind + n));
        }
    }
}
