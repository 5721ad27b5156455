package benchful.projects.writing;

import benchful.projects.lines.LineBoxes;
import benchful.projects.lines.Understanding;
import benchful.web.forms.RemovedRow;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The boxes of a project's form that were changed: {@code lines/steps} holds what is typed, {@code were/steps} the lines that the
 * rows of the form came from.
 *
 * @param typed by the list's place, as it was typed
 * @param read by the list's place
 * @param pressed the place that a list button was pressed for; empty where none was
 */
record Boxes(Map<String, String> typed, Map<String, Understanding> read, String pressed) {
    static final Boxes UNTOUCHED = new Boxes(Map.of(), Map.of(), "");
    private static final List<String> BUTTONS = List.of("add", "remove", "up", "copy", "read");

    /** Puts what was typed into the form's tree. */
    static Boxes read(MultivaluedMap<String, String> fields, ObjectNode tree, Map<String, String> hazards) {
        Map<String, String> typed = new HashMap<>();
        Map<String, Understanding> read = new HashMap<>();
        LineBoxes boxes = new LineBoxes(tree, hazards);
        for (String list : LineBoxes.LISTS) {
            String now = fields.getFirst("lines" + list);
            String were = fields.getFirst("were" + list);
            if (now != null && !plain(now).equals(plain(were == null ? "" : were))) {
                typed.put(list, now.replace("\r\n", "\n"));
                read.put(list, boxes.read(list, now, were == null ? "" : were));
            }
        }
        String pressed = BUTTONS.stream().map(fields::getFirst).filter(Objects::nonNull).findFirst().orElseGet(() -> RemovedRow.placeIn(fields.getFirst("putback")));
        return new Boxes(typed, read, pressed);
    }

    /** Line ends and blanks about the whole are the browser's. */
    private static String plain(String text) {
        return text.replace("\r\n", "\n").strip();
    }
}
