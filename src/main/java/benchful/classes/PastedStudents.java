package benchful.classes;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Students pasted in as a list, a line each: a name, and behind a comma or tab the size, as it comes from a mail or a spreadsheet.
 * They become rows of the form behind those that are filled in. What follows the name and is no size of the project stays with the name,
 * so that nothing is lost unseen.
 */
final class PastedStudents {
    /** The name of the field. */
    static final String FIELD = "pasted";

    private static final Pattern ROW = Pattern.compile("/students/(\\d{1,4})/.*");
    /** "1. Ada", "- Ada": as lists are numbered. */
    private static final Pattern BULLET = Pattern.compile("^\\s*(?:\\d{1,3}[.)]|[-*•])\\s+");

    private final List<String> sizes;

    /** @param sizes names of the project's sizes */
    PastedStudents(List<String> sizes) {
        this.sizes = sizes;
    }

    /** The form with each pasted line as a row. */
    MultivaluedMap<String, String> asRows(MultivaluedMap<String, String> form) {
        MultivaluedMap<String, String> rows = new MultivaluedHashMap<>(form);
        int next = form.keySet().stream().filter(field -> !typed(form, field).isBlank()).map(ROW::matcher).filter(Matcher::matches)
                .mapToInt(row -> Integer.parseInt(row.group(1)) + 1).max().orElse(0);
        for (String line : typed(form, FIELD).lines().map(l -> BULLET.matcher(l).replaceFirst("").strip()).filter(l -> !l.isEmpty()).toList()) {
            add(rows, "/students/" + next++, line);
        }
        return rows;
    }

    private static String typed(MultivaluedMap<String, String> form, String field) {
        return Objects.requireNonNullElse(form.getFirst(field), "");
    }

    private void add(MultivaluedMap<String, String> rows, String at, String line) {
        List<String> parts = Arrays.stream(line.split("[\t,;]")).map(String::strip).filter(p -> !p.isEmpty()).toList();
        Optional<String> size = parts.size() < 2 ? Optional.empty() : size(parts.get(1));
        rows.putSingle(at + "/name", size.isPresent() ? parts.get(0) : line);
        size.ifPresent(name -> rows.putSingle(at + "/size", name));
        if (size.isPresent() && parts.size() > 2) {
            rows.putSingle(at + "/needs", String.join(", ", parts.subList(2, parts.size())));
        }
    }

    private Optional<String> size(String typed) {
        return sizes.stream().filter(size -> size.equalsIgnoreCase(typed)).findFirst();
    }
}
