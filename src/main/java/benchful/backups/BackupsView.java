package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * What the page of backups shows.
 *
 * @param fault why what was pressed did not work; null where nothing was
 * @param folder where backups lie; null where there is no folder
 * @param mayChoose true where the tutor may choose another
 * @param passphrase how they are locked
 * @param files that lie there
 * @param lines what was done
 */
@TemplateData
record BackupsView(SpecForm form, String fault, Backups.Notice notice, String folder, boolean mayChoose, Lock passphrase, List<File> files, List<Line> lines) {

    /**
     * How backups are locked.
     *
     * @param set true where they are
     * @param mayChange false where a setting says it
     * @param file where the passphrase is kept; null where there is no data folder
     */
    @TemplateData
    record Lock(boolean set, boolean mayChange, String file) {
        static Lock of(Passphrase passphrase) {
            return new Lock(passphrase.current().isPresent(), !passphrase.isFixed() && passphrase.file().isPresent(),
                    passphrase.file().map(Object::toString).orElse(null));
        }
    }

    /** A backup in the folder. */
    @TemplateData
    record File(String name, LocalDateTime at, long bytes, boolean locked) {
        static File of(Kept kept, ZoneId zone) {
            return new File(kept.name(), LocalDateTime.ofInstant(kept.at(), zone), kept.bytes(), kept.locked());
        }
    }

    /** What was done once. */
    @TemplateData
    record Line(LocalDateTime at, String occasion, String file, Long bytes, String words, boolean trouble) {
        static Line of(Backup b, ZoneId zone) {
            return new Line(LocalDateTime.ofInstant(b.happenedAt, zone), b.occasion.words(), b.file, b.bytes, b.trouble == null ? b.note : b.trouble, b.trouble != null);
        }
    }
}
