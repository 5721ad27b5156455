package benchful.web;

import benchful.core.Fault;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Reads one kind of sheet from a file or a form: first its JSON Schema, then its record, then its own rules. What comes
 * back is the sheet, or every fault with its place; what was written is kept either way.
 *
 * @param <T> the record of the sheet
 */
public final class SheetReader<T> {
    private final Class<T> type;
    private final SheetSchema schema;
    private final Function<T, List<Fault>> rules;

    /**
     * @param schema name of the schema under {@code META-INF/resources/schema}
     * @param rules what must agree within the sheet, beyond the schema
     */
    public SheetReader(Class<T> type, String schema, Function<T, List<Fault>> rules) {
        this.type = type;
        this.schema = SheetSchema.named(schema);
        this.rules = rules;
    }

    /** What was read. */
    public sealed interface Reading<T> {
        /** What was written, to show again. */
        JsonNode tree();
    }

    public record Read<T>(T sheet, JsonNode tree) implements Reading<T> {}

    /** @param faults at least one, in the order of the sheet */
    public record Faulty<T>(List<Fault> faults, JsonNode tree) implements Reading<T> {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }

    public SheetSchema schema() {
        return schema;
    }

    /** Reads YAML, of which JSON is a part. */
    public Reading<T> file(byte[] bytes) {
        if (bytes.length > SheetFormat.LARGEST) {
            return unreadable("The file has more than 16 MB. Leave out or shrink its pictures.");
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return parsed(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return unreadable("The file is not in UTF-8. Save it again with the encoding UTF-8.");
        }
    }

    private Reading<T> parsed(String text) {
        ObjectMapper mapper = text.stripLeading().startsWith("{") ? SheetFormat.json() : SheetFormat.yaml();
        try {
            JsonNode tree = mapper.readTree(text);
            return tree == null || !tree.isObject()
                    ? unreadable("The file holds no sheet. Its first line should say “benchful: …”, as in an exported file.")
                    : tree(tree);
        } catch (JsonProcessingException e) {
            return unreadable(placed(e));
        } catch (RuntimeException e) {
            return unreadable("The file can't be read: %s".formatted(firstLine(e.getMessage())));
        } catch (StackOverflowError e) {
            return unreadable("The file is nested too deeply to be a sheet.");
        }
    }

    /** Checks what was typed or read. Texts that stand for numbers, as forms send them, are taken as numbers. */
    public Reading<T> tree(JsonNode written) {
        JsonNode tree = schema.coerced(written);
        List<Fault> faults = new ArrayList<>(schema.faults(tree));
        if (!faults.isEmpty()) {
            return new Faulty<>(faults, tree);
        }
        return bound(tree);
    }

    private Reading<T> bound(JsonNode tree) {
        try {
            T sheet = SheetFormat.json().treeToValue(tree, type);
            List<Fault> faults = rules.apply(sheet);
            return faults.isEmpty() ? new Read<>(sheet, tree) : new Faulty<>(faults, tree);
        } catch (JsonMappingException e) {
            return new Faulty<>(List.of(new Fault(pointer(e), sentence(e))), tree);
        } catch (JsonProcessingException e) {
            return unreadable(firstLine(e.getOriginalMessage()));
        }
    }

    /** The sheet as it is written to JSON, to fill a form or to compare two versions. */
    public JsonNode written(T sheet) {
        return SheetFormat.json().valueToTree(sheet);
    }

    /** The sheet as a YAML file that starts with its kind. */
    public String yaml(T sheet) {
        try {
            var root = SheetFormat.json().createObjectNode().put("benchful", schema.kind());
            root.setAll((com.fasterxml.jackson.databind.node.ObjectNode) written(sheet));
            return SheetFormat.yaml().writeValueAsString(root);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Faulty<T> unreadable(String detail) {
        return new Faulty<>(List.of(new Fault("", detail)), SheetFormat.json().createObjectNode());
    }

    private static String placed(JsonProcessingException e) {
        String where = e.getLocation() == null ? "" : " at line %d, column %d".formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr());
        return "The file can't be read%s: %s".formatted(where, firstLine(e.getOriginalMessage()));
    }

    private static String firstLine(String text) {
        return text == null ? "it is damaged." : text.lines().findFirst().orElse("it is damaged.");
    }

    private static String pointer(JsonMappingException e) {
        StringBuilder pointer = new StringBuilder();
        e.getPath().forEach(r -> pointer.append('/').append(r.getFieldName() == null ? r.getIndex() : r.getFieldName()));
        return pointer.toString();
    }

    /** Jackson wraps the sentence of {@link SheetFormat}'s readers: "Cannot deserialize ... : SENTENCE". */
    private static String sentence(JsonMappingException e) {
        String message = firstLine(e.getOriginalMessage());
        int quoted = message.indexOf(": “");
        return quoted < 0 ? message : message.substring(quoted + 2);
    }
}
