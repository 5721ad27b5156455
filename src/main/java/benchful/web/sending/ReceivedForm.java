package benchful.web.sending;

import benchful.web.forms.JsonPointers;
import io.quarkus.qute.TemplateData;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;

/**
 * A form as it came, whatever page it belongs to.
 *
 * @param address it was sent to
 * @param key the value of its key field; null where it has none
 * @param fields in the order of the form, without the key
 * @param files those that were picked
 */
@TemplateData
public record ReceivedForm(String address, boolean multipart, String key, List<Field> fields, List<Upload> files) {
    /** The name of the field that holds the key. */
    static final String KEY = "form-key";

    /** What was typed, ticked or chosen in one field, or the button that was pressed. */
    @TemplateData
    public record Field(String name, String value) {
        /** The field's name in words: "steps 4, title". */
        public String place() {
            String pointer = name.replaceFirst("^lines(?=/)", "");
            return pointer.startsWith("/") ? JsonPointers.words(pointer) : name.replace('-', ' ');
        }
    }

    /** A file that was picked. */
    @TemplateData
    public record Upload(String name, String fileName, FormValue value) {}

    static ReceivedForm of(String address, boolean multipart, FormData data) {
        List<Field> fields = new ArrayList<>();
        List<Upload> files = new ArrayList<>();
        String key = null;
        for (String name : data) {
            if (name == null) {
                continue; // a part that names no field
            }
            for (FormValue value : data.get(name)) {
                if (value.isFileItem()) {
                    addPicked(files, name, value);
                } else if (name.equals(KEY)) {
                    key = value.getValue();
                } else {
                    fields.add(new Field(name, value.getValue()));
                }
            }
        }
        return new ReceivedForm(address, multipart, key, List.copyOf(fields), List.copyOf(files));
    }

    private static void addPicked(List<Upload> files, String name, FormValue value) {
        if (!value.getFileName().isBlank()) {
            files.add(new Upload(name, value.getFileName(), value));
        }
    }

    /** The fields that hold something. */
    public List<Field> filled() {
        return fields.stream().filter(field -> !field.value().isBlank()).toList();
    }

    /** Tells two sendings apart that differ in anything but the key. */
    String digest() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            add(digest, address);
            for (Field field : fields) {
                add(digest, field.name());
                add(digest, field.value());
            }
            for (Upload file : files) {
                add(digest, file.name());
                add(digest, file.value());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
    }

    /** With its length, so that two fields never look like one. */
    private static void add(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + " ").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
    }

    private static void add(MessageDigest digest, FormValue file) {
        try (InputStream in = file.getFileItem().getInputStream()) {
            byte[] part = new byte[8192];
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                digest.update(part, 0, n);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("What was uploaded can't be read.", e);
        }
    }
}
