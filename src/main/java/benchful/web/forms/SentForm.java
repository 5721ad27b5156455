package benchful.web.forms;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.multipart.FormValue;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** A form with files, as it was sent: what was typed, and what was picked, in the order of the picking. Where no file was picked, there is none. */
public record SentForm(MultivaluedMap<String, String> fields, Map<String, List<SentFile>> files) {

    /** @param name as on the sender's machine */
    public record SentFile(String name, byte[] content) {}

    public static SentForm of(MultipartFormDataInput input) {
        MultivaluedMap<String, String> fields = new MultivaluedHashMap<>();
        Map<String, List<SentFile>> files = new LinkedHashMap<>();
        input.getValues().forEach((name, values) -> values.forEach(value -> {
            if (!value.isFileItem()) {
                fields.add(name, value.getValue());
            } else if (!value.getFileName().isBlank()) {
                files.computeIfAbsent(name, n -> new ArrayList<>()).add(new SentFile(value.getFileName(), content(value)));
            }
        }));
        return new SentForm(fields, files);
    }

    /** The first file picked in a field; nothing where none was. */
    public Optional<SentFile> file(String field) {
        return Optional.ofNullable(files.get(field)).map(picked -> picked.get(0));
    }

    private static byte[] content(FormValue value) {
        try (InputStream in = value.getFileItem().getInputStream()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
