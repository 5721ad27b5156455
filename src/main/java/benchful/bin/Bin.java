package benchful.bin;

import benchful.database.TableMap;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.hibernate.Session;

/**
 * Keeps what is removed for thirty days. While a removal runs, the database itself records each row that is taken out, changed or
 * written, whatever cascades to whatever; so a feature says nothing of its tables, and a new table is kept like the others.
 */
@ApplicationScoped
public class Bin {
    static final Duration KEPT = Duration.ofDays(30);

    private static final String UNWATCHED = """
            select quote_ident(c.relname) from pg_class c
            where c.relnamespace = current_schema()::regnamespace and c.relkind = 'r'
                and c.relname not in ('flyway_schema_history', 'bin_entry', 'bin_row', 'form_secret', 'sent_form')
                and not exists (select 1 from pg_trigger t where t.tgrelid = c.oid and t.tgname = 'bin_record')""";

    private static final String WATCH = """
            create trigger bin_record after insert or update or delete on %s
            for each row when (coalesce(current_setting('benchful.bin_entry', true), '') <> '') execute function bin_record()""";

    private final EntityManager database;
    private final Clock clock;

    Bin(EntityManager database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Runs a removal and keeps all that it takes out.
     *
     * @return its entry; nothing where the removal left everything as it was
     */
    @Transactional
    public Optional<BinEntry> keep(Thing thing, Runnable removal) {
        database.flush();
        watchAll();
        BinEntry entry = BinEntry.of(thing, clock.instant());
        record(String.valueOf(entry.id()));
        removal.run();
        database.flush();
        record("");
        if (isEmpty(entry)) {
            entry.delete();
            return Optional.empty();
        }
        return Optional.of(entry);
    }

    /** Removes for good what can't come back any more, by its kind and the address of its page. */
    @Transactional
    public void forget(String kind, String address) {
        BinEntry.delete("kind = ?1 and address = ?2", kind, address);
    }

    /** Removes for good what was in the bin for thirty days. */
    @Transactional
    public void sweep() {
        BinEntry.delete("removedAt < ?1", clock.instant().minus(KEPT));
    }

    @SuppressWarnings("unchecked")
    private void watchAll() {
        List<String> tables = database.createNativeQuery(UNWATCHED, String.class).getResultList();
        tables.forEach(table -> database.createNativeQuery(WATCH.formatted(table)).executeUpdate());
    }

    /** Until the transaction ends at the latest. */
    private void record(String entry) {
        database.createNativeQuery("select set_config('benchful.bin_entry', :entry, true)", String.class).setParameter("entry", entry).getSingleResult();
    }

    private boolean isEmpty(BinEntry entry) {
        return (Boolean) database.createNativeQuery("select not exists (select 1 from bin_row where entry_id = :entry)", Boolean.class)
                .setParameter("entry", entry.id()).getSingleResult();
    }

    /** The tables as they are now; those of the bin are among them. */
    static TableMap tables(EntityManager database) {
        return database.unwrap(Session.class).doReturningWork(c -> TableMap.of(c, c.getSchema()));
    }
}
