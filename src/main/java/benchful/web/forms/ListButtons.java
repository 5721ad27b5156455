package benchful.web.forms;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

/**
 * The buttons {@code add}, {@code remove}, {@code up} and {@code copy} name a list or a row of a form by its pointer and change the tree
 * without saving, so that lists can be edited without JavaScript. What was removed is carried in fields {@code removed}; the button
 * {@code putback}, which holds the same text, puts it where it was among the rows that are there now.
 */
public final class ListButtons {
    private static final String ROW = "\\d{1,4}";

    private final MultivaluedMap<String, String> form;
    private final ObjectNode tree;
    private List<RemovedRow> removed;
    private RemovedRow putBack;

    private ListButtons(MultivaluedMap<String, String> form, ObjectNode tree, FormTree trees) {
        this.form = form;
        this.tree = tree;
        this.removed = form.getOrDefault("removed", List.of()).stream().flatMap(text -> RemovedRow.of(text, trees).stream()).toList();
        String back = form.getFirst("putback");
        if (pressed("add") != null) {
            add(pressed("add"));
        } else if (pressed("remove") != null) {
            row(pressed("remove")).ifPresent(this::remove);
        } else if (pressed("up") != null) {
            row(pressed("up")).ifPresent(this::swapWithAbove);
        } else if (pressed("copy") != null) {
            row(pressed("copy")).ifPresent(this::repeat);
        } else if (back != null) {
            RemovedRow.of(back, trees).ifPresent(this::putBack);
        }
    }

    /** @param tree what the form sends, which is changed as the pressed button asks */
    public static ListButtons of(MultivaluedMap<String, String> form, ObjectNode tree, FormTree trees) {
        return new ListButtons(form, tree, trees);
    }

    /** The list that the pressed button is about; null where none was pressed. */
    static String list(MultivaluedMap<String, String> form) {
        if (form.containsKey("add")) {
            return form.getFirst("add");
        }
        String row = Stream.of("remove", "up", "copy").map(form::getFirst).filter(Objects::nonNull).findFirst().orElse(null);
        return row != null ? row.replaceFirst("/[^/]*$", "") : form.containsKey("putback") ? RemovedRow.listOf(form.getFirst("putback")).orElse("") : null;
    }

    /** True where nothing is to be saved. */
    public boolean pressed() {
        return list(form) != null;
    }

    /** What can be put back, in the order of the rows it stood between. */
    public List<RemovedRow> removed() {
        return removed;
    }

    /** What was put back just now, where it is now. */
    public Optional<RemovedRow> putBack() {
        return Optional.ofNullable(putBack);
    }

    private String pressed(String button) {
        return form.getFirst(button);
    }

    private void add(String list) {
        rows(list).ifPresent(ArrayNode::addObject);
    }

    /** The rows of a list, which is made where its place has none yet. */
    private Optional<ArrayNode> rows(String list) {
        JsonNode parent = list.startsWith("/") ? tree.at(list.substring(0, list.lastIndexOf('/'))) : MissingNode.getInstance();
        String name = list.substring(list.lastIndexOf('/') + 1);
        return parent instanceof ObjectNode o && (!o.has(name) || o.get(name).isArray()) ? Optional.of(o.withArrayProperty(name)) : Optional.empty();
    }

    private void remove(Row row) {
        JsonNode gone = row.rows.remove(row.index);
        if (gone.isTextual() || !gone.isEmpty()) {
            removed = with(new RemovedRow(row.list, row.index, gone, beside(row.list + "/" + row.index), true));
        }
        move(row.list, i -> i == row.index ? -1 : i > row.index ? i - 1 : i, i -> i > row.index ? i - 1 : i);
    }

    private List<RemovedRow> with(RemovedRow row) {
        List<RemovedRow> all = new ArrayList<>(removed);
        int behind = (int) removed.stream().takeWhile(r -> !r.list().equals(row.list()) || r.index() <= row.index()).count();
        all.add(behind, row);
        return all;
    }

    private Map<String, String> beside(String place) {
        Map<String, String> beside = new TreeMap<>();
        form.forEach((field, values) -> {
            if (field.endsWith(":" + place) && !values.isEmpty()) {
                beside.put(field.substring(0, field.length() - place.length() - 1), values.get(0));
            }
        });
        return beside;
    }

    /** A copied step has no short name until it gets one of its own. */
    private void repeat(Row row) {
        JsonNode copy = row.rows.get(row.index).deepCopy();
        row.rows.insert(row.index + 1, copy);
        if (copy instanceof ObjectNode o && o.has("title")) {
            o.remove("id");
        }
        IntUnaryOperator down = i -> i > row.index ? i + 1 : i;
        move(row.list, down, down);
    }

    private void swapWithAbove(Row row) {
        if (row.index > 0) {
            row.rows.insert(row.index - 1, row.rows.remove(row.index));
            move(row.list, i -> i == row.index ? i - 1 : i == row.index - 1 ? i + 1 : i, i -> i);
        }
    }

    /** Rows that stood between the same two rows come back in their order. */
    private void putBack(RemovedRow row) {
        int which = removed.indexOf(row);
        rows(row.list()).filter(list -> which >= 0).ifPresent(list -> {
            int index = Math.min(row.index(), list.size());
            list.insert(index, row.row());
            putBack = row.at(row.list(), index);
            IntUnaryOperator down = i -> i >= index ? i + 1 : i;
            removed = Stream.concat(
                    removed.subList(0, which).stream().flatMap(r -> r.moved(row.list(), down, i -> Math.min(i, index)).stream()),
                    removed.subList(which + 1, removed.size()).stream().flatMap(r -> r.moved(row.list(), down, down).stream())).toList();
        });
    }

    private void move(String list, IntUnaryOperator rows, IntUnaryOperator gaps) {
        removed = removed.stream().flatMap(r -> r.moved(list, rows, gaps).stream()).toList();
    }

    private Optional<Row> row(String pointer) {
        String list = pointer.replaceFirst("/?[^/]*$", "");
        String index = pointer.substring(pointer.lastIndexOf('/') + 1);
        JsonNode rows = list.startsWith("/") ? tree.at(list) : MissingNode.getInstance();
        return rows instanceof ArrayNode a && index.matches(ROW) && Integer.parseInt(index) < a.size() ? Optional.of(new Row(list, a, Integer.parseInt(index))) : Optional.empty();
    }

    private record Row(String list, ArrayNode rows, int index) {}
}
