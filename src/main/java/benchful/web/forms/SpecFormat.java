package benchful.web.forms;

import benchful.core.quantity.MeasuringRange;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.web.Times;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.EnumFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.cfg.MapperBuilder;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.dataformat.yaml.util.StringQuotingChecker;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import com.fasterxml.jackson.module.paramnames.ParameterNamesModule;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * How sheets are written: keys in snake case, amounts as {@code 42 cm}, times as {@code 1 h 30 min}, enumerations in lower
 * case; blanks are left out, and a list or map that is left out is read as an empty one. The same for YAML files, for JSON
 * and for what is stored.
 */
public final class SpecFormat {
    /** Largest file that is read: pictures included. */
    public static final int LARGEST = 16 * 1024 * 1024;

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2999;
    private static final Set<Class<?>> SPEAKING = Set.of(Quantity.class, Duration.class, LocalDate.class, Unit.class);

    /** An attribute of the reading of what a person wrote, rather than of what is stored. */
    static final String FROM_A_PERSON = "from a person";

    /** How long a name may be, the rules say; whatever is stored already is read. */
    private static final StreamReadConstraints DEPTH = StreamReadConstraints.builder().maxNestingDepth(40).maxNameLength(LARGEST).build();

    private static final ObjectMapper JSON =
            set(JsonMapper.builder(JsonFactory.builder().streamReadConstraints(DEPTH).build())).build();
    private static final ObjectMapper YAML = set(YAMLMapper.builder(YAMLFactory.builder()
                    .streamReadConstraints(DEPTH)
                    .loaderOptions(guarded())
                    .stringQuotingChecker(new NumberLike())
                    .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
                    .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
                    .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
                    .enable(YAMLGenerator.Feature.LITERAL_BLOCK_STYLE)
                    .build()))
            .build();

    private SpecFormat() {}

    public static ObjectMapper json() {
        return JSON;
    }

    public static ObjectMapper yaml() {
        return YAML;
    }

    /** How a name of the program is written as a key. */
    static String key(String name) {
        return PropertyNamingStrategies.SnakeCaseStrategy.INSTANCE.translate(name);
    }

    private static <M extends ObjectMapper, T extends MapperBuilder<M, T>> T set(T builder) {
        builder.configure(EnumFeature.READ_ENUM_KEYS_USING_INDEX, false)
                .configure(EnumFeature.WRITE_ENUMS_TO_LOWERCASE, true)
                .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false)
                .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
        for (Class<?> collection : List.of(List.class, Map.class)) {
            builder.withConfigOverride(collection, c -> c.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)));
        }
        return builder.addModule(new JavaTimeModule())
                .addModule(new ParameterNamesModule())
                .addModule(values())
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .serializationInclusion(JsonInclude.Include.NON_EMPTY)
                .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
    }

    private static SimpleModule values() {
        SimpleModule module = new SimpleModule("benchful");
        text(module, Quantity.class, q -> q.measurable().toString(), Quantity::parse, MeasuringRange::bounded);
        text(module, Duration.class, Times::words, Times::parse);
        text(module, LocalDate.class, LocalDate::toString, SpecFormat::date, SpecFormat::ofOurTime);
        text(module, Money.class, Money::toString, Money::parse);
        text(module, BigMoney.class, BigMoney::toString, BigMoney::parse);
        text(module, Sentence.class, Sentence::toString, Sentence::plain);
        text(module, Unit.class, Unit::symbol, SpecFormat::unit);
        module.addSerializer(Sentence.class, ToStringSerializer.instance);
        return module;
    }

    /** Whether the faults of reading a type are sentences for its writer. */
    static boolean speaks(Class<?> type) {
        return SPEAKING.contains(type);
    }

    private static LocalDate date(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("“%s” is no day of the calendar. Give the date as year-month-day, such as 2027-03-06."
                    .formatted(Sentence.quoted(written)), e);
        }
    }

    private static LocalDate ofOurTime(LocalDate date) {
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new IllegalArgumentException("Give a year from %d to %d.".formatted(FIRST_YEAR, LAST_YEAR));
        }
        return date;
    }

    private static Unit unit(String symbol) {
        return Unit.parse(symbol).orElseThrow(() -> new IllegalArgumentException(
                "“%s” is not a unit here. Give one such as pcs, cm, g or ml; a material may also be counted in “sheets 70 x 50 cm”, “cards of 2 m”, “tubes of 9 ml” or “pairs”."
                        .formatted(Sentence.quoted(symbol))));
    }

    private static <T> void text(SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read) {
        text(module, type, write, read, UnaryOperator.identity());
    }

    /**
     * Writes and reads a type as one text. A fault of reading keeps its sentence.
     *
     * @param check of what comes from a person; what is stored already is read whatever it is
     */
    private static <T> void text(SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read, UnaryOperator<T> check) {
        module.addSerializer(type, new JsonSerializer<T>() {
            @Override
            public void serialize(T value, JsonGenerator out, SerializerProvider context) throws IOException {
                out.writeString(write.apply(value));
            }
        });
        module.addDeserializer(type, new JsonDeserializer<T>() {
            @Override
            public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
                String written = in.getValueAsString("");
                try {
                    T value = read.apply(written);
                    return context.getAttribute(FROM_A_PERSON) == null ? value : check.apply(value);
                } catch (IllegalArgumentException e) {
                    return type.cast(context.handleWeirdStringValue(type, written, "%s", e.getMessage()));
                }
            }
        });
    }

    /** Texts that any reader of YAML might take for a number, such as 1e3 or 0x1F, are quoted too. */
    private static final class NumberLike extends StringQuotingChecker.Default {
        @Override
        public boolean needToQuoteValue(String value) {
            return super.needToQuoteValue(value) || value.matches("[-+]?\\.?\\d[\\w.:+-]*");
        }
    }

    private static LoaderOptions guarded() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(LARGEST);
        return options;
    }
}
