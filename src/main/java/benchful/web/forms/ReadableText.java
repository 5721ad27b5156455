package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Finds texts with characters that can be neither shown nor stored: controls, and halves of a surrogate pair. */
final class ReadableText {
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

    private static boolean sound(String text) {
        return text.codePoints().noneMatch(c -> switch (Character.getType(c)) {
            case Character.CONTROL -> c != '\n' && c != '\r' && c != '\t';
            case Character.SURROGATE -> true;
            default -> c == 0xFFFE || c == 0xFFFF;
        });
    }
}
