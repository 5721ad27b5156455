package benchful;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A value of any record, every component of it filled, made from the types alone; its lists and maps hold one thing or nothing. */
final class Specimens {
    private static final Map<Class<?>, Object> PLAIN = Map.ofEntries(
            Map.entry(String.class, "a text"), Map.entry(Integer.class, 3), Map.entry(int.class, 3), Map.entry(Boolean.class, true),
            Map.entry(boolean.class, true), Map.entry(BigDecimal.class, new BigDecimal("2.50")), Map.entry(byte[].class, new byte[] {1, 2}),
            Map.entry(Duration.class, Duration.ofSeconds(4210)), Map.entry(LocalDate.class, LocalDate.of(2027, 3, 6)),
            Map.entry(LocalTime.class, LocalTime.of(12, 30)), Map.entry(LocalDateTime.class, LocalDateTime.of(2027, 3, 6, 12, 30)),
            Map.entry(Quantity.class, Quantity.parse("42.5 cm")), Map.entry(Unit.class, Unit.CM));

    private final boolean filled;

    private Specimens(boolean filled) {
        this.filled = filled;
    }

    static Object full(Type type) {
        return new Specimens(true).of(type);
    }

    /** With all lists and maps empty, at every depth. */
    static Object empty(Type type) {
        return new Specimens(false).of(type);
    }

    private Object of(Type type) {
        if (type instanceof ParameterizedType p) {
            return collection((Class<?>) p.getRawType(), p.getActualTypeArguments());
        }
        Class<?> plain = (Class<?>) type;
        return plain.isRecord() ? record(plain) : plain.isEnum() ? plain.getEnumConstants()[0] : known(plain);
    }

    private Object collection(Class<?> raw, Type[] of) {
        if (raw == Map.class) {
            return filled ? Map.of(of(of[0]), of(of[1])) : Map.of();
        }
        return filled ? List.of(of(of[0])) : List.of();
    }

    private Object record(Class<?> type) {
        RecordComponent[] parts = type.getRecordComponents();
        if (PLAIN.containsKey(type)) {
            return PLAIN.get(type);
        }
        try {
            Constructor<?> whole = type.getDeclaredConstructor(Stream.of(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
            whole.setAccessible(true);
            return whole.newInstance(Stream.of(parts).map(RecordComponent::getGenericType).map(this::of).toArray());
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("No specimen of " + type, e);
        }
    }

    private static Object known(Class<?> type) {
        if (!PLAIN.containsKey(type)) {
            throw new AssertionError("Say in Specimens what a " + type + " may be.");
        }
        return PLAIN.get(type);
    }
}
