package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * A list of a sheet written in one text field, a line for each entry. The field is named {@code lines} and the list's place:
 * {@code lines/cautions}. An entry that has a code and words is written as {@code H317 May cause an allergic skin reaction}.
 *
 * @param list the list's place: {@code /cautions}
 * @param words the key of what follows the code: {@code text}; null where entries are plain texts
 */
public record TextList(String list, String words) {
    private static final Pattern ROW = Pattern.compile("/(\\d{1,4})(?:/.*)?");

    public static TextList plain(String list) {
        return new TextList(list, null);
    }

    public static TextList coded(String list, String words) {
        return new TextList(list, words);
    }

    /** The form with each line of these lists as a field of the sheet. */
    public static MultivaluedMap<String, String> asFields(MultivaluedMap<String, String> form, List<TextList> lists) {
        MultivaluedMap<String, String> fields = new MultivaluedHashMap<>();
        form.forEach(fields::put);
        lists.forEach(list -> list.addTo(fields, form.getFirst("lines" + list.list)));
        return fields;
    }

    private void addTo(MultivaluedMap<String, String> fields, String text) {
        List<String> lines = text == null ? List.of() : text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
        for (int i = 0; i < lines.size(); i++) {
            add(fields, list + "/" + i, lines.get(i));
        }
    }

    private void add(MultivaluedMap<String, String> fields, String at, String line) {
        if (words == null) {
            fields.putSingle(at, line);
            return;
        }
        String[] parts = line.split("\\s+", 2);
        fields.putSingle(at + "/code", parts[0]);
        fields.putSingle(at + "/" + words, parts.length > 1 ? parts[1] : "");
    }

    /** The text of the field. */
    public String text(SpecForm form) {
        return StreamSupport.stream(form.tree().at(list).spliterator(), false).map(this::line).collect(Collectors.joining("\n"));
    }

    private String line(JsonNode entry) {
        return words == null ? entry.asText() : (entry.path("code").asText() + " " + entry.path(words).asText()).strip();
    }

    /** What is wrong with the list or a line of it; a line's fault says which line it is. */
    public List<Fault> faults(SpecForm form) {
        return form.faults().stream()
                .filter(f -> f.pointer().equals(list) || f.pointer().startsWith(list + "/"))
                .map(this::numbered)
                .toList();
    }

    private Fault numbered(Fault fault) {
        Matcher row = ROW.matcher(fault.pointer().substring(list.length()));
        return row.matches() ? new Fault(fault.pointer(), "Line %d: %s".formatted(Integer.parseInt(row.group(1)) + 1, fault.detail())) : fault;
    }
}
