package benchful.projects.lines;

import benchful.core.quantity.Handwritten;
import benchful.core.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * {@code Small: height 14.8 cm, width 10.5 cm}. Measures are keyed here by their words; which of the sheet they are is found when
 * the rows are put into it. The first line of a table may name them for all.
 */
final class SizeLines implements LineKind {
    private static final Pattern VALUE = Pattern.compile("(?:(\\p{L}.*?|\"(?:[^\"]|\"\")*\") ?[:=]? ?)?(\\d[\\d.,/ ¼-¾⅐-⅞]*|[¼-¾⅐-⅞])\\s*([A-Za-z\"″²³%][\\w²³]*)?");
    private static final Pattern NAMED = Pattern.compile("([^:]*?\\S) ?(?::| [-–—]) +(\\S.*)");

    @Override
    public String list() {
        return "/sizes";
    }

    @Override
    public String name() {
        return "name";
    }

    /** Below the headings of a table, each cell is written with its heading. */
    @Override
    public List<Entry> entries(String box) {
        List<Entry> entries = Entry.of(box, false);
        List<String> head = entries.isEmpty() ? List.of() : cells(entries.get(0));
        boolean table = head.size() > 1 && entries.size() > 1 && head.stream().noneMatch(c -> c.replaceAll("\\(.*?\\)", "").matches(".*\\d.*"));
        return table ? entries.stream().skip(1).map(e -> headed(e, head)).toList() : entries;
    }

    private static List<String> cells(Entry entry) {
        return entry.head().indexOf('\t') < 0 ? List.of() : Arrays.stream(entry.head().split("\t", -1)).map(String::strip).toList();
    }

    private static Entry headed(Entry entry, List<String> head) {
        List<String> cells = cells(entry);
        StringBuilder line = new StringBuilder(cells.isEmpty() ? entry.head() : cells.get(0));
        for (int i = 1; i < cells.size(); i++) {
            String heading = i < head.size() ? head.get(i) : "";
            Matcher unit = Pattern.compile("(.*?) ?[(\\[](\\w{1,5})[)\\]]").matcher(heading);
            String with = unit.matches() && cells.get(i).matches("[\\d.,]+") ? " " + unit.group(2) : "";
            line.append('\t').append(unit.matches() ? unit.group(1) : heading).append(' ').append(cells.get(i)).append(with);
        }
        return new Entry(entry.text(), line.toString(), entry.below());
    }

    @Override
    public LineRow read(Entry entry, Vocabulary known) {
        LineRow line = new LineRow();
        ObjectNode measures = line.row.objectNode();
        List<Segment> segments = Segment.of(entry.head());
        for (int i = 0; i < segments.size(); i++) {
            Segment s = segments.get(i);
            String written = entry.head().substring(s.from(), s.to()).strip();
            value(i == 0 ? first(s, written, line) : written, known, measures, line);
        }
        if (!measures.isEmpty()) {
            line.row.set("measures", measures);
        }
        return line;
    }

    /** @return what follows the name */
    private static String first(Segment s, String written, LineRow line) {
        if (s.quoted()) {
            line.put("name", "Size", s.text(), s.text());
            return s.rest().replaceFirst("^:\\s*", "");
        }
        Matcher named = NAMED.matcher(written);
        if (named.matches()) {
            line.put("name", "Size", named.group(1), named.group(1));
            return named.group(2);
        }
        line.put("name", "Size", written, written);
        return "";
    }

    private static void value(String written, Vocabulary known, ObjectNode measures, LineRow line) {
        if (written.isEmpty()) {
            return;
        }
        Matcher m = VALUE.matcher(written);
        String words = m.matches() && m.group(1) != null ? Segment.unquoted(m.group(1).strip()) : "";
        if (!m.matches() || words.isEmpty() && measures.size() >= Math.max(1, known.measures().size())) {
            line.append("name", "Size", written, ", ", written);
            return;
        }
        boolean nameless = words.isEmpty();
        String label = nameless ? known.measures().isEmpty() ? "Size" : known.measures().get(measures.size()).label() : words;
        Optional<Vocabulary.Named> measure = known.measure(label);
        String unit = m.group(3) == null ? measure.map(Vocabulary.Named::unit).orElse("") : m.group(3);
        measures.put(measure.map(m2 -> known.measure(m2.label()).filter(m2::equals).isPresent() ? m2.label() : m2.name()).orElse(label), Handwritten.amount((m.group(2).strip() + " " + unit).strip()));
        line.parts.add(new Part("/measures", label, written, nameless ? "What is measured is not said. It was taken for “%s”.".formatted(label) : null));
    }

    /** The unit in which a value is written; nothing where it has none. */
    static Optional<Unit> unit(String value) {
        Matcher m = Pattern.compile("[\\d.\\s]*([A-Za-z]\\w*|%)").matcher(value);
        return m.matches() ? Unit.of(m.group(1)) : Optional.empty();
    }

    @Override
    public Set<String> said(ObjectNode row, Vocabulary known) {
        return Set.of("name", "measures");
    }

    /** Its measures keyed by their words, or by their names where two bear the same words. */
    @Override
    public ObjectNode spoken(ObjectNode row, Vocabulary known) {
        ObjectNode spoken = row.deepCopy();
        ObjectNode measures = spoken.objectNode();
        row.path("measures").properties().forEach(m -> measures.set(known.measures().stream().filter(n -> n.name().equals(m.getKey())).findFirst()
                .map(n -> known.measure(n.label()).filter(n::equals).isPresent() ? n.label() : n.name()).orElse(m.getKey()), m.getValue()));
        return row.has("measures") ? spoken.set("measures", measures) : spoken;
    }

    @Override
    public String written(JsonNode row, Vocabulary known, boolean quoted) {
        List<String> values = new ArrayList<>();
        row.path("measures").properties().forEach(m -> values.add(Segment.quotedIfNeeded(m.getKey(), quoted) + " " + m.getValue().asText()));
        String name = Segment.quotedIfNeeded(row.path("name").asText(), quoted);
        return values.isEmpty() ? name : name + ": " + values.stream().collect(Collectors.joining(", "));
    }
}
