package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;

/** Texts with characters that can be neither shown nor stored: controls, and halves of a surrogate pair. */
public final class ReadableText {
    private static final int MARK = 0xFFFD;

    private ReadableText() {}

    static List<Fault> faults(JsonNode tree) {
        List<Fault> faults = new ArrayList<>();
        collect("", tree, faults);
        return faults;
    }

    private static void collect(String at, JsonNode node, List<Fault> faults) {
        if (node.isTextual() && !sound(node.textValue())) {
            faults.add(new Fault(at, "This holds a character that can't be shown. Type it again."));
        }
        node.properties().forEach(e -> {
            if (!sound(e.getKey())) {
                faults.add(new Fault(at, "A name here holds a character that can't be shown. Type it again."));
            }
            collect(JsonPointers.below(at, e.getKey()), e.getValue(), faults);
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(at + "/" + i, node.get(i), faults);
        }
    }

    /** A copy in which each such character is �, so that what is not finished can be kept, and shows where it stood. */
    public static JsonNode marked(JsonNode tree) {
        if (tree.isTextual()) {
            return TextNode.valueOf(marked(tree.textValue()));
        }
        if (tree.isArray()) {
            ArrayNode marked = JsonNodeFactory.instance.arrayNode();
            tree.forEach(node -> marked.add(marked(node)));
            return marked;
        }
        if (tree.isObject()) {
            ObjectNode marked = JsonNodeFactory.instance.objectNode();
            tree.properties().forEach(e -> marked.set(marked(e.getKey()), marked(e.getValue())));
            return marked;
        }
        return tree;
    }

    /** As much of a text as so many letters hold, without half of a sign. */
    public static String cut(String text, int letters) {
        int end = Math.min(text.length(), letters);
        return text.substring(0, end > 0 && end < text.length() && Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end);
    }

    private static String marked(String text) {
        return text.codePoints().map(c -> sound(c) ? c : MARK).collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    private static boolean sound(String text) {
        return text.codePoints().allMatch(ReadableText::sound);
    }

    private static boolean sound(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL -> c == '\n' || c == '\r' || c == '\t';
            case Character.SURROGATE -> false;
            default -> c != 0xFFFE && c != 0xFFFF;
        };
    }
}
