package benchful.projects.lines;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * The boxes of a sheet. A line that is as it was keeps its row whole; one that was changed keeps what lines can't say, such as its
 * picture; a new one gets a row of its own, and what it names that is not there yet is put where it belongs.
 */
public final class LineBoxes {
    /** In the order in which they are read: a line may use what those before it name. */
    public static final List<String> LISTS = List.of("/sizes", "/materials", "/tools", "/steps");

    private static final Map<String, LineKind> KINDS =
            List.of(new SizeLines(), new MaterialLines(), new ToolLines(), new StepLines()).stream().collect(Collectors.toMap(LineKind::list, k -> k));

    /** Words that two names may share without meaning the same. */
    private static final Set<String> SMALL = Set.of("the", "a", "an", "of", "and", "to", "in", "on", "with", "for", "it", "all");

    private final ObjectNode sheet;
    private final Vocabulary known;

    /**
     * @param sheet as a form holds it; reading a box changes it
     * @param hazards of the library: their names by the short names that sheets write
     */
    public LineBoxes(ObjectNode sheet, Map<String, String> hazards) {
        this.sheet = sheet;
        this.known = new Vocabulary(sheet, hazards);
    }

    /** A list of the sheet as lines. */
    public String written(String list) {
        LineKind kind = KINDS.get(list);
        return rows(list).stream().map(row -> kind.written(row, known)).filter(line -> !line.isBlank()).collect(Collectors.joining("\n"));
    }

    /** What the line of a row says beside its name, in one line; empty where that is all. */
    public String said(String list, String row) {
        LineKind kind = KINDS.get(list);
        if (!(sheet.at(row) instanceof ObjectNode found)) {
            return "";
        }
        ObjectNode nameless = found.deepCopy();
        nameless.remove(List.of(kind.name(), "text", "kind"));
        return kind.written(kind.spoken(nameless, known), known, false).replaceFirst("^[:, ]+", "");
    }

    /**
     * Puts the rows of a box in place of a list's.
     *
     * @param were the lines that the list's rows were before
     */
    public Understanding read(String list, String box, String were) {
        return new Reading(KINDS.get(list), box, were).done();
    }

    private List<ObjectNode> rows(String list) {
        return StreamSupport.stream(sheet.at(list).spliterator(), false).filter(ObjectNode.class::isInstance).map(ObjectNode.class::cast).toList();
    }

    /** One box that is read. */
    private final class Reading {
        private final LineKind kind;
        private final List<ObjectNode> rows;
        private final List<String> oldLines;
        private final List<Entry> entries;
        private final List<LineRow> read = new ArrayList<>();
        private final Map<Integer, Integer> kept = new HashMap<>();
        private final Set<Integer> free = new TreeSet<>();
        private final Map<String, String> renamed = new HashMap<>();

        Reading(LineKind kind, String box, String were) {
            this.kind = kind;
            this.rows = rows(kind.list());
            this.entries = kind.entries(box);
            List<String> before = kind.entries(were).stream().map(Entry::text).toList();
            this.oldLines = before.size() == rows.size() ? before
                    : rows.stream().map(row -> kind.written(row, known)).map(line -> kind.entries(line).stream().map(Entry::text).collect(Collectors.joining("\n"))).toList();
            for (int i = 0; i < rows.size(); i++) {
                free.add(i);
            }
        }

        Understanding done() {
            unchanged();
            for (int i = 0; i < entries.size(); i++) {
                read.add(kept.containsKey(i) ? null : kind.read(entries.get(i), known));
            }
            changed(this::sameName);
            changed(this::alike);
            List<String> taken = free.stream().map(oldLines::get).filter(line -> !line.isBlank()).toList();
            Set<String> measured = kind.list().equals("/sizes") ? measured() : Set.of();
            ArrayNode list = sheet.putArray(kind.list().substring(1));
            for (int i = 0; i < entries.size(); i++) {
                list.add(row(i));
            }
            settle(list, measured);
            return new Understanding(lines(), taken);
        }

        /** Lines that are as they were, wherever they stand now. */
        private void unchanged() {
            Map<String, List<Integer>> places = new HashMap<>();
            free.forEach(i -> places.computeIfAbsent(oldLines.get(i), line -> new ArrayList<>()).add(i));
            for (int i = 0; i < entries.size(); i++) {
                List<Integer> there = places.getOrDefault(entries.get(i).text(), List.of());
                if (!there.isEmpty()) {
                    kept.put(i, there.get(0));
                    free.remove(there.remove(0));
                }
            }
        }

        private interface Match {
            boolean fits(int entry, int row);
        }

        private void changed(Match match) {
            for (int i = 0; i < entries.size(); i++) {
                int entry = i;
                if (!kept.containsKey(i)) {
                    free.stream().filter(row -> match.fits(entry, row)).findFirst().ifPresent(row -> {
                        kept.put(entry, row);
                        free.remove(row);
                    });
                }
            }
        }

        private boolean sameName(int entry, int row) {
            String name = read.get(entry).row.path(kind.name()).asText();
            return !name.isEmpty() && name.equalsIgnoreCase(rows.get(row).path(kind.name()).asText());
        }

        /** Half of the words of their names are the same, or all of the shorter one's, or all but the names is. */
        private boolean alike(int entry, int row) {
            String name = read.get(entry).row.path(kind.name()).asText();
            String was = rows.get(row).path(kind.name()).asText();
            Set<String> one = words(name);
            Set<String> other = words(was);
            long both = one.stream().filter(other::contains).count();
            String rest = entries.get(entry).text().replace(name, "");
            return both > 0 && (2 * both >= Math.max(one.size(), other.size()) || both == Math.min(one.size(), other.size())) || rest.length() > 10 && rest.equals(oldLines.get(row).replace(was, ""));
        }

        private static Set<String> words(String line) {
            return Arrays.stream(line.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")).filter(w -> !w.isEmpty() && !SMALL.contains(w)).collect(Collectors.toSet());
        }

        private ObjectNode row(int entry) {
            LineRow line = read.get(entry);
            if (line == null) {
                return rows.get(kept.get(entry));
            }
            if (!kept.containsKey(entry)) {
                return line.row;
            }
            ObjectNode before = rows.get(kept.get(entry));
            String was = before.path(kind.name()).asText();
            ObjectNode row = before.deepCopy();
            kind.said(before, known).forEach(row::remove);
            row.setAll(line.row);
            if (!was.isEmpty() && !was.equals(row.path(kind.name()).asText())) {
                renamed.put(was, row.path(kind.name()).asText());
            }
            return row;
        }

        /** What the new rows name is found or put where it belongs. */
        private void settle(ArrayNode list, Set<String> measured) {
            switch (kind.list()) {
                case "/sizes" -> measures(list, measured);
                case "/materials" -> sheet.path("sizes").forEach(size -> size.path("takes").forEach(t -> rename(t, "of")));
                case "/tools" -> sheet.path("steps").forEach(step -> step.path("tools").forEach(t -> rename(t, "tool")));
                default -> steps(list);
            }
        }

        private void rename(JsonNode place, String key) {
            String now = renamed.get(place.path(key).asText());
            if (now != null) {
                ((ObjectNode) place).put(key, now);
            }
        }

        /** The measures that sizes had. */
        private Set<String> measured() {
            Set<String> measured = new TreeSet<>();
            rows.forEach(row -> row.path("measures").fieldNames().forEachRemaining(measured::add));
            return measured;
        }

        private void measures(ArrayNode sizes, Set<String> measured) {
            Set<String> used = new TreeSet<>();
            for (int i = 0; i < sizes.size(); i++) {
                if (read.get(i) != null && sizes.get(i).has("measures")) {
                    ObjectNode values = sheet.objectNode();
                    LineRow line = read.get(i);
                    sizes.get(i).path("measures").properties().forEach(m -> value(values, m.getKey(), m.getValue().asText(), line));
                    ((ObjectNode) sizes.get(i)).set("measures", values);
                }
                sizes.get(i).path("measures").fieldNames().forEachRemaining(used::add);
            }
            JsonNode all = sheet.path("measures");
            for (int i = all.size() - 1; i >= 0; i--) {
                String name = all.get(i).path("name").asText();
                if (measured.contains(name) && !used.contains(name) || all.get(i).isEmpty()) {
                    ((ArrayNode) all).remove(i);
                }
            }
        }

        /** A bare number has the unit of the measure. */
        private void value(ObjectNode values, String label, String value, LineRow line) {
            String name = measure(label, value);
            String unit = known.measures().stream().filter(m -> m.name().equals(name)).map(Vocabulary.Named::unit).findFirst().orElse("");
            boolean bare = SizeLines.unit(value).isEmpty();
            values.put(name, bare ? (value + " " + unit).strip() : value);
            if (bare) {
                line.doubt("/measures/" + name, label, "", unit.isEmpty() ? "“%s” has no unit. Write one, such as %s 14.8 cm.".formatted(label, label.toLowerCase(Locale.ROOT))
                        : "“%s” has no unit. It was taken to be %s.".formatted(label, unit));
            }
        }

        /** The short name of a measure, which is put into the sheet where it is new. */
        private String measure(String label, String value) {
            return known.measure(label).map(Vocabulary.Named::name).orElseGet(() -> {
                ArrayNode measures = sheet.withArrayProperty("measures");
                String name = ShortNames.free(label, measures, "name", "measure");
                ObjectNode measure = measures.addObject().put("name", name).put("label", label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1));
                SizeLines.unit(value).ifPresent(unit -> measure.put("unit", unit.symbol()));
                return name;
            });
        }

        private void steps(ArrayNode steps) {
            ShortNames.fill(sheet);
            for (int i = 0; i < steps.size(); i++) {
                if (read.get(i) != null) {
                    follows(steps, i);
                    uses(steps.get(i), read.get(i));
                }
            }
        }

        private void follows(ArrayNode steps, int index) {
            for (JsonNode link : steps.get(index).path("after")) {
                String written = link.path("step").asText();
                String id = StreamSupport.stream(steps.spliterator(), false).filter(s -> s.path("id").asText().equals(written)).findFirst()
                        .or(() -> StreamSupport.stream(steps.spliterator(), false).filter(s -> s.path("title").asText().equalsIgnoreCase(Segment.unquoted(written))).findFirst())
                        .map(s -> s.path("id").asText()).orElse(null);
                if (id == null) {
                    read.get(index).doubt("/after", "Follows", "", "There is no step “%s”. Write the title of the step that comes before.".formatted(written));
                } else {
                    ((ObjectNode) link).put("step", id);
                }
            }
        }

        private void uses(JsonNode step, LineRow line) {
            for (JsonNode use : step.path("tools")) {
                String tool = use.path("tool").asText();
                if (known.tool(tool).isEmpty()) {
                    sheet.withArrayProperty("tools").addObject().put("name", tool);
                    line.doubt("/tools", "Tool", "", "“%s” is new and was put among the tools.".formatted(tool));
                } else {
                    ((ObjectNode) use).put("tool", known.tool(tool).get());
                }
            }
        }

        private List<Understanding.Line> lines() {
            List<Understanding.Line> lines = new ArrayList<>();
            for (int i = 0; i < entries.size(); i++) {
                String at = kind.list() + "/" + i;
                List<Part> parts = read.get(i) == null ? List.of()
                        : read.get(i).parts.stream().map(p -> new Part(at + p.key(), p.label(), p.words(), p.doubt())).toList();
                lines.add(new Understanding.Line(at, entries.get(i).text(), parts));
            }
            return lines;
        }
    }
}
