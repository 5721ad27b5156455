package benchful.core.formula;

import benchful.core.quantity.Container;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Handwritten;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.RingSize;
import benchful.core.quantity.Unit;
import benchful.core.quantity.WireGauge;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.MapBasedFunctionDictionary;
import com.ezylang.evalex.functions.basic.CeilingFunction;
import com.ezylang.evalex.functions.basic.FloorFunction;
import com.ezylang.evalex.functions.basic.MaxFunction;
import com.ezylang.evalex.functions.basic.MinFunction;
import com.ezylang.evalex.functions.basic.SqrtFunction;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;
import com.ezylang.evalex.parser.Token.TokenType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One expression of numbers, units, named measures and the functions {@code ceil floor round sqrt min max}, with units
 * checked: adding a mass to a length is an error in words, not a number. {@code awg(20)} and {@code swg(20)} are a wire's
 * diameter by its gauge, {@code us_ring(7)} the inside circumference of a ring.
 *
 * <p>Exact in + - *; division and square root carry 34 significant digits.
 */
public final class Formula {
    private static final String HOW =
            "Use numbers, units, measures, + - * / and brackets, and ceil, floor, round, sqrt, min, max, awg, swg or us_ring.";
    private static final Map<String, BigDecimal> CONSTANTS =
            Map.of("pi", Quantity.PI, "percent", new BigDecimal("0.01"));
    private static final int LONGEST = 500;
    /** A number with its unit binds before any sign: {@code length / 6 mm} divides by six millimetres. */
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?)\\s*(" + symbols() + ")(?!\\w)");

    private static final Pattern NUMBER = Pattern.compile("\\d{0,15}\\.?\\d{0,15}");

    /** Only the reading is EvalEx's: the functions it is given merely tell how many values each takes. */
    private static final ExpressionConfiguration READER = ExpressionConfiguration.builder()
            .arraysAllowed(false)
            .structuresAllowed(false)
            .functionDictionary(MapBasedFunctionDictionary.ofFunctions(
                    Map.entry("ceil", new CeilingFunction()),
                    Map.entry("floor", new FloorFunction()),
                    Map.entry("round", new FloorFunction()),
                    Map.entry("sqrt", new SqrtFunction()),
                    Map.entry("min", new MinFunction()),
                    Map.entry("max", new MaxFunction()),
                    Map.entry("awg", new FloorFunction()),
                    Map.entry("swg", new FloorFunction()),
                    Map.entry("us_ring", new FloorFunction())))
            .build();

    private final String text;
    private final ASTNode tree;

    private Formula(String text, ASTNode tree) {
        this.text = text;
        this.tree = tree;
    }

    /** @throws FormulaException if it can't be read */
    public static Formula of(@Nullable String text) {
        if (text == null || text.isBlank() || text.length() > LONGEST) {
            throw new FormulaException(
                    text == null ? "" : text.length() > LONGEST ? text.substring(0, 40) + "…" : text,
                    "write an expression of at most " + LONGEST + " characters, such as 2 * length + 40 cm.");
        }
        try {
            return new Formula(text, new Expression(bound(text), READER).getAbstractSyntaxTree());
        } catch (ParseException e) {
            throw new FormulaException(text, "it can't be read (%s). %s".formatted(e.getMessage(), HOW));
        }
    }

    /** The measures the formula asks for, units left out. */
    public Set<String> names() {
        Set<String> names = new TreeSet<>();
        collect(tree, names);
        return names;
    }

    /** @throws FormulaException if a name is unknown, units clash or a division is by zero */
    public Quantity evaluate(Map<String, Quantity> measures) {
        Value v = value(tree, measures);
        Unit unit = Unit.held(v.dimension())
                .orElseThrow(() -> fault("the result is no length, area, volume, mass or count. Check the units."));
        return Quantity.ofBase(v.number(), unit);
    }

    /** Evaluates and insists on a kind of amount: "it gives a length, but the material is counted by mass". */
    public Quantity evaluate(Map<String, Quantity> measures, Dimension wanted) {
        Quantity q = evaluate(measures);
        if (!q.dimension().equals(wanted)) {
            throw fault("it gives %s, but %s is needed here.".formatted(q.dimension().words(), wanted.words()));
        }
        return q;
    }

    private Value value(ASTNode node, Map<String, Quantity> measures) {
        String sign = node.getToken().getValue();
        List<Value> parts = node.getParameters().stream().map(n -> value(n, measures)).toList();
        return switch (node.getToken().getType()) {
            case NUMBER_LITERAL -> Value.count(number(sign));
            case VARIABLE_OR_CONSTANT -> named(sign, measures);
            case PREFIX_OPERATOR -> sign.equals("-") ? negative(parts.get(0)) : parts.get(0);
            case INFIX_OPERATOR -> infix(sign, parts.get(0), parts.get(1));
            case FUNCTION -> function(sign.toLowerCase(Locale.ROOT), parts);
            default -> throw fault("“%s” can't be worked out. %s".formatted(sign, HOW));
        };
    }

    /** Powers of ten are refused: a short one, such as 1e99999999, would fill the memory. */
    private BigDecimal number(String written) {
        if (!NUMBER.matcher(written).matches()) {
            throw fault("“%s” is too long for a number here. Write it out with at most 15 digits before the point and 15 after."
                    .formatted(written));
        }
        return new BigDecimal(written);
    }

    private Value named(String name, Map<String, Quantity> measures) {
        if (measures.containsKey(name)) {
            return Value.of(measures.get(name));
        }
        if (CONSTANTS.containsKey(name)) {
            return Value.count(CONSTANTS.get(name));
        }
        return Unit.of(name).map(u -> new Value(u.factor(), u.dimension())).orElseThrow(() -> fault(
                "“%s” is neither a measure of this project nor a unit. Known measures: %s."
                        .formatted(name, measures.isEmpty() ? "none" : String.join(", ", new TreeSet<>(measures.keySet())))));
    }

    private Value infix(String sign, Value a, Value b) {
        return switch (sign) {
            case "+" -> new Value(a.number().add(alike(a, b, "added to").number()), a.dimension());
            case "-" -> new Value(a.number().subtract(alike(a, b, "taken from").number()), a.dimension());
            case "*" -> bounded(new Value(a.number().multiply(b.number()), a.dimension().times(b.dimension())));
            case "/" -> divided(a, b);
            default -> throw fault("“%s” is not used here. %s".formatted(sign, HOW));
        };
    }

    private Value divided(Value a, Value b) {
        if (b.number().signum() == 0) {
            throw fault("it divides by zero.");
        }
        return new Value(a.number().divide(b.number(), Quantity.PRECISION), a.dimension().over(b.dimension()));
    }

    private Value function(String name, List<Value> parts) {
        Value first = parts.get(0);
        return switch (name) {
            case "min" -> parts.stream().reduce((a, b) -> compared(a, b) > 0 ? b : a).orElse(first);
            case "max" -> parts.stream().reduce((a, b) -> compared(a, b) < 0 ? b : a).orElse(first);
            case "sqrt" -> root(first);
            case "ceil" -> whole(first, RoundingMode.CEILING);
            case "floor" -> whole(first, RoundingMode.FLOOR);
            case "awg" -> tabulated(name, first, n -> WireGauge.american(n.intValueExact()));
            case "swg" -> tabulated(name, first, n -> WireGauge.imperial(n.intValueExact()));
            case "us_ring" -> tabulated(name, first, RingSize::american);
            default -> whole(first, RoundingMode.HALF_UP);
        };
    }

    private int compared(Value a, Value b) {
        return a.number().compareTo(alike(a, b, "compared with").number());
    }

    private Value root(Value v) {
        if (v.number().signum() < 0 || v.dimension().length() % 2 != 0 || v.dimension().mass() % 2 != 0) {
            throw fault("sqrt needs a count or an area that is not negative.");
        }
        return new Value(v.number().sqrt(Quantity.PRECISION), new Dimension(v.dimension().length() / 2, v.dimension().mass() / 2));
    }

    private Value whole(Value v, RoundingMode mode) {
        if (!v.isCount()) {
            throw fault("ceil, floor and round take a count; divide %s by its unit first, as in ceil(length / (1 cm))."
                    .formatted(v.dimension().words()));
        }
        return Value.count(v.number().setScale(0, mode));
    }

    private Value tabulated(String name, Value v, Function<BigDecimal, Quantity> table) {
        if (!v.isCount()) {
            throw fault("%s takes a number, as in %s(20), but is given %s.".formatted(name, name, v.dimension().words()));
        }
        try {
            return Value.of(table.apply(v.number()));
        } catch (ArithmeticException e) {
            throw fault("%s takes a whole number, but is given %s.".formatted(name, v.number().toPlainString()));
        } catch (IllegalArgumentException e) {
            throw fault(String.valueOf(e.getMessage()));
        }
    }

    private Value alike(Value a, Value b, String doing) {
        if (!a.dimension().equals(b.dimension())) {
            throw fault("%s can't be %s %s.".formatted(b.dimension().words(), doing, a.dimension().words()));
        }
        return b;
    }

    private Value bounded(Value v) {
        if (v.number().precision() - v.number().scale() > 30) {
            throw fault("the result is too large.");
        }
        return new Value(v.number().round(Quantity.PRECISION), v.dimension());
    }

    private static String bound(String text) {
        return AMOUNT.matcher(Handwritten.formula(text)).replaceAll(m -> "(%s*%s)".formatted(m.group(1), m.group(2).equals("%") ? "percent" : m.group(2)));
    }

    private static String symbols() {
        return Stream.concat(Unit.measured().stream().map(Unit::symbol), Container.words().stream()).map(Pattern::quote).collect(Collectors.joining("|"));
    }

    private static Value negative(Value v) {
        return new Value(v.number().negate(), v.dimension());
    }

    private void collect(ASTNode node, Set<String> names) {
        String name = node.getToken().getValue();
        boolean word = node.getToken().getType() == TokenType.VARIABLE_OR_CONSTANT;
        if (word && Unit.of(name).isEmpty() && !CONSTANTS.containsKey(name)) {
            names.add(name);
        }
        node.getParameters().forEach(n -> collect(n, names));
    }

    private FormulaException fault(String words) {
        return new FormulaException(text, words);
    }

    @Override
    public String toString() {
        return text;
    }
}
