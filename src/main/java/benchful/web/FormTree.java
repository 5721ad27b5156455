package benchful.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a form sends, as the tree of its sheet. Fields are named by JSON Pointers ({@code /steps/3/title}); blank fields and
 * rows left wholly blank are dropped. The buttons {@code add}, {@code remove} and {@code up} name a list or a row by its
 * pointer and change the tree without saving, so that lists can be edited without JavaScript.
 */
public final class FormTree {
    private static final int MOST_ROWS = 500;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final SheetSchema schema;

    public FormTree(SheetSchema schema) {
        this.schema = schema;
    }

    public ObjectNode of(MultivaluedMap<String, String> form) {
        Branch root = new Branch();
        form.forEach((name, values) -> {
            if (name.startsWith("/")) {
                root.put(List.of(name.substring(1).split("/", -1)), values.get(0).strip());
            }
        });
        return (ObjectNode) root.node("");
    }

    /** The stored sheet with what a small form sends laid over it; a field sent blank is taken out. */
    public static ObjectNode over(JsonNode stored, MultivaluedMap<String, String> form) {
        ObjectNode tree = stored.deepCopy();
        form.forEach((name, values) -> {
            if (name.startsWith("/")) {
                lay(tree, List.of(name.substring(1).split("/", -1)), values.get(0).strip());
            }
        });
        return tree;
    }

    private static void lay(JsonNode under, List<String> path, String value) {
        String key = path.get(0).replace("~1", "/").replace("~0", "~");
        if (under instanceof ArrayNode a && key.matches("\\d{1,4}") && Integer.parseInt(key) < a.size() && path.size() > 1) {
            lay(a.get(Integer.parseInt(key)), path.subList(1, path.size()), value);
        } else if (under instanceof ObjectNode o && path.size() > 1) {
            lay(o.has(key) ? o.get(key) : o.putObject(key), path.subList(1, path.size()), value);
        } else if (under instanceof ObjectNode o) {
            put(o, key, value);
        }
    }

    private static void put(ObjectNode object, String key, String value) {
        if (value.isEmpty()) {
            object.remove(key);
        } else {
            object.put(key, value);
        }
    }

    /** True where a list button was pressed and nothing is to be saved; the tree is changed as the button asks. */
    public static boolean rearranged(MultivaluedMap<String, String> form, ObjectNode tree) {
        String add = form.getFirst("add");
        String remove = form.getFirst("remove");
        String up = form.getFirst("up");
        if (add != null) {
            add(tree, add);
        } else if (remove != null) {
            row(tree, remove).ifRemovable();
        } else if (up != null) {
            row(tree, up).swapWithAbove();
        }
        return add != null || remove != null || up != null;
    }

    private static void add(ObjectNode tree, String list) {
        JsonNode parent = tree.at(list.substring(0, list.lastIndexOf('/')));
        if (parent instanceof ObjectNode o) {
            o.withArray(list.substring(list.lastIndexOf('/') + 1)).addObject();
        }
    }

    private static Row row(ObjectNode tree, String pointer) {
        int slash = Math.max(0, pointer.lastIndexOf('/'));
        String index = pointer.substring(Math.min(pointer.length(), slash + 1));
        return new Row(tree.at(pointer.substring(0, slash)), index.matches("\\d{1,4}") ? Integer.parseInt(index) : -1);
    }

    /** Rows by number, then keys by name. */
    private static int rank(String key) {
        return key.matches("\\d{1,8}") ? Integer.parseInt(key) : Integer.MAX_VALUE;
    }

    private record Row(JsonNode list, int index) {
        void ifRemovable() {
            if (list instanceof ArrayNode a && index >= 0 && index < a.size()) {
                a.remove(index);
            }
        }

        void swapWithAbove() {
            if (list instanceof ArrayNode a && index >= 1 && index < a.size()) {
                a.insert(index - 1, a.remove(index));
            }
        }
    }

    /** A place that has others below it, or a text. */
    private final class Branch {
        private final Map<String, Branch> below = new TreeMap<>(Comparator.comparingInt(FormTree::rank).thenComparing(s -> s));
        private String text = "";

        void put(List<String> path, String value) {
            if (path.isEmpty()) {
                text = value;
                return;
            }
            String key = path.get(0).replace("~1", "/").replace("~0", "~");
            below.computeIfAbsent(key, k -> new Branch()).put(path.subList(1, path.size()), value);
        }

        /** Null where everything is blank. */
        JsonNode node(String pointer) {
            if (below.isEmpty()) {
                return text.isEmpty() ? null : NODES.textNode(text);
            }
            return schema.at(pointer).path("type").asText().equals("array") ? list(pointer) : object(pointer);
        }

        private JsonNode list(String pointer) {
            ArrayNode list = NODES.arrayNode();
            below.entrySet().stream().limit(MOST_ROWS).forEach(e -> {
                JsonNode row = e.getValue().node(pointer + "/0");
                if (row != null) {
                    list.add(row);
                }
            });
            return list.isEmpty() ? null : list;
        }

        private JsonNode object(String pointer) {
            ObjectNode object = NODES.objectNode();
            below.forEach((key, branch) -> {
                JsonNode value = branch.node(pointer + "/" + SheetForm.escaped(key));
                if (value != null) {
                    object.set(key, value);
                }
            });
            return object.isEmpty() && !pointer.isEmpty() ? null : object;
        }
    }
}
