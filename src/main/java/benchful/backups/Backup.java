package benchful.backups;

import benchful.web.StoredEntity;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** One line of what was done: a backup that was taken, failed or was put back. It says of a file only that it was written once. */
@Entity
class Backup extends StoredEntity {
    Instant happenedAt;

    @Enumerated(EnumType.STRING)
    Occasion occasion;

    String folder;
    String file;
    Long bytes;
    boolean away;
    String trouble;
    String note;

    /** For the database only. */
    protected Backup() {}

    static Backup of(Occasion occasion, Instant now) {
        Backup backup = new Backup();
        backup.occasion = occasion;
        backup.happenedAt = now.truncatedTo(ChronoUnit.MICROS);
        return backup;
    }

    /** @param away true where the file no longer lies on this machine alone */
    Backup written(Path where, BackupFolder.Kept kept, boolean away) {
        folder = where == null ? null : where.toString();
        file = kept.name();
        bytes = kept.bytes();
        this.away = away;
        return this;
    }

    Backup failed(String why) {
        trouble = why;
        return this;
    }

    Backup noted(String words) {
        note = words;
        return this;
    }

    static List<Backup> latest(int most) {
        return find("", Sort.descending("happenedAt", "id")).page(0, most).list();
    }

    /** The last into the folder that was taken or failed. */
    static Optional<Backup> lastIntoFolder() {
        return find("occasion in ?1", Sort.descending("happenedAt", "id"), List.of(Occasion.SCHEDULED, Occasion.PRESSED)).firstResultOptional();
    }

    static Optional<Backup> lastScheduled() {
        return find("occasion = ?1 and trouble is null", Sort.descending("happenedAt", "id"), Occasion.SCHEDULED).firstResultOptional();
    }

    static Optional<Backup> lastAway() {
        return find("away", Sort.descending("happenedAt", "id")).firstResultOptional();
    }

    /** What was written into the folder for this occasion, newest first. */
    static List<Backup> writtenInto(Path folder, Occasion occasion) {
        return list("folder = ?1 and occasion = ?2 and trouble is null and file is not null", Sort.descending("happenedAt", "id"), folder.toString(), occasion);
    }
}
