package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.archive.BackupFault;
import benchful.backups.tables.AdvisoryLock;
import benchful.backups.tables.AdvisoryLock.Purpose;
import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.logging.Logger;

/** Takes backups, by press and on schedule, remembers what became of them, and says what the first page should say about it. */
@ApplicationScoped
public class Backups {
    private static final Logger LOG = Logger.getLogger(Backups.class);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss");
    private static final int PUT_OFF_DAYS = 7;
    private static final int LOGGED = 30;

    private final Packing packing;
    private final Folders folders;
    private final AgroalDataSource database;
    private final Clock clock;

    Backups(Packing packing, Folders folders, AgroalDataSource database, Clock clock) {
        this.packing = packing;
        this.folders = folders;
        this.database = database;
        this.clock = clock;
    }

    /**
     * What the first page says about backups.
     *
     * @param trouble why the last one into the folder failed; null where it did not
     * @param days since a backup left this machine; null while that is no reason to remind
     */
    @TemplateData
    public record Notice(String trouble, Long days) {}

    public Notice notice() {
        return QuarkusTransaction.joiningExisting().call(() -> {
            LocalDate today = LocalDate.now(clock);
            BackupSchedule schedule = BackupSchedule.current(today);
            LocalDate away = Backup.lastAway().map(b -> day(b)).orElse(schedule.since);
            long days = ChronoUnit.DAYS.between(away, today);
            boolean quiet = schedule.quietUntil != null && today.isBefore(schedule.quietUntil);
            int most = schedule.sheet.remindAfter();
            return new Notice(Backup.lastIntoFolder().map(b -> b.trouble).orElse(null), most > 0 && days >= most && !quiet ? days : null);
        });
    }

    /** The reminder stays away for a week. */
    void putOff() {
        QuarkusTransaction.requiringNew().run(() -> BackupSchedule.current(LocalDate.now(clock)).quietUntil = LocalDate.now(clock).plusDays(PUT_OFF_DAYS));
    }

    ScheduleSpec schedule() {
        return QuarkusTransaction.joiningExisting().call(() -> BackupSchedule.current(LocalDate.now(clock)).sheet);
    }

    List<Backup> log() {
        return QuarkusTransaction.joiningExisting().call(() -> Backup.latest(LOGGED));
    }

    public BackupFolder folder() {
        return folders.of(schedule());
    }

    /** Into the folder, now. */
    public Kept press() {
        try {
            return take(Occasion.PRESSED);
        } catch (BackupFault e) {
            remember(Backup.of(Occasion.PRESSED, clock.instant()).failed(e.getMessage()));
            throw e;
        }
    }

    /** What is about to be replaced; nothing where nothing is stored. */
    void keepBeforeRestore() {
        if (!nothingIsStored()) {
            take(Occasion.BEFORE_RESTORE);
        }
    }

    private boolean nothingIsStored() {
        return packing.rows().values().stream().allMatch(n -> n == 0);
    }

    /** Takes the backup of the day if it is not taken yet, once over all instances. */
    void takeIfDue() {
        try {
            Optional<AdvisoryLock> lock = AdvisoryLock.take(database, Purpose.BACKUP);
            if (lock.isPresent()) {
                try (AdvisoryLock held = lock.get()) {
                    takeDue();
                }
            }
        } catch (SQLException e) {
            LOG.warn("Whether a backup is due could not be found out; it is asked again later", e);
        }
    }

    private void takeDue() {
        if (!isDue() || nothingIsStored()) {
            return;
        }
        try {
            take(Occasion.SCHEDULED);
        } catch (BackupFault e) {
            LOG.warn("No backup was taken: " + e.getMessage());
            failedOnSchedule(e.getMessage());
        } catch (RuntimeException e) {
            LOG.error("No backup was taken", e);
            failedOnSchedule("Something went wrong in the program itself. Its log says what.");
        }
    }

    private boolean isDue() {
        return QuarkusTransaction.requiringNew().call(() -> {
            LocalDate today = LocalDate.now(clock);
            int every = BackupSchedule.current(today).sheet.everyDays();
            return every > 0 && Backup.lastScheduled().map(b -> !day(b).plusDays(every).isAfter(today)).orElse(true);
        });
    }

    /** It is tried again and again; only the last failure is worth a line. */
    private void failedOnSchedule(String why) {
        QuarkusTransaction.requiringNew().run(() -> Backup.delete("occasion = ?1 and trouble is not null", Occasion.SCHEDULED));
        remember(Backup.of(Occasion.SCHEDULED, clock.instant()).failed(why));
    }

    private Kept take(Occasion occasion) {
        ScheduleSpec sheet = schedule();
        BackupFolder folder = folders.of(sheet);
        Kept kept = folder.write(stem(occasion), packing.ending(), packing);
        remember(Backup.of(occasion, clock.instant()).written(folder.path(), kept, sheet.elsewhere()));
        thin(folder, occasion, sheet.kept());
        return kept;
    }

    private String stem(Occasion occasion) {
        return "benchful-%s%s".formatted(occasion == Occasion.BEFORE_RESTORE ? "before-restore-" : "", STAMP.format(LocalDateTime.now(clock)));
    }

    /** What the tutor took herself stays until she removes it. */
    private void thin(BackupFolder folder, Occasion occasion, int most) {
        if (occasion != Occasion.PRESSED) {
            List<Backup> written = QuarkusTransaction.requiringNew().call(() -> Backup.writtenInto(folder.path(), occasion));
            // A name may have been given twice, where the first file had gone; it is that of the newer one.
            Set<String> met = new HashSet<>();
            written.stream().filter(b -> met.add(b.file) && folder.file(b.file).isPresent()).skip(most).forEach(b -> folder.remove(b.file, b.bytes));
        }
    }

    /** A backup that waits to be sent to the browser, in a file that the caller deletes. */
    Kept pack(Path file) {
        try (OutputStream out = Files.newOutputStream(file)) {
            packing.write(out);
        } catch (IOException | UncheckedIOException e) {
            throw new BackupFolder(file.getParent()).fault(e);
        }
        return new Kept(stem(Occasion.DOWNLOADED) + packing.ending(), clock.instant(), file.toFile().length());
    }

    /** The browser has it: it left this machine, or is where the tutor put it. */
    void sent(Kept kept) {
        remember(Backup.of(Occasion.DOWNLOADED, clock.instant()).written(null, kept, true));
    }

    long remember(Backup backup) {
        QuarkusTransaction.requiringNew().run(() -> backup.persist());
        return backup.id();
    }

    private LocalDate day(Backup backup) {
        return LocalDate.ofInstant(backup.happenedAt, zone());
    }

    private ZoneId zone() {
        return clock.getZone();
    }
}
