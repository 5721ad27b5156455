package benchful.hazards;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Our own drawings of signs and pictograms, after the standards' shapes and colours. A sign without one is shown by its code and name. */
public final class Signs {
    private static final Map<String, Optional<String>> DRAWN = new ConcurrentHashMap<>();

    private Signs() {}

    /** The drawing as SVG. */
    public static Optional<String> svg(String code) {
        return code.matches("[A-Z0-9]{2,8}") ? DRAWN.computeIfAbsent(code, Signs::read) : Optional.empty();
    }

    private static Optional<String> read(String code) {
        try (InputStream in = Signs.class.getResourceAsStream("/hazards/signs/" + code + ".svg")) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
