package benchful.backups.tables;

import benchful.backups.tables.AdvisoryLock.Purpose;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Knows whether any instance puts a backup back. Every change asks here, and the database is asked at most once a second. What this
 * instance begins or ends is known at once; what another does, within that second, in which a change still comes into the backup
 * that is kept of what goes. The database forgets whoever dies while putting back, and so does this.
 */
@ApplicationScoped
public class RestoreWatch {
    public static final Duration FRESH = Duration.ofSeconds(1);

    private final AgroalDataSource database;
    private final AtomicReference<Answer> last = new AtomicReference<>(Answer.stale());

    RestoreWatch(AgroalDataSource database) {
        this.database = database;
    }

    /** @param at when it was asked for [ns, of {@link System#nanoTime}] */
    private record Answer(boolean restoring, long at) {
        static Answer stale() {
            return new Answer(false, System.nanoTime() - FRESH.toNanos());
        }

        boolean fresh() {
            return System.nanoTime() - at < FRESH.toNanos();
        }
    }

    /** False where the database can't be asked: the change then fails, or waits for the tables, with words of its own. */
    public boolean isRestoring() {
        Answer known = last.get();
        if (known.fresh()) {
            return known.restoring();
        }
        Answer now = new Answer(asked(), System.nanoTime());
        last.compareAndSet(known, now);
        return now.restoring();
    }

    /** Something began or ended here, so that an answer on its way may be wrong as well. */
    void forget() {
        last.set(Answer.stale());
    }

    private boolean asked() {
        try {
            return AdvisoryLock.held(database, Purpose.RESTORE);
        } catch (SQLException e) {
            return false;
        }
    }
}
