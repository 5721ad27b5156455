package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Reads one kind of sheet from a file or a form: first its JSON Schema, then its record, then its own rules. What comes
 * back is the sheet, or every fault with its place; what was written is kept either way.
 *
 * @param <T> the record of the sheet
 */
public final class SpecReader<T> {
    private static final String BEYOND_READING = "What is stored here can't be read. Fill the form in anew and save it, and all is well again.";

    private final Class<T> type;
    private final SpecSchema schema;
    private final Function<T, List<Fault>> rules;
    private final BiFunction<JsonNode, String, Optional<String>> coins;

    /**
     * @param type a record that is a {@link benchful.web.forms.fields.Spec}
     * @param rules what must agree within the sheet, beyond the schema
     */
    public SpecReader(Class<T> type, Function<T, List<Fault>> rules) {
        this(type, SpecSchema.of(type), rules, TypedPrices::named);
    }

    private SpecReader(Class<T> type, SpecSchema schema, Function<T, List<Fault>> rules, BiFunction<JsonNode, String, Optional<String>> coins) {
        this.type = type;
        this.schema = schema;
        this.rules = rules;
        this.coins = coins;
    }

    /** A reader that asks more of the sheet: its faults are told together with the others. */
    public SpecReader<T> and(Function<T, List<Fault>> more) {
        return new SpecReader<>(type, schema, sheet -> Stream.concat(rules.apply(sheet).stream(), more.apply(sheet).stream()).toList(), coins);
    }

    /**
     * A reader that knows in which currency the sheet's prices are, where the sheet itself does not say.
     *
     * @param other the code of the currency of a place in a sheet as it is written; nothing where that is not known
     */
    public SpecReader<T> pricedIn(BiFunction<JsonNode, String, Optional<String>> other) {
        return new SpecReader<>(type, schema, rules, other);
    }

    /** What was read. */
    public sealed interface Reading<T> {
        /** What was written, to show again. */
        JsonNode tree();

        /** With something put in that is not written. */
        Reading<T> with(UnaryOperator<T> more);
    }

    public record Read<T>(T sheet, JsonNode tree) implements Reading<T> {
        @Override
        public Reading<T> with(UnaryOperator<T> more) {
            return new Read<>(more.apply(sheet), tree);
        }
    }

    /**
     * @param faults at least one, in the order of the sheet
     * @param lines of a file, the line on which each place begins, by JSON Pointer; empty for a form
     */
    public record Faulty<T>(List<Fault> faults, JsonNode tree, Map<String, Integer> lines) implements Reading<T> {
        public Faulty {
            faults = List.copyOf(faults);
            lines = Map.copyOf(lines);
        }

        @Override
        public Reading<T> with(UnaryOperator<T> more) {
            return this;
        }

        /** The line of a place, or of the nearest place about it that the file holds. */
        public OptionalInt line(String pointer) {
            String at = pointer;
            while (!at.isEmpty() && !lines.containsKey(at)) {
                at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
            }
            return lines.containsKey(at) ? OptionalInt.of(lines.get(at)) : OptionalInt.empty();
        }
    }

    public SpecSchema schema() {
        return schema;
    }

    /** Reads YAML, of which JSON is a part. */
    public Reading<T> file(byte[] bytes) {
        try {
            SpecFile file = SpecFile.of(bytes);
            Reading<T> reading = tree(file.tree());
            return reading instanceof Faulty<T> f ? new Faulty<>(f.faults(), f.tree(), file.lines()) : reading;
        } catch (SpecFile.Unreadable e) {
            return new Faulty<>(List.of(new Fault("", e.getMessage())), SpecFormat.json().createObjectNode(), Map.of("", e.line()));
        }
    }

    /**
     * Checks what was typed or read. Texts that stand for numbers, as forms send them, are taken as numbers; prices may bear the sign
     * of their currency, and keep it until all is well.
     */
    public Reading<T> tree(JsonNode written) {
        TypedPrices prices = TypedPrices.in(written, schema);
        JsonNode tree = schema.coerced(prices.numbers(written));
        List<Fault> faults = new ArrayList<>(prices.faults(tree, coins));
        schema.faults(tree).stream().filter(fault -> faults.stream().noneMatch(f -> f.pointer().equals(fault.pointer()))).forEach(faults::add);
        Reading<T> reading = faults.isEmpty() ? bound(tree) : new Faulty<>(faults, tree, Map.of());
        return reading instanceof Faulty<T> faulty ? new Faulty<>(faulty.faults(), prices.asTyped(tree), Map.of()) : reading;
    }

    private Reading<T> bound(JsonNode tree) {
        Unwritten handler = new Unwritten();
        try {
            T sheet = SpecFormat.json().readerFor(type).withAttribute(SpecFormat.FROM_A_PERSON, true).withHandler(handler).readValue(tree);
            List<Fault> faults = handler.faults.isEmpty() ? rules.apply(sheet) : handler.faults;
            return faults.isEmpty() ? new Read<>(sheet, tree) : new Faulty<>(faults, tree, Map.of());
        } catch (IOException e) {
            List<Fault> faults = handler.faults.isEmpty() ? List.of(fault(e)) : handler.faults;
            return new Faulty<>(faults, tree, Map.of());
        }
    }

    /** Collects the texts that are no amount, time or unit, so that all are told at once. */
    private final class Unwritten extends DeserializationProblemHandler {
        private final List<Fault> faults = new ArrayList<>();

        @Override
        public Object handleWeirdStringValue(DeserializationContext context, Class<?> wanted, String written, String sentence) {
            String pointer = context.getParser().getParsingContext().pathAsPointer().toString();
            faults.add(new Fault(pointer, SpecFormat.speaks(wanted) ? sentence : schema.mend(pointer)));
            return null;
        }
    }

    private Fault fault(IOException e) {
        String pointer = "";
        if (e instanceof JsonMappingException m) {
            for (JsonMappingException.Reference r : m.getPath()) {
                pointer = JsonPointers.below(pointer, r.getFieldName() == null ? String.valueOf(r.getIndex()) : r.getFieldName());
            }
        }
        boolean guarded = e.getCause() instanceof IllegalArgumentException;
        return new Fault(pointer, guarded ? e.getCause().getMessage() : schema.mend(pointer));
    }

    /** The sheet as it is written to JSON, to fill a form or to compare two versions. */
    public JsonNode written(T sheet) {
        try {
            return SpecFormat.json().readTree(SpecFormat.json().writeValueAsBytes(sheet));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The form of what is stored, with what its rules say of it today; where it can't be read, what is written there. */
    public SpecForm form(Stored<T> stored, long version) {
        return stored.readable().map(sheet -> SpecForm.faulty(written(sheet), rules.apply(sheet), version)).orElseGet(() -> mending(stored.tree(), version));
    }

    /** The form in which something that can't be read is mended. */
    public SpecForm mending(ObjectNode stored, long version) {
        List<Fault> faults = tree(stored) instanceof Faulty<T> faulty ? faulty.faults() : List.of(new Fault("", BEYOND_READING));
        return SpecForm.faulty(schema.renamed(stored), faults, version);
    }

    /** The sheet as a YAML file that starts with its kind. */
    public String yaml(T sheet) {
        try {
            ObjectNode root = SpecFormat.json().createObjectNode().put("benchful", schema.kind());
            root.setAll((ObjectNode) written(sheet));
            return SpecFormat.yaml().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
