package benchful.web.forms;

import benchful.web.forms.fields.Formerly;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.OneOf;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Writes the JSON Schema (2020-12) of a spec: a walk over the components of its record, under the keys that its reader knows.
 * What holds for many fields stands once in a document, in {@code $defs}, by the name of its word or type.
 */
final class SchemaDocument {
    static final String HOME = "https://benchful.example/schema/";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Map<String, ObjectNode> all;
    private final String name;
    private final Map<String, Class<?>> words = new HashMap<>();
    private final ObjectNode shared = NODES.objectNode();

    private SchemaDocument(Map<String, ObjectNode> all, String name) {
        this.all = all;
        this.name = name;
    }

    /** The schema of a spec and of those it is made of, by their names. */
    static Map<String, ObjectNode> with(Class<?> type) {
        Map<String, ObjectNode> all = new LinkedHashMap<>();
        write(all, type);
        return all;
    }

    /** @return its name */
    private static String write(Map<String, ObjectNode> all, Class<?> type) {
        Spec spec = type.getAnnotation(Spec.class);
        if (!all.containsKey(spec.name())) {
            all.put(spec.name(), new SchemaDocument(all, spec.name()).of(type, spec));
        }
        return spec.name();
    }

    private ObjectNode of(Class<?> type, Spec spec) {
        ObjectNode fields = NODES.objectNode();
        if (!spec.file().isEmpty()) {
            String kind = kind(name);
            fields.putObject("benchful").put("const", kind)
                    .put(SchemaTerms.MEND, "The first line of %s is “benchful: %s”.".formatted(spec.file(), kind));
        }
        ObjectNode document = NODES.objectNode()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema").put("$id", HOME + name + ".json").put("title", spec.title());
        document.setAll(record(type, fields));
        return shared.isEmpty() ? document : document.set("$defs", shared);
    }

    static String kind(String name) {
        return name.replace('-', '/');
    }

    private ObjectNode record(Class<?> type, ObjectNode fields) {
        ArrayNode required = NODES.arrayNode();
        for (RecordComponent field : type.getRecordComponents()) {
            String key = key(field);
            ObjectNode rule = rule(field.getAnnotatedType());
            fields.set(key, field.isAnnotationPresent(Formerly.class) ? rule.put(SchemaTerms.FORMERLY, field.getAnnotation(Formerly.class).value()) : rule);
            if (field.isAnnotationPresent(Required.class)) {
                required.add(key);
            }
        }
        ObjectNode rule = NODES.objectNode().put("type", "object");
        if (!required.isEmpty()) {
            rule.set("required", required);
        }
        return SchemaTerms.said(rule.put("additionalProperties", false), type).set("properties", fields);
    }

    private static String key(RecordComponent field) {
        JsonProperty named = field.getAccessor().getAnnotation(JsonProperty.class);
        return named == null ? SpecFormat.key(field.getName()) : named.value();
    }

    /** What may stand at a place: what its word or its type says of many places, and what is said of this one. */
    private ObjectNode rule(AnnotatedType at) {
        ObjectNode rule = Arrays.stream(at.getAnnotations()).<Class<?>>map(Annotation::annotationType).filter(a -> a.isAnnotationPresent(Mend.class)).findFirst()
                .map(word -> shared(SpecFormat.key(word.getSimpleName()), word, () -> SchemaTerms.said(plain(at), word)))
                .orElseGet(() -> usual(at));
        return SchemaTerms.said(rule, at);
    }

    private ObjectNode usual(AnnotatedType at) {
        Class<?> type = raw(at);
        if (at.isAnnotationPresent(OneOf.class)) {
            return NODES.objectNode();
        }
        if (UsualFields.text(type).isPresent()) {
            RecordComponent text = UsualFields.text(type).get();
            return shared(text.getName(), type, () -> SchemaTerms.said(plain(at), text.getAnnotatedType()));
        }
        if (type.isAnnotationPresent(Spec.class)) {
            return NODES.objectNode().put("$ref", write(all, type) + ".json");
        }
        if (type.isRecord()) {
            return shared(SpecFormat.key(type.getSimpleName()), type, () -> record(UsualFields.saying(type), NODES.objectNode()));
        }
        return type.isEnum() ? shared(SpecFormat.key(type.getSimpleName()), type, () -> mended(plain(at))) : plain(at);
    }

    /** What the type alone allows. */
    private ObjectNode plain(AnnotatedType at) {
        if (!(at instanceof AnnotatedParameterizedType p)) {
            return UsualFields.plain(raw(at));
        }
        AnnotatedType[] parts = p.getAnnotatedActualTypeArguments();
        return parts.length == 1 ? NODES.objectNode().put("type", "array").set("items", rule(parts[0])) : map(parts[0], parts[1]);
    }

    private ObjectNode map(AnnotatedType name, AnnotatedType value) {
        ObjectNode rule = NODES.objectNode().put("type", "object");
        if (raw(name).isEnum()) {
            ObjectNode fields = rule.put("additionalProperties", false).putObject("properties");
            plain(name).get("enum").forEach(word -> fields.set(word.asText(), rule(value)));
            return rule;
        }
        return rule.<ObjectNode>set("propertyNames", rule(name)).set("additionalProperties", rule(value));
    }

    /** A choice of words, with the sentence that names them. */
    private static ObjectNode mended(ObjectNode choice) {
        List<String> words = choice.get("enum").valueStream().map(w -> w.asText()).toList();
        int last = words.size() - 1;
        return choice.put(SchemaTerms.MEND, "Choose %s or %s.".formatted(String.join(", ", words.subList(0, last)), words.get(last)));
    }

    /** A reference to a rule that stands once in the document, under the name that its class gives it. */
    private ObjectNode shared(String word, Class<?> by, Supplier<ObjectNode> rule) {
        Class<?> named = words.putIfAbsent(word, by);
        if (named == null) {
            shared.set(word, rule.get());
        } else if (named != by) {
            throw new IllegalStateException("“%s” in %s is named by both %s and %s.".formatted(word, name, named, by));
        }
        return NODES.objectNode().put("$ref", "%s.json#/$defs/%s".formatted(name, word));
    }

    private static Class<?> raw(AnnotatedType at) {
        return SpecFormat.json().constructType(at.getType()).getRawClass();
    }
}
