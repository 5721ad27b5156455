package benchful.backups.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * What a backup holds, so that every part of it can be checked before anything is put back.
 *
 * @param benchful the format, {@link #FORMAT}
 * @param taken the moment, as ISO 8601 writes it in UTC
 * @param migrations the versions of the database's migrations that its tables had seen
 * @param tables in an order in which they can be filled
 * @param files all others in the archive
 */
public record Manifest(String benchful, String taken, List<String> migrations, List<Part> tables, List<Item> files) {
    public static final String FORMAT = "backup/1";
    public static final String PATH = "manifest.json";

    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

    public Manifest {
        migrations = copied(migrations);
        tables = copied(tables);
        files = copied(files);
    }

    /**
     * One table.
     *
     * @param file its rows in the archive
     * @param columns in the file's order
     * @param apart those whose cells name a file that holds their content
     * @param rows how many
     * @param next the number its next row would have got; null where it numbers none
     * @param sha256 of all its rows with everything in them, as the database writes them
     */
    public record Part(String table, String file, List<String> columns, List<String> apart, long rows, Long next, String sha256) {
        public Part {
            Objects.requireNonNull(table);
            Objects.requireNonNull(file);
            columns = copied(columns);
            apart = copied(apart);
        }
    }

    /** One file of the archive. */
    public record Item(String path, long bytes, String sha256) {
        public Item {
            Objects.requireNonNull(path);
        }
    }

    public Instant moment() {
        return Instant.parse(taken);
    }

    public long rows() {
        return tables.stream().mapToLong(Part::rows).sum();
    }

    public byte[] written() {
        try {
            return JSON.writeValueAsBytes(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    public static Manifest read(byte[] bytes) {
        try {
            Manifest manifest = JSON.readValue(bytes, Manifest.class);
            if (!FORMAT.equals(manifest.benchful())) {
                throw new BackupFault("This is no backup that this version can read: its contents say “%s” where “%s” was expected.".formatted(manifest.benchful(), FORMAT));
            }
            manifest.moment();
            return manifest;
        } catch (IOException | DateTimeException | NullPointerException e) {
            throw BackupFault.damaged(e);
        }
    }

    private static <T> List<T> copied(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
