package benchful.web.forms;

import benchful.core.quantity.Sentence;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * A file as a tree, with the line on which each place begins. Numbers and truth values are kept as they are written,
 * for the schema to say which is meant as a text: a size called 0x10 stays one. References to other places of the file, with which a small YAML
 * file can stand for a huge one, are refused.
 *
 * @param lines by JSON Pointer, counted from 1
 */
record SpecFile(JsonNode tree, Map<String, Integer> lines) {
    /** YAML may open with a brace too, but hardly quotes its first key. */
    private static final Pattern JSON = Pattern.compile("\\s*\\{\\s*[\"}]");
    private static final Pattern TWICE = Pattern.compile("Duplicate field '(.*)'");
    /** The time that YAML's reader takes grows with the square of a line's length: 16 MB on one line would take minutes. */
    private static final int LONGEST_LINE = 200_000;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String NO_SHEET =
            "The file holds no sheet. Its first line should say “benchful: …”, as in an exported file.";

    /** The file can't be taken at all; the message is a sentence for its owner. */
    static final class Unreadable extends Exception {
        private final int line;

        private Unreadable(int line, String sentence) {
            super(sentence);
            this.line = line;
        }

        /** Where it can't be read on, counted from 1. */
        int line() {
            return line;
        }
    }

    static SpecFile of(byte[] bytes) throws Unreadable {
        if (bytes.length > SpecFormat.LARGEST) {
            throw new Unreadable(1, "The file has more than 16 MB. Leave out or shrink its pictures.");
        }
        String text = text(bytes);
        boolean json = JSON.matcher(text).lookingAt();
        if (!json) {
            refuseLongLines(text);
        }
        try (JsonParser parser = (json ? SpecFormat.json() : SpecFormat.yaml()).createParser(text)) {
            return read(parser, json);
        } catch (IOException e) {
            throw new Unreadable(1, "The file can't be read as a text. Save it again with the encoding UTF-8.");
        }
    }

    private static String text(byte[] bytes) throws Unreadable {
        CharBuffer read = CharBuffer.allocate(bytes.length);
        if (StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), read, true).isError()) {
            throw unfit(read.flip().toString(), "The file is not in UTF-8 at line %d. Save it again with the encoding UTF-8.");
        }
        String text = read.flip().toString();
        if (text.indexOf('\0') >= 0) {
            throw unfit(text.substring(0, text.indexOf('\0')), "The file is no text, or not in UTF-8, at line %d. Save it again with the encoding UTF-8.");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static void refuseLongLines(String text) throws Unreadable {
        int line = 0;
        for (String written : (Iterable<String>) text.lines()::iterator) {
            line++;
            if (written.length() > LONGEST_LINE) {
                throw new Unreadable(line, "Line %d has more than 200,000 letters. Part it into shorter ones; a picture stands in many lines below “content: !!binary |”."
                        .formatted(line));
            }
        }
    }

    /** @param before what could be read */
    private static Unreadable unfit(String before, String sentence) {
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new Unreadable(line, sentence.formatted(line));
    }

    /** What the readers say is about their own workings; where they stopped is what helps. */
    private static SpecFile read(JsonParser parser, boolean json) throws Unreadable {
        try {
            return read(parser);
        } catch (StreamConstraintsException e) {
            throw new Unreadable(line(e, parser), "The file is nested too deeply, or one of its numbers or texts is too long, at line %d. No sheet needs that: mend it there."
                    .formatted(line(e, parser)));
        } catch (JsonProcessingException e) {
            throw new Unreadable(line(e, parser), broken(e, json).formatted(line(e, parser)));
        } catch (YAMLException | IOException e) {
            throw new Unreadable(parser.currentLocation().getLineNr(), broken(e, json).formatted(parser.currentLocation().getLineNr()));
        }
    }

    private static int line(JsonProcessingException e, JsonParser parser) {
        return Math.max(1, e.getLocation() == null ? parser.currentLocation().getLineNr() : e.getLocation().getLineNr());
    }

    private static String broken(Exception e, boolean json) {
        Matcher twice = TWICE.matcher(String.valueOf(e.getMessage()));
        if (twice.find()) {
            return "“%s” is there twice; the second time at line %%d. Leave one of the two out.".formatted(Sentence.quoted(twice.group(1)).replace("%", "%%"));
        }
        return json ? "The file can't be read on at line %d. Look there and just before for a comma, a quotation mark or a bracket that is missing or too much."
                : "The file can't be read on at line %d. Look there and in the line before: lines that belong together begin at the same place, with blanks and no tabs; "
                        + "after a colon comes a blank; a text with a colon or a quotation mark in it stands between quotation marks.";
    }

    private static SpecFile read(JsonParser parser) throws IOException, Unreadable {
        Map<String, Integer> lines = new HashMap<>();
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw new Unreadable(1, NO_SHEET);
        }
        JsonNode tree = node(parser, lines);
        if (parser.nextToken() != null) {
            int line = parser.currentTokenLocation().getLineNr();
            throw new Unreadable(line, "The file holds more than one sheet; the second begins at line %d. Import them one by one.".formatted(line));
        }
        return new SpecFile(tree, lines);
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
            int line = parser.currentTokenLocation().getLineNr();
            throw new Unreadable(line, "The file refers back to another of its places at line %d (“*%s”). Write the value out there."
                    .formatted(line, Sentence.quoted(textOf(parser))));
        }
    }

    private static String textOf(JsonParser parser) {
        try {
            return parser.getText();
        } catch (IOException e) {
            return "";
        }
    }
}
