package benchful.backups;

import benchful.backups.archive.BackupFault;
import benchful.database.OwnFolder;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;

/** Where backups lie: in the folder that a setting names, in that of the tutor's choice, or beside the carried database. */
@ApplicationScoped
class Folders {
    static final String SETTING = "benchful.backup.folder";

    private final Config settings;

    Folders(Config settings) {
        this.settings = settings;
    }

    /** @throws BackupFault where there is none, or it cannot be made */
    BackupFolder of(ScheduleSpec sheet) {
        return chosen(sheet).map(BackupFolder::new).or(() -> standard().map(BackupFolder::made)).orElseThrow(() -> new BackupFault(
                "No folder for backups is chosen. Name one with the setting BENCHFUL_BACKUP_FOLDER and start Benchful again."));
    }

    private Optional<Path> chosen(ScheduleSpec sheet) {
        return fixed().or(() -> Optional.ofNullable(sheet.folder())).map(Path::of);
    }

    /** Where backups lie as long as nobody chose. */
    Optional<Path> standard() {
        return OwnFolder.of(settings).map(f -> f.resolve("backups"));
    }

    private Optional<String> fixed() {
        return settings.getOptionalValue(SETTING, String.class).filter(f -> !f.isBlank());
    }

    /** False where a setting names the folder, or where others reach the program, who must not choose folders on its machine. */
    boolean mayBeChosen() {
        boolean open = settings.getOptionalValue("benchful.open-network", Boolean.class).orElse(false);
        return fixed().isEmpty() && !open;
    }

    /** A file for the moment, readable by the program's account alone; whoever asks for it deletes it. */
    Path temporary() {
        try {
            Optional<Path> own = OwnFolder.of(settings).filter(Files::isDirectory);
            own.ifPresent(folder -> BackupFolder.sweep(folder, "backup-"));
            return own.isPresent() ? Files.createTempFile(own.get(), "backup-", ".part") : Files.createTempFile("benchful-backup-", ".part");
        } catch (IOException e) {
            throw new BackupFolder(OwnFolder.of(settings).orElse(Path.of(System.getProperty("java.io.tmpdir")))).fault(e);
        }
    }
}
