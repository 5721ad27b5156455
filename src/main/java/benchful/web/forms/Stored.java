package benchful.web.forms;

import benchful.web.Unusable;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.lang.reflect.Type;
import java.util.Objects;
import java.util.Optional;

/**
 * A sheet as it lies in the database. It is read when it is asked for, so that a list reads none, and one that can't be read
 * breaks only what needs it. A sheet is replaced, never changed.
 *
 * @param <T> the record of the sheet
 */
public final class Stored<T> {
    private final JavaType type;
    private final String text;
    private volatile T value;

    private Stored(JavaType type, String text, T value) {
        this.type = type;
        this.text = text;
        this.value = value;
    }

    /** A sheet that is to be stored. */
    public static <T> Stored<T> of(T sheet) {
        return new Stored<>(null, null, Objects.requireNonNull(sheet));
    }

    /** @param sheet the type of what was written */
    static Stored<?> written(String text, Type sheet) {
        return new Stored<>(SpecFormat.json().constructType(sheet), text, null);
    }

    /**
     * @param what the sheet is, in words
     * @param path of the page on which it is mended; null for none
     * @throws Unusable where it can't be read
     */
    public T read(String what, String path) {
        try {
            return value();
        } catch (JsonProcessingException | IllegalArgumentException e) {
            throw Unusable.unreadable(what, path, e);
        }
    }

    /** Nothing where it can't be read. */
    public Optional<T> readable() {
        try {
            return Optional.of(value());
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private T value() throws JsonProcessingException {
        if (value == null) {
            T read = SpecFormat.json().readValue(text, type);
            if (read == null) {
                throw new IllegalArgumentException("No sheet is stored.");
            }
            value = read;
        }
        return value;
    }

    /** What is written there, for a form in which it is mended; nothing where even that can't be read. */
    public ObjectNode tree() {
        try {
            JsonNode tree = SpecFormat.json().readTree(text());
            return tree instanceof ObjectNode sheet ? sheet : SpecFormat.json().createObjectNode();
        } catch (JsonProcessingException e) {
            return SpecFormat.json().createObjectNode();
        }
    }

    /** What a sheet says, or, where it can't be read, what is written there; null where none is stored. */
    public static Object kept(Stored<?> sheet) {
        return sheet == null ? null : sheet.readable().<Object>map(s -> s).orElseGet(sheet::tree);
    }

    /** As it is stored. */
    String text() {
        try {
            return text == null ? SpecFormat.json().writeValueAsString(value) : text;
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Stored<?> s && (readable().isPresent() ? readable().equals(s.readable()) : text.equals(s.text));
    }

    @Override
    public int hashCode() {
        return readable().map(Object::hashCode).orElseGet(() -> text.hashCode());
    }
}
