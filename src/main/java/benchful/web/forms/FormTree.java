package benchful.web.forms;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a form sends, as the tree of its sheet. Fields are named by JSON Pointers ({@code /steps/3/title}); blank fields and
 * rows left wholly blank are dropped, but not while one of the {@link ListButtons} is pressed; line ends are single.
 */
public final class FormTree {
    /** The text of a field at a list's own place that stands for the empty list, where that differs from none. */
    public static final String EMPTY_LIST = "[]";

    private static final int DEEPEST = 20;
    private static final String ROW = "\\d{1,4}";
    private static final Comparator<String> KEYS = Comparator.comparingInt(FormTree::rank).thenComparing(s -> s);
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final SpecSchema schema;

    public FormTree(SpecSchema schema) {
        this.schema = schema;
    }

    public ObjectNode of(MultivaluedMap<String, String> form) {
        Branch root = new Branch(rearrangedList(form));
        fields(form, root::put);
        return root.node("") instanceof ObjectNode tree ? tree : NODES.objectNode();
    }

    /** Each field that is a place of the sheet: the keys that lead there, and what was typed. */
    private static void fields(MultivaluedMap<String, String> form, BiConsumer<List<String>, String> taker) {
        form.forEach((name, values) -> {
            List<String> path = Arrays.stream(shown(name).split("/", -1)).skip(1).map(JsonPointers::unescaped).toList();
            if (name.startsWith("/") && path.size() <= DEEPEST && !values.isEmpty()) {
                taker.accept(path, shown(values.get(0)).replace("\r\n", "\n").strip());
            }
        });
    }

    /** The character of code 0, which neither page nor database can hold, becomes the sign for what is missing. */
    private static String shown(String typed) {
        return typed.replace('\0', '\uFFFD');
    }

    /** The stored sheet with what a small form sends laid over it; a field sent blank is taken out, a row behind the last is added, one that is left blank goes. */
    public ObjectNode over(JsonNode stored, MultivaluedMap<String, String> form) {
        ObjectNode tree = stored.deepCopy();
        Map<List<String>, String> ordered = new TreeMap<>(FormTree::compareRows);
        fields(form, ordered::put);
        ordered.forEach((path, value) -> lay(tree, "", path, value));
        dropBlankRows(tree);
        return tree;
    }

    private static void dropBlankRows(JsonNode node) {
        node.forEach(FormTree::dropBlankRows);
        for (int i = node.size() - 1; node instanceof ArrayNode list && i >= 0; i--) {
            JsonNode row = list.get(i);
            if (row.isObject() ? row.isEmpty() : row.isTextual() && row.asText().isEmpty()) {
                list.remove(i);
            }
        }
    }

    /** Rows of one list by their numbers, so that none is added before the one it stands behind. */
    private static int compareRows(List<String> a, List<String> b) {
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int order = KEYS.compare(a.get(i), b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    }

    private void lay(JsonNode under, String at, List<String> path, String value) {
        if (path.isEmpty()) {
            return;
        }
        String key = path.get(0);
        String here = JsonPointers.below(at, key);
        List<String> below = path.subList(1, path.size());
        if (under instanceof ArrayNode list) {
            layRow(list, here, key, below, value);
        } else if (under instanceof ObjectNode map && !below.isEmpty()) {
            lay(map.has(key) ? map.get(key) : isList(here) ? map.putArray(key) : map.putObject(key), here, below, value);
        } else if (under instanceof ObjectNode map) {
            put(map, key, value);
        }
    }

    private void layRow(ArrayNode list, String here, String key, List<String> below, String value) {
        int row = key.matches(ROW) ? Integer.parseInt(key) : Integer.MAX_VALUE;
        if (row == list.size() && !value.isEmpty()) {
            list.add(below.isEmpty() ? NODES.textNode("") : NODES.objectNode());
        }
        if (row < list.size() && below.isEmpty()) {
            list.set(row, NODES.textNode(value));
        } else if (row < list.size()) {
            lay(list.get(row), here, below, value);
        }
    }

    boolean isList(String pointer) {
        return schema.at(generalised(pointer)).path("type").asText().equals("array");
    }

    private static void put(ObjectNode object, String key, String value) {
        if (value.isEmpty()) {
            object.remove(key);
        } else {
            object.put(key, value);
        }
    }

    /** The list a pressed button is about, its rows' numbers as 0; null where none was pressed. */
    private static String rearrangedList(MultivaluedMap<String, String> form) {
        String list = ListButtons.list(form);
        return list == null ? null : generalised(list);
    }

    /** A row of a list by itself, its values as a form has them and its shape as the schema says; null where all of it is blank. */
    JsonNode row(String list, JsonNode row) {
        Branch root = new Branch(null);
        flatten(row, List.of(), root::put);
        return root.node(generalised(list) + "/0");
    }

    private static void flatten(JsonNode node, List<String> path, BiConsumer<List<String>, String> taker) {
        if (path.size() > DEEPEST) {
            return;
        }
        if (node.isObject()) {
            node.properties().forEach(e -> flatten(e.getValue(), longer(path, e.getKey()), taker));
        } else if (node.isArray() && !node.isEmpty()) {
            IntStream.range(0, node.size()).forEach(i -> flatten(node.get(i), longer(path, String.valueOf(i)), taker));
        } else {
            taker.accept(path, node.isArray() ? EMPTY_LIST : shown(node.asText("")));
        }
    }

    private static List<String> longer(List<String> path, String key) {
        return Stream.concat(path.stream(), Stream.of(key)).toList();
    }

    /** A place with the numbers of rows as 0, as the schema has it. */
    private static String generalised(String pointer) {
        return pointer.replaceAll("/\\d+(?=/|$)", "/0");
    }

    /** Rows by number, then keys by name. */
    private static int rank(String key) {
        return key.matches("\\d{1,8}") ? Integer.parseInt(key) : Integer.MAX_VALUE;
    }

    /** A place that has others below it, or a text. */
    private final class Branch {
        private final Map<String, Branch> below = new TreeMap<>(KEYS);
        private final String rearranged;
        private String text = "";

        /** @param rearranged the list a pressed button is about; null where none was pressed */
        Branch(String rearranged) {
            this.rearranged = rearranged;
        }

        void put(List<String> path, String value) {
            if (path.isEmpty()) {
                text = value;
                return;
            }
            below.computeIfAbsent(path.get(0), k -> new Branch(rearranged)).put(path.subList(1, path.size()), value);
        }

        /** Null where everything is blank. */
        JsonNode node(String pointer) {
            boolean isList = schema.at(pointer).path("type").asText().equals("array");
            if (below.isEmpty()) {
                return text.isEmpty() ? null : isList && text.equals(EMPTY_LIST) ? NODES.arrayNode() : NODES.textNode(text);
            }
            return isList ? list(pointer) : object(pointer);
        }

        private JsonNode list(String pointer) {
            ArrayNode list = NODES.arrayNode();
            JsonNode blank = keepsBlankRows(pointer) ? NODES.objectNode() : null;
            below.values().stream()
                    .map(row -> Optional.ofNullable(row.node(pointer + "/0")).orElse(blank))
                    .filter(Objects::nonNull)
                    .forEach(list::add);
            return !list.isEmpty() || text.equals(EMPTY_LIST) ? list : null;
        }

        /** While a button is pressed its rows keep their numbers, and the lists of the sheet itself keep what was just added. */
        private boolean keepsBlankRows(String list) {
            return rearranged != null
                    && (list.lastIndexOf('/') == 0 || list.equals(rearranged))
                    && schema.at(list + "/0").path("type").asText().equals("object");
        }

        private JsonNode object(String pointer) {
            ObjectNode object = NODES.objectNode();
            below.forEach((key, branch) -> {
                JsonNode value = branch.node(JsonPointers.below(pointer, key));
                if (value != null) {
                    object.set(key, value);
                }
            });
            return object.isEmpty() && !pointer.isEmpty() ? null : object;
        }
    }
}
