package benchful.web.forms;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

/**
 * A row that was taken out of a list of a form and can be put back while the form is open, which carries it along.
 *
 * @param list its place
 * @param index before which row it stood, as the rows are now
 * @param row what stood in it
 * @param beside fields beside the row that are none of the sheet's, by their word: {@code was:/steps/3} is {@code was}
 * @param justNow true where it was taken out by the button that was pressed last
 */
@TemplateData
public record RemovedRow(String list, int index, JsonNode row, Map<String, String> beside, boolean justNow) {
    private static final String PLACE = "/.{1,300}/\\d{1,4}";
    private static final List<String> NAMES = List.of("title", "label", "name", "material", "supplier", "date");
    private static final int LONGEST_NAME = 60;

    public RemovedRow {
        beside = Map.copyOf(beside);
    }

    /** Nothing where the text is none that a form was given to carry. */
    public static Optional<RemovedRow> of(String text, FormTree trees) {
        JsonNode json = json(text);
        return listOf(text).filter(trees::isList).flatMap(list -> Optional.ofNullable(trees.row(list, json.path("row"))).map(row -> {
            Map<String, String> beside = new TreeMap<>();
            json.path("beside").properties().forEach(e -> beside.put(e.getKey(), e.getValue().asText()));
            String at = json.path("at").asText();
            return new RemovedRow(list, Integer.parseInt(at.substring(list.length() + 1)), row, beside, false);
        }));
    }

    /** The list of the row that a text tells of. */
    static Optional<String> listOf(String text) {
        String at = json(text).path("at").asText();
        return at.matches(PLACE) ? Optional.of(at.substring(0, at.lastIndexOf('/'))) : Optional.empty();
    }

    /** Where a row goes that a text tells of; empty for none. */
    public static String placeIn(String text) {
        return text == null ? "" : json(text).path("at").asText();
    }

    private static JsonNode json(String text) {
        try {
            return SpecFormat.json().readTree(text);
        } catch (JsonProcessingException e) {
            return SpecFormat.json().createObjectNode();
        }
    }

    /** As the form carries it. */
    public String text() {
        return json().toString();
    }

    /** As it is kept with the form. */
    public ObjectNode json() {
        ObjectNode json = SpecFormat.json().createObjectNode().put("at", place());
        json.set("row", row);
        beside.forEach(json.putObject("beside")::put);
        return json;
    }

    /** Where it is when it is put back. */
    public String place() {
        return list + "/" + index;
    }

    /** What tells it from other rows: its title or name, or else the first that is written in it. */
    public String name() {
        String name = Stream.concat(Stream.of(row), NAMES.stream().map(row::path)).filter(JsonNode::isTextual).map(JsonNode::asText).findFirst().orElseGet(() -> first(row));
        return name.length() > LONGEST_NAME ? name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME / 2)) + " …" : name;
    }

    private static String first(JsonNode node) {
        return node.isValueNode() ? node.asText() : node.isEmpty() ? "" : first(node.elements().next());
    }

    /**
     * As it is after the rows of a list moved.
     *
     * @param rows which row each has become; -1 where it is gone
     * @param gaps before which row stands what stood before each
     * @return nothing where it belonged to a row that is gone
     */
    Optional<RemovedRow> moved(String changed, IntUnaryOperator rows, IntUnaryOperator gaps) {
        if (list.equals(changed)) {
            return Optional.of(at(list, gaps.applyAsInt(index)));
        }
        if (!list.startsWith(changed + "/")) {
            return Optional.of(this);
        }
        String below = list.substring(changed.length() + 1);
        String number = below.split("/", 2)[0];
        int now = number.matches("\\d{1,4}") ? rows.applyAsInt(Integer.parseInt(number)) : -1;
        return now < 0 ? Optional.empty() : Optional.of(at(changed + "/" + now + below.substring(number.length()), index));
    }

    RemovedRow at(String newList, int newIndex) {
        return new RemovedRow(newList, newIndex, row, beside, justNow);
    }
}
