package benchful.projects.writing;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Unit;
import benchful.projects.Sizing;
import benchful.projects.SizingKind;
import benchful.projects.SizingWords;
import benchful.projects.lines.LineBoxes;
import benchful.projects.lines.Understanding;
import benchful.web.Formats;
import benchful.web.forms.SpecForm;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the form of a project shows.
 *
 * @param id of the stored project; null for a new one
 * @param stored under which name each picture of the form is stored, by its name in the form
 * @param boxes what was just read from the boxes of lines
 * @param draft how far the draft is that is shown; null where nothing of it is kept yet
 * @param others drafts of changes to the same project
 * @param preview what it would print, where that was asked for; null otherwise
 */
@TemplateData
public record ProjectForm(SpecForm form, Long id, Map<String, String> stored, Choices choices, Boxes boxes, DraftState draft,
        List<ProjectDraft> others, Preview preview) {

    /**
     * What is there already and can be chosen by its first letters.
     *
     * @param crafts of the other projects
     * @param materials of the catalogue, by name
     * @param hazards of the library: their names by the short names that sheets write
     */
    @TemplateData
    public record Choices(List<String> crafts, List<String> materials, Map<String, String> hazards) {}

    public boolean isNew() {
        return id == null;
    }

    public String action() {
        return isNew() ? "/projects" : "/projects/" + id;
    }

    public List<String> levels() {
        return SkillLevel.names();
    }

    public List<String> kinds() {
        return Arrays.stream(StepKind.values()).map(Formats::word).toList();
    }

    /** What each kind means, for whoever has to choose one. */
    public String kindsHint() {
        return Arrays.stream(StepKind.values()).map(kind -> Formats.word(kind) + ": " + meaning(kind)).collect(Collectors.joining("; "));
    }

    private static String meaning(StepKind kind) {
        return switch (kind) {
            case SHOW -> "all watch";
            case MAKE -> "each at their own pace";
            case WAIT -> "it dries";
            case TOGETHER -> "welcome, tidying";
            case AHEAD -> "before the class";
            case BETWEEN -> "you, between meetings";
            case HOMEWORK -> "each at home";
            case COLLECT -> "or post, after the last meeting";
        };
    }

    public List<String> units() {
        return Unit.measured().stream().map(Unit::symbol).toList();
    }

    public List<String> sizingKinds() {
        return Arrays.stream(SizingKind.values()).map(Formats::word).toList();
    }

    /** What a working's kind takes, those that must be there first. */
    public List<String> values(String working) {
        return kind(working).stream().flatMap(k -> Stream.concat(k.required().stream(), k.optional().stream())).toList();
    }

    public boolean needed(String working, String value) {
        return kind(working).stream().anyMatch(k -> k.required().contains(value));
    }

    public boolean strings(String working) {
        return kind(working).stream().anyMatch(SizingKind::strings);
    }

    /** What formulas may ask this working for, as far as it is filled in. */
    public String answers(String working) {
        String name = form.value(working + "/name");
        Stream<String> beads = form.rows(working + "/beads").stream().map(b -> form.value(b + "/bead")).map(Sizing::word);
        return String.join(", ", Stream.concat(beads, kind(working).stream().flatMap(k -> k.answers().stream()))
                .filter(a -> !a.isBlank())
                .map(a -> name + "_" + a)
                .toList());
    }

    private Optional<SizingKind> kind(String working) {
        String kind = form.value(working + "/kind").toUpperCase(Locale.ROOT);
        return Arrays.stream(SizingKind.values()).filter(k -> k.name().equals(kind)).findFirst();
    }

    public String hint(String value) {
        return SizingWords.hint(value);
    }

    public String label(String value) {
        return SizingWords.label(value);
    }

    /** The measures as far as they are named, for the columns of sizes. */
    public Collection<Measured> measures() {
        Map<String, Measured> measures = new LinkedHashMap<>();
        for (String row : form.rows("/measures")) {
            String name = form.value(row + "/name");
            if (!name.isBlank()) {
                measures.putIfAbsent(name, new Measured(name, form.value(row + "/label"), form.value(row + "/unit")));
            }
        }
        return measures.values();
    }

    /** A measure as it is typed. */
    @TemplateData
    public record Measured(String name, String label, String unit) {
        public Measured {
            label = label.isBlank() ? name : label;
        }

        public String example() {
            return "such as 42 " + unit;
        }
    }

    /** True where the folded part of the piece holds something, or a fault. */
    public boolean openPiece() {
        return Stream.of("/minimum_age", "/summary", "/care", "/source", "/hazards", "/paces").anyMatch(at -> form.faultBelow(at) || !isNew() && !form.tree().at(at).isMissingNode());
    }

    /** True where the rows of a list should be seen at once: they were just read or changed, or there is a fault. */
    public boolean showsRows(String list) {
        return form.faultBelow(list) || boxes.read().containsKey(list) || boxes.pressed().equals(list) || boxes.pressed().startsWith(list + "/");
    }

    /** A label that no other row has: "Tool 3". */
    public String numbered(String what, int number) {
        return what + " " + number;
    }

    /** True where a step names the empty list: it follows nothing. */
    public boolean anyTime(String step) {
        JsonNode after = form.tree().at(step + "/after");
        return after.isArray() && after.isEmpty();
    }

    public List<String> tools() {
        return names("/tools", "name");
    }

    public List<String> steps() {
        return names("/steps", "id");
    }

    public List<String> pictures() {
        return names("/pictures", "name");
    }

    private List<String> names(String list, String key) {
        return form.rows(list).stream().map(r -> form.value(r + "/" + key)).filter(Predicate.not(String::isBlank)).distinct().toList();
    }

    /** The name under which the picture of a row is stored; blank where it is not. */
    public String storedName(String row) {
        return stored.getOrDefault(form.value(row + "/name"), "");
    }

    /** Where the picture of a row can be seen; null where there is none. */
    public String preview(String row) {
        return FormPictures.address(form.tree().at(row), isNew() || storedName(row).isEmpty() ? null : "/projects/%d/pictures/%s".formatted(id, storedName(row)));
    }

    public List<String> turns() {
        return List.of("90", "180", "270");
    }

    /** The row of the picture that a step names; null where there is none. */
    public String pictureRow(String name) {
        return form.rows("/pictures").stream().filter(row -> !name.isBlank() && form.is(row + "/name", name)).findFirst().orElse(null);
    }

    /** Behind the last row of a list. */
    public String next(String list) {
        return list + "/" + form.rows(list).size();
    }

    /** "picture 2 of step 3". */
    public String shot(int number, int step) {
        return "picture %d of step %d".formatted(number, step);
    }

    /** True for a row that should be seen at once: a new one, or one with a fault. */
    public boolean open(String row) {
        return form.tree().at(row).isEmpty() || form.faultBelow(row) || boxes.pressed().startsWith(row + "/");
    }

    /** The rows of a list as lines: as they were just typed, or as they stand in the form. */
    public String lines(String list) {
        String typed = boxes.typed().get(list);
        return typed == null ? rows().written(list) : typed;
    }

    private LineBoxes rows() {
        return new LineBoxes((ObjectNode) form.tree(), choices.hazards());
    }

    public BoxWords words(String list) {
        return BoxWords.of(list);
    }

    /** "15 steps, field by field". */
    public String counted(String list, String noun) {
        return Formats.counted(form.rows(list).size(), noun) + ", field by field";
    }

    /** How high a box is: as its lines need, within bounds. */
    public int height(String lines) {
        return Math.max(5, Math.min(24, (int) lines.lines().count() + 1));
    }

    /** What a row says, its name left out, in the words of its line. */
    public String said(String list, String row) {
        return rows().said(list, row);
    }

    /** What was taken for granted when a row was read from its line. */
    public List<String> doubts(String row) {
        return boxes.read().values().stream().flatMap(u -> u.doubts().stream()).filter(d -> d.key().equals(row) || d.key().startsWith(row + "/"))
                .map(d -> d.label() + ": " + d.doubt()).toList();
    }

    /** The lines whose rows were just taken out of a list. */
    public List<String> taken(String list) {
        return boxes.read().containsKey(list) ? boxes.read().get(list).taken() : List.of();
    }

    /** What was just understood of a list, in a sentence; empty where its box was not read. */
    public String understood(String list) {
        Understanding read = boxes.read().get(list);
        if (read == null) {
            return "";
        }
        long lines = read.lines().stream().map(Understanding.Line::at).filter(at -> !doubts(at).isEmpty()).count();
        return "%s read. %s".formatted(Formats.counted(read.lines().size(), "line"),
                lines == 0 ? "Nothing was taken for granted." : "Look at %s: what was taken for granted is marked.".formatted(lines == 1 ? "one of them" : lines + " of them"));
    }
}
