package benchful.web.forms;

import benchful.core.Fault;
import benchful.core.quantity.Sentence;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.JsonMetaSchema;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.NonValidationKeyword;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.ValidationMessage;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The JSON Schema (2020-12) of one kind of sheet, made of its record when it is first asked for; a print of it is served under
 * {@code /schema/}. Its keyword {@code x-mend} holds the sentence that tells a person how to put a wrong value right; forms and
 * files give the same one.
 */
public final class SpecSchema {
    private static final int LONGEST_NAME = 200;
    private static final int MOST_PLACES = 15;
    private static final String PRICE = Price.class.getAnnotation(Mend.class).value();
    private static final Map<Class<?>, SpecSchema> MADE = new ConcurrentHashMap<>();

    private final String name;
    private final Map<String, ObjectNode> documents;
    private final ObjectNode document;
    private final JsonSchema validator;

    private SpecSchema(Class<?> type) {
        this.name = type.getAnnotation(Spec.class).name();
        this.documents = SchemaDocument.with(type);
        this.document = documents.get(name);
        SchemaValidatorsConfig config = SchemaValidatorsConfig.builder().pathType(PathType.JSON_POINTER).build();
        this.validator = factory().getSchema(SchemaLocation.of(address(name)), config);
    }

    private JsonSchemaFactory factory() {
        JsonMetaSchema withMend = JsonMetaSchema.builder(JsonMetaSchema.getV202012()).keyword(new NonValidationKeyword(SchemaTerms.MEND)).keyword(new NonValidationKeyword(SchemaTerms.FORMERLY)).build();
        Map<String, String> texts = documents.entrySet().stream().collect(Collectors.toMap(d -> address(d.getKey()), d -> d.getValue().toString()));
        return JsonSchemaFactory.builder()
                .metaSchema(withMend)
                .defaultMetaSchemaIri(withMend.getIri())
                .schemaLoaders(loaders -> loaders.schemas(texts))
                .build();
    }

    private static String address(String name) {
        return SchemaDocument.HOME + name + ".json";
    }

    /** @param type a record that is a {@link Spec} */
    public static SpecSchema of(Class<?> type) {
        return MADE.computeIfAbsent(type, SpecSchema::new);
    }

    /** The kind that a file of this schema names first: {@code project/1}. */
    public String kind() {
        return SchemaDocument.kind(name);
    }

    /** Every break of the schema, one for a place. */
    public List<Fault> faults(JsonNode tree) {
        Map<String, Fault> faults = new LinkedHashMap<>();
        ReadableText.faults(tree).forEach(f -> faults.putIfAbsent(f.pointer(), f));
        for (ValidationMessage m : validator.validate(tree)) {
            Fault fault = fault(m);
            faults.putIfAbsent(fault.pointer(), fault);
        }
        return List.copyOf(faults.values());
    }

    private Fault fault(ValidationMessage m) {
        String at = m.getInstanceLocation().toString();
        String property = m.getProperty();
        return switch (m.getType()) {
            case "required" -> new Fault(JsonPointers.below(at, property), at(JsonPointers.below(at, property)).path(SchemaTerms.MEND).asText("“%s” is missing.".formatted(property)));
            case "additionalProperties", "unevaluatedProperties" -> property.length() > LONGEST_NAME
                    ? new Fault(at, "“%s” is not known here. Check its spelling.".formatted(Sentence.quoted(property)))
                    : new Fault(JsonPointers.below(at, property), "“%s” is not known here. Check its spelling.".formatted(property));
            case "propertyNames" -> new Fault(at, "“%s” can't be a name here. %s".formatted(Sentence.quoted(property), nameRule(at).path(SchemaTerms.MEND).asText()).strip());
            case "maxLength" -> new Fault(at, "Shorten it to at most %d letters.".formatted(at(at).path("maxLength").asInt()));
            case "maxItems" -> new Fault(at, "At most %d can be listed here. Leave some out.".formatted(at(at).path("maxItems").asInt()));
            case "maxProperties" -> new Fault(at, "At most %d can be named here. Leave some out.".formatted(at(at).path("maxProperties").asInt()));
            case "type" -> new Fault(at, kind(at));
            default -> new Fault(at, mend(at));
        };
    }

    private JsonNode nameRule(String pointer) {
        return resolved(at(pointer).path("propertyNames"));
    }

    /** What is to be written at a place where a list, a text or a number stands in for another. */
    private String kind(String pointer) {
        return switch (at(pointer).path("type").asText()) {
            case "string" -> "Write one text here.";
            case "array" -> "Write a list here.";
            case "object" -> "Write names with their values here.";
            case "boolean" -> "Write true or false here.";
            default -> mend(pointer);
        };
    }

    boolean isPrice(String pointer) {
        return at(pointer).path(SchemaTerms.MEND).asText().equals(PRICE);
    }

    /** How to put a value at a place right. */
    String mend(String pointer) {
        return at(pointer).path(SchemaTerms.MEND).asText("This can't stand here. Write it as in an exported file, or leave it out.");
    }

    /** The part of the schema that a place in a sheet falls under; a missing node where there is none. */
    public JsonNode at(String pointer) {
        JsonNode here = document;
        for (String part : pointer.split("/", -1)) {
            here = part.isEmpty() && here == document ? here : below(here, JsonPointers.unescaped(part));
        }
        return here;
    }

    /**
     * A copy in which texts stand as the numbers and truth values that the schema wants, where they can, bare numbers as the
     * texts it wants ({@code lasts: 20} is {@code "20"}), and keys with nothing or blanks after them are left out.
     */
    public JsonNode coerced(JsonNode tree) {
        return coerced(renamed(tree), document);
    }

    /** A copy in which fields have the keys of today. */
    public JsonNode renamed(JsonNode tree) {
        return renamed(tree, document);
    }

    private JsonNode renamed(JsonNode node, JsonNode rule) {
        if (node instanceof ArrayNode a) {
            ArrayNode copy = a.arrayNode();
            a.forEach(n -> copy.add(renamed(n, below(rule, "0"))));
            return copy;
        }
        if (!(node instanceof ObjectNode o)) {
            return node;
        }
        ObjectNode copy = o.objectNode();
        for (Map.Entry<String, JsonNode> field : o.properties()) {
            String key = keyOfToday(field.getKey(), rule);
            JsonNode value = renamed(field.getValue(), below(rule, key));
            if (key.equals(field.getKey()) || !o.has(key)) {
                copy.set(key, key.equals(field.getKey()) || value.isNull() || value.isArray() || !below(rule, key).path("type").asText().equals("array") ? value : o.arrayNode().add(value));
            }
        }
        return copy;
    }

    private static String keyOfToday(String key, JsonNode rule) {
        return rule.path("properties").has(key) ? key : rule.path("properties").properties().stream()
                .filter(field -> field.getValue().path(SchemaTerms.FORMERLY).asText().equals(key)).map(Map.Entry::getKey).findFirst().orElse(key);
    }

    private JsonNode coerced(JsonNode node, JsonNode rule) {
        if (node instanceof ObjectNode o) {
            ObjectNode copy = o.objectNode();
            o.properties().stream().filter(e -> !isNothing(e.getValue()))
                    .forEach(e -> copy.set(e.getKey(), coerced(e.getValue(), below(rule, e.getKey()))));
            return copy;
        }
        if (node instanceof ArrayNode a) {
            ArrayNode copy = a.arrayNode();
            a.forEach(n -> copy.add(coerced(n, below(rule, "0"))));
            return copy;
        }
        String type = rule.path("type").asText();
        if (node.isBinary() || node.isNumber() && type.equals("string")) {
            return TextNode.valueOf(node.isBigDecimal() ? node.decimalValue().toPlainString() : node.asText());
        }
        return node.isTextual() ? typed(spelt(node, rule), type) : node;
    }

    /** A fraction that is one sign is spelt out, and a percent sign is passed over in a percentage, or divides a share. */
    private static JsonNode spelt(JsonNode text, JsonNode rule) {
        String written = text.textValue().strip();
        if (rule.path("pattern").asText().startsWith("^\\s*\\d") && written.matches("[¼-¾⅐-⅞].*")) {
            return TextNode.valueOf(Normalizer.normalize(written, Normalizer.Form.NFKC).replace('\u2044', '/'));
        }
        boolean share = rule.path("maximum").asInt() == 1 || rule.path("exclusiveMaximum").asInt() == 1;
        if ((share || rule.path(SchemaTerms.MEND).asText().contains("percentage")) && written.matches("\\d{1,3}([.,]\\d{1,6})?\\s*%")) {
            BigDecimal percent = new BigDecimal(written.replaceAll("\\s*%$", "").replace(',', '.'));
            return TextNode.valueOf((share ? percent.movePointLeft(2) : percent).toPlainString());
        }
        return text;
    }

    private static boolean isNothing(JsonNode value) {
        return value.isNull() || value.isTextual() && value.textValue().isBlank();
    }

    private static JsonNode typed(JsonNode text, String type) {
        String written = text.textValue().strip();
        try {
            return switch (type) {
                case "integer" -> IntNode.valueOf(Integer.parseInt(written));
                case "number" -> DecimalNode.valueOf(decimal(written));
                case "boolean" -> written.matches("true|yes|false|no") ? BooleanNode.valueOf(written.matches("true|yes")) : text;
                default -> text;
            };
        } catch (NumberFormatException e) {
            return text;
        }
    }

    private static BigDecimal decimal(String written) {
        if (!written.matches("[+-]?\\d{1,15}([.,]\\d{1,12})?([eE][+-]?\\d{1,2})?")) {
            throw new NumberFormatException(written);
        }
        BigDecimal number = new BigDecimal(written.replace(',', '.'));
        if (Math.abs(number.scale()) > MOST_PLACES) {
            throw new NumberFormatException(written);
        }
        return number;
    }

    private JsonNode below(JsonNode rule, String part) {
        JsonNode named = resolved(rule.path("properties").path(part));
        if (!named.isMissingNode()) {
            return named;
        }
        JsonNode items = part.matches("\\d+") ? resolved(rule.path("items")) : rule.path("items").path("none");
        return items.isMissingNode() ? resolved(rule.path("additionalProperties")) : items;
    }

    private JsonNode resolved(JsonNode rule) {
        JsonNode ref = rule.path("$ref");
        if (ref.isMissingNode()) {
            return rule;
        }
        String[] parts = ref.asText().split("\\.json#?", 2);
        return withMend(rule, documents.get(parts[0]).at(parts[1]));
    }

    private static JsonNode withMend(JsonNode rule, JsonNode target) {
        return rule.has(SchemaTerms.MEND) && target instanceof ObjectNode o ? o.deepCopy().set(SchemaTerms.MEND, rule.get(SchemaTerms.MEND)) : target;
    }
}
