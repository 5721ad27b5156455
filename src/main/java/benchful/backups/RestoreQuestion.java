package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.util.List;

/**
 * The question before a backup is put back: what would go and what would come.
 *
 * @param passphrase that opened it, to open it once more; null where the file is not locked
 * @param taken null while the file is not opened
 * @param counts what is stored and what the file holds
 * @param fault why it could not be opened; null where it could, or was not tried yet
 */
@TemplateData
record RestoreQuestion(String file, boolean locked, String passphrase, LocalDateTime taken, List<Count> counts, String fault) {

    /** So many of a thing. */
    @TemplateData
    record Count(String words, long here, long inFile) {}

    static RestoreQuestion of(Kept kept, String passphrase, LocalDateTime taken, List<Count> counts) {
        return new RestoreQuestion(kept.name(), kept.locked(), kept.locked() ? passphrase : null, taken, counts, null);
    }

    static RestoreQuestion unopened(Kept kept, String fault) {
        return new RestoreQuestion(kept.name(), kept.locked(), null, null, List.of(), fault);
    }

    public boolean opened() {
        return taken != null;
    }

    /** True where nothing is stored that would go. */
    public boolean intoNothing() {
        return counts.stream().allMatch(c -> c.here() == 0);
    }
}
