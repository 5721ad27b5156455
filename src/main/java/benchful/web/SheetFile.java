package benchful.web;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * A file as a tree, with the line on which each place begins. Numbers and truth values are kept as they are written,
 * for the schema to say which is meant as a text: a size called 0x10 stays one. References to other places of the file, with which a small YAML
 * file can stand for a huge one, are refused.
 *
 * @param lines by JSON Pointer, counted from 1
 */
record SheetFile(JsonNode tree, Map<String, Integer> lines) {
    /** YAML may open with a brace too, but hardly quotes its first key. */
    private static final Pattern JSON = Pattern.compile("\\s*\\{\\s*[\"}]");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String NO_SHEET =
            "The file holds no sheet. Its first line should say “benchful: …”, as in an exported file.";

    /** The file can't be taken at all; the message is a sentence for its owner. */
    static final class Unreadable extends Exception {
        private Unreadable(String sentence) {
            super(sentence);
        }
    }

    static SheetFile of(byte[] bytes) throws Unreadable {
        if (bytes.length > SheetFormat.LARGEST) {
            throw new Unreadable("The file has more than 16 MB. Leave out or shrink its pictures.");
        }
        String text = text(bytes);
        ObjectMapper mapper = JSON.matcher(text).lookingAt() ? SheetFormat.json() : SheetFormat.yaml();
        try {
            return read(mapper, text);
        } catch (StreamConstraintsException e) {
            throw new Unreadable("The file is nested too deeply, or one of its numbers or texts is too long, to be a sheet.");
        } catch (JsonProcessingException e) {
            throw new Unreadable(placed(e));
        } catch (YAMLException | IOException e) {
            throw new Unreadable("The file can't be read: " + firstLine(e.getMessage()));
        }
    }

    private static String text(byte[] bytes) throws Unreadable {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') >= 0) {
                throw new Unreadable("The file is no text, or not in UTF-8. Save it again with the encoding UTF-8.");
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new Unreadable("The file is not in UTF-8. Save it again with the encoding UTF-8.");
        }
    }

    private static SheetFile read(ObjectMapper mapper, String text) throws IOException, Unreadable {
        Map<String, Integer> lines = new HashMap<>();
        try (JsonParser parser = mapper.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new Unreadable(NO_SHEET);
            }
            JsonNode tree = node(parser, lines);
            if (parser.nextToken() != null) {
                throw new Unreadable("The file holds more than one sheet; the second begins at line %d. Import them one by one."
                        .formatted(parser.currentTokenLocation().getLineNr()));
            }
            return new SheetFile(tree, lines);
        }
    }

    private static JsonNode node(JsonParser parser, Map<String, Integer> lines) throws IOException, Unreadable {
        refuseReference(parser);
        lines.putIfAbsent(parser.getParsingContext().pathAsPointer().toString(), parser.currentTokenLocation().getLineNr());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, lines);
            case START_ARRAY -> list(parser, lines);
            case VALUE_NULL -> NODES.nullNode();
            case VALUE_EMBEDDED_OBJECT -> NODES.binaryNode(parser.getBinaryValue());
            default -> NODES.textNode(parser.getText());
        };
    }

    private static ObjectNode object(JsonParser parser, Map<String, Integer> lines) throws IOException, Unreadable {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            object.set(key, node(parser, lines));
        }
        return object;
    }

    private static ArrayNode list(JsonParser parser, Map<String, Integer> lines) throws IOException, Unreadable {
        ArrayNode list = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(node(parser, lines));
        }
        return list;
    }

    private static void refuseReference(JsonParser parser) throws Unreadable {
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            throw new Unreadable("The file refers back to another of its places at line %d (“*%s”). Write the value out there."
                    .formatted(parser.currentTokenLocation().getLineNr(), firstLine(textOf(parser))));
        }
    }

    private static String textOf(JsonParser parser) {
        try {
            return parser.getText();
        } catch (IOException e) {
            return "";
        }
    }

    private static String placed(JsonProcessingException e) {
        String where = e.getLocation() == null || e.getLocation().getLineNr() < 1
                ? ""
                : " at line %d, column %d".formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr());
        return "The file can't be read%s: %s".formatted(where, firstLine(e.getOriginalMessage()));
    }

    private static String firstLine(String text) {
        return text == null ? "it is damaged." : text.lines().findFirst().orElse("it is damaged.");
    }
}
