package benchful.web.forms;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jboss.resteasy.reactive.server.multipart.FormValue;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** A form with files, as it was sent: what was typed, and what was picked. Where no file was picked, there is none. */
public record SentForm(MultivaluedMap<String, String> fields, Map<String, SentFile> files) {

    /** @param name as on the sender's machine */
    public record SentFile(String name, byte[] content) {}

    public static SentForm of(MultipartFormDataInput input) {
        MultivaluedMap<String, String> fields = new MultivaluedHashMap<>();
        Map<String, SentFile> files = new LinkedHashMap<>();
        input.getValues().forEach((name, values) -> values.forEach(value -> {
            if (!value.isFileItem()) {
                fields.add(name, value.getValue());
            } else if (!value.getFileName().isBlank()) {
                files.put(name, new SentFile(value.getFileName(), content(value)));
            }
        }));
        return new SentForm(fields, files);
    }

    private static byte[] content(FormValue value) {
        try (InputStream in = value.getFileItem().getInputStream()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
