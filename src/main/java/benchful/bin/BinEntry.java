package benchful.bin;

import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * One removal: made when somebody removes a thing, gone when it is put back, removed for good, or thirty days old. The rows
 * that it took along are recorded by the database itself; see {@link Bin}.
 */
@Entity
public class BinEntry extends StoredEntity {
    String kind;
    String name;
    String address;
    Instant removedAt;

    /** For the database only; see {@link #of}. */
    protected BinEntry() {}

    static BinEntry of(Thing thing, Instant now) {
        BinEntry entry = new BinEntry();
        entry.kind = thing.kind();
        entry.name = thing.name();
        entry.address = thing.address();
        entry.removedAt = now.truncatedTo(ChronoUnit.MICROS);
        entry.persist();
        return entry;
    }

    /** The latest first. */
    static List<BinEntry> page(int number, int size) {
        return BinEntry.<BinEntry>find("order by removedAt desc, id desc").page(number, size).list();
    }

    /** In a word: "class", "venue". */
    public String kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    /** Of the page that shows it once it is back. */
    public String address() {
        return address;
    }

    public Instant removedAt() {
        return removedAt;
    }
}
