package benchful.web.forms;

import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.OneOf;
import benchful.web.forms.fields.Range;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/** What each annotation of a field is in a JSON Schema. */
final class SchemaTerms {
    /** The keyword that holds how to put a wrong value right: an annotation of our own, which a schema marks by {@code x-}. */
    static final String MEND = "x-mend";

    /** The keyword for the key that a field had before. */
    static final String FORMERLY = "x-formerly";

    private static final Map<String, String> COUNTED = Map.of("string", "Length", "array", "Items", "object", "Properties");
    private static final Map<Class<?>, BiConsumer<ObjectNode, Annotation>> TERMS = new HashMap<>();

    static {
        term(Mend.class, (rule, mend) -> rule.put(MEND, mend.value()));
        term(Matching.class, (rule, matching) -> rule.put("pattern", matching.value()));
        term(OneOf.class, (rule, words) -> List.of(words.value()).forEach(rule.withArrayProperty("enum")::add));
        term(Filled.class, (rule, filled) -> rule.put("minLength", 1).put("maxLength", filled.value()).put("pattern", "\\S"));
        term(Length.class, SchemaTerms::length);
        term(Range.class, SchemaTerms::range);
    }

    private SchemaTerms() {}

    private static <A extends Annotation> void term(Class<A> type, BiConsumer<ObjectNode, A> writer) {
        TERMS.put(type, (rule, annotation) -> writer.accept(rule, type.cast(annotation)));
    }

    /** Adds to a rule what is said at a place, a type or a word. */
    static ObjectNode said(ObjectNode rule, AnnotatedElement at) {
        for (Annotation a : at.getAnnotations()) {
            TERMS.getOrDefault(a.annotationType(), (r, other) -> {}).accept(rule, a);
        }
        return rule;
    }

    private static void length(ObjectNode rule, Length length) {
        String counted = COUNTED.get(rule.path("type").asText());
        if (length.least() > 0) {
            rule.put("min" + counted, length.least());
        }
        rule.put("max" + counted, length.most());
    }

    private static void range(ObjectNode rule, Range range) {
        bound(rule, "minimum", range.from(), Long.MIN_VALUE);
        bound(rule, "maximum", range.to(), Long.MAX_VALUE);
        bound(rule, "exclusiveMinimum", range.above(), Long.MIN_VALUE);
        bound(rule, "exclusiveMaximum", range.below(), Long.MAX_VALUE);
    }

    private static void bound(ObjectNode rule, String keyword, long bound, long none) {
        if (bound != none) {
            rule.put(keyword, bound);
        }
    }
}
