package benchful.bin;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * One removal: made when somebody removes a thing, gone when it is put back, removed for good, or thirty days old. The rows
 * that it took along are recorded by the database itself; see {@link Bin}.
 */
@Entity
public class BinEntry extends PanacheEntityBase {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long id;

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

    static Optional<BinEntry> byId(long id) {
        return findByIdOptional(id);
    }

    /** The same, kept from everybody else until the transaction ends. */
    static Optional<BinEntry> toChange(long id) {
        return findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
    }

    public long id() {
        return id;
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
