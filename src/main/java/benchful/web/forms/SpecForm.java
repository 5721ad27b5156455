package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A sheet on its way through a form: what is written in each field, and what is wrong with it. Templates ask by JSON Pointer.
 *
 * @param tree what was stored or typed
 * @param version of the stored sheet that the form started from; 0 for a new one
 * @param theirs what somebody else saved meanwhile; null where nobody did
 * @param removed rows that can be put back
 */
@TemplateData
public record SpecForm(JsonNode tree, List<Fault> faults, long version, JsonNode theirs, List<RemovedRow> removed) {
    public SpecForm {
        faults = List.copyOf(faults);
        removed = List.copyOf(removed);
    }

    public static SpecForm of(JsonNode tree, long version) {
        return new SpecForm(tree, List.of(), version, null, List.of());
    }

    public static SpecForm faulty(JsonNode tree, List<Fault> faults, long version) {
        return new SpecForm(tree, faults, version, null, List.of());
    }

    /** The second editor's form: theirs is stored, mine is kept; saving again from here replaces theirs. */
    public static SpecForm stale(JsonNode mine, JsonNode theirs, long theirVersion) {
        return new SpecForm(mine, List.of(), theirVersion, theirs, List.of());
    }

    public SpecForm withRemoved(List<RemovedRow> rows) {
        return new SpecForm(tree, faults, version, theirs, rows);
    }

    /** With another tree, such as one that was mended. */
    public SpecForm with(JsonNode other) {
        return new SpecForm(other, faults, version, theirs, removed);
    }

    /** What was taken out just before a row that is there. */
    public List<RemovedRow> removedBefore(String row) {
        return removed.stream().filter(r -> r.place().equals(row) && r.index() < tree.at(r.list()).size()).toList();
    }

    /** What was taken out behind the last row of a list. */
    public List<RemovedRow> removedBehind(String list) {
        return removed.stream().filter(r -> r.list().equals(list) && r.index() >= tree.at(list).size()).toList();
    }

    /** What stands in a field. */
    public String value(String pointer) {
        JsonNode node = tree.at(pointer);
        return node.isContainerNode() ? "" : node.asText("");
    }

    public boolean is(String pointer, String value) {
        return value(pointer).equals(value);
    }

    /** The sentence under a field, or nothing. */
    public String fault(String pointer) {
        return faults.stream().filter(f -> f.pointer().equals(pointer)).map(Fault::detail).findFirst().orElse(null);
    }

    /** The pointers of the rows of a list, in order. */
    public List<String> rows(String pointer) {
        return IntStream.range(0, tree.at(pointer).size()).mapToObj(i -> pointer + "/" + i).toList();
    }

    /** The rows with a blank one at the end, for a list that can be filled without a button. */
    public List<String> rowsAndBlank(String pointer) {
        List<String> rows = new ArrayList<>(rows(pointer));
        boolean blankAlready = !rows.isEmpty() && tree.at(rows.get(rows.size() - 1)) instanceof ObjectNode last && last.isEmpty();
        if (!blankAlready) {
            rows.add(pointer + "/" + rows.size());
        }
        return rows;
    }

    /** The rows, or a blank one where there are none yet. */
    public List<String> rowsOrBlank(String pointer) {
        List<String> rows = rows(pointer);
        return rows.isEmpty() ? List.of(pointer + "/0") : rows;
    }

    /** A field's identifier in the page, made from its pointer. */
    public String id(String pointer) {
        return "f" + pointer.replaceAll("[^A-Za-z0-9_]", "-");
    }

    /** True where a fault is about this place or one below it: its section is then shown open. */
    public boolean faultBelow(String pointer) {
        return faults.stream().anyMatch(f -> f.pointer().equals(pointer) || f.pointer().startsWith(pointer + "/"));
    }

    /** A place in words: "steps 4, student, quick". */
    public String place(String pointer) {
        return JsonPointers.words(pointer);
    }

    /** "Offer 2": what tells the rows of a list apart. */
    public String numbered(String noun, int number) {
        return noun + " " + number;
    }

    /** The place of a key in a map. */
    public String below(String pointer, String key) {
        return JsonPointers.below(pointer, key);
    }

    /** What differs between their saved version and mine; empty where nobody else saved. */
    public List<Difference> differences() {
        return theirs == null ? List.of() : Difference.between(theirs, tree);
    }
}
