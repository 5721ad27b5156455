package benchful.projects.lines;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** {@code awl}, {@code needle 2}, {@code safety glasses, each their own}. Without a number there are enough. */
final class ToolLines implements LineKind {
    private static final Pattern OWN = Pattern.compile("(?i)(?:each|everybody|everyone|one each|all)(?: student)?(?: has| have| needs?)?(?: (?:their|his|her))?(?: own)?|(?:their )?own");
    private static final Pattern ENOUGH = Pattern.compile("(?i)enough(?: for all)?|plenty");
    private static final Pattern NUMBER = Pattern.compile("(?i)(?:only |there are |i have |we have |have )?(\\d{1,3})(?: pcs| pieces)?(?: in all| in the room| there)?");
    private static final Pattern BEHIND = Pattern.compile("(.*\\p{L}.*?)(?: [x×]|:| -)? (?:only )?\\(?(\\d{1,3})\\)?(?: in all)?");
    private static final Pattern TIMES = Pattern.compile("(.*\\p{L}) [x×] ?(\\d{1,3})");
    private static final Pattern BEFORE = Pattern.compile("(\\d{1,3})(?: ?×| ?x(?= ))? ?(?!mm\\b|cm\\b|m\\b|in\\b|g\\b|ml\\b)(\\p{L}.*)");
    private static final Pattern BRACKETS = Pattern.compile("(.*\\S) ?\\(([^()]+)\\)");
    private static final Pattern HAZARD = Pattern.compile("(?i)(?:hazards?|danger|careful|caution|beware)[: ]+(\\S.*)");

    /** More letters than a name and its number take are a name as they stand: to look for a number in every part of them takes minutes. */
    private static final int LONGEST = 300;

    @Override
    public String list() {
        return "/tools";
    }

    @Override
    public String name() {
        return "name";
    }

    /** Several tools in one line, as in a letter, are a line each. */
    @Override
    public List<Entry> entries(String box) {
        return Entry.of(box, false).stream().flatMap(entry -> parted(entry).stream()).toList();
    }

    private static List<Entry> parted(Entry entry) {
        List<Segment> segments = Segment.isTable(entry.head()) ? List.of() : Segment.of(entry.head());
        boolean several = segments.size() > 1 && segments.stream().allMatch(ToolLines::isTool);
        return several ? segments.stream().map(s -> entry.head().substring(s.from(), s.to()).strip()).map(s -> new Entry(s, s, "")).toList() : List.of(entry);
    }

    private static boolean isTool(Segment s) {
        boolean said = Stream.of(OWN, ENOUGH, NUMBER, HAZARD).anyMatch(p -> p.matcher(s.text()).matches());
        return !said && !s.quoted() && s.text().matches("[\\p{L}\\d].*") && s.text().split("\\s+").length <= 3;
    }

    @Override
    public LineRow read(Entry entry, Vocabulary known) {
        LineRow line = new LineRow();
        List<Segment> segments = Segment.of(entry.head());
        for (int i = 0; i < segments.size(); i++) {
            if (i == 0) {
                first(segments.get(0), line);
            } else {
                further(segments.get(i), known, line);
            }
        }
        return line;
    }

    private static void first(Segment s, LineRow line) {
        if (s.quoted()) {
            line.put("name", "Name", s.text(), s.text());
            if (!s.rest().isEmpty()) {
                line.append("note", "Note", s.rest(), "; ", s.rest());
            }
            return;
        }
        if (s.text().length() > LONGEST) {
            line.put("name", "Name", s.text(), s.text());
            return;
        }
        for (Pattern counted : List.of(TIMES, BEHIND)) {
            Matcher m = counted.matcher(s.text());
            if (m.matches()) {
                named(line, m.group(1), m.group(2));
                return;
            }
        }
        Matcher before = BEFORE.matcher(s.text());
        Matcher brackets = BRACKETS.matcher(s.text());
        if (before.matches()) {
            named(line, before.group(2), before.group(1));
        } else if (brackets.matches()) {
            line.put("name", "Name", brackets.group(1), brackets.group(1));
            line.put("note", "Note", brackets.group(2).strip(), brackets.group(2));
        } else {
            line.put("name", "Name", s.text(), s.text());
        }
    }

    private static void named(LineRow line, String name, String number) {
        line.put("name", "Name", name.strip(), name);
        line.put("owned", "How many there are", String.valueOf(Integer.parseInt(number)), number);
    }

    private static void further(Segment s, Vocabulary known, LineRow line) {
        Matcher number = NUMBER.matcher(s.text());
        Matcher hazard = HAZARD.matcher(s.text());
        Optional<String> id = hazard.matches() ? known.hazard(hazard.group(1)) : Optional.empty();
        if (s.quoted()) {
            line.append("note", "Note", (s.text() + " " + s.rest()).strip(), "; ", s.text() + s.rest());
        } else if (OWN.matcher(s.text()).matches()) {
            line.put("personal", "Each student their own", "true", s.text());
        } else if (number.matches() && !line.has("owned")) {
            line.put("owned", "How many there are", String.valueOf(Integer.parseInt(number.group(1))), s.text());
        } else if (ENOUGH.matcher(s.text()).matches()) {
            line.parts.add(Part.of("", "Enough", s.text()));
        } else if (id.isPresent()) {
            line.row.withArrayProperty("hazards").add(id.get());
            line.parts.add(Part.of("/hazards/" + (line.row.path("hazards").size() - 1), "Hazard", s.text()));
        } else {
            boolean bracketed = s.text().startsWith("(") && s.text().endsWith(")") && s.text().length() > 2;
            line.append("note", "Note", bracketed ? s.text().substring(1, s.text().length() - 1).strip() : s.text(), "; ", s.text());
        }
    }

    @Override
    public Set<String> said(ObjectNode row, Vocabulary known) {
        return known.knowsHazards(row) ? Set.of("name", "owned", "personal", "note", "hazards") : Set.of("name", "owned", "personal", "note");
    }

    @Override
    public String written(JsonNode row, Vocabulary known, boolean quoted) {
        List<String> parts = new ArrayList<>();
        parts.add(Segment.quotedIfNeeded(row.path("name").asText(), quoted));
        if (row.has("owned")) {
            parts.add(row.path("owned").asText() + " in all");
        }
        if (row.path("personal").asBoolean()) {
            parts.add("each their own");
        }
        if (known.knowsHazards(row)) {
            row.path("hazards").forEach(h -> parts.add("hazard " + h.asText()));
        }
        if (row.has("note")) {
            parts.add(quoted ? Segment.quotedIfNeeded(row.path("note").asText(), true) : "(" + row.path("note").asText() + ")");
        }
        return String.join(", ", parts);
    }
}
