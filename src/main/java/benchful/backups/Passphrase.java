package benchful.backups;

import benchful.backups.archive.BackupFault;
import benchful.database.OwnFolder;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;

/**
 * The passphrase that backups are locked with, if there is one. It must be known to the program, as backups are taken while
 * nobody sits there: it comes from a setting, or from a file in the data folder that only the program's account may read.
 */
@ApplicationScoped
class Passphrase {
    static final String SETTING = "benchful.backup.passphrase";

    private final Config settings;

    Passphrase(Config settings) {
        this.settings = settings;
    }

    Optional<String> current() {
        return isFixed() ? setting() : file().filter(Files::isRegularFile).map(Passphrase::read);
    }

    /** True where a setting says it, so that the page does not change it. */
    boolean isFixed() {
        return setting().isPresent();
    }

    private Optional<String> setting() {
        return settings.getOptionalValue(SETTING, String.class).filter(p -> !p.isBlank());
    }

    /** Where it is kept; none where there is no data folder. */
    Optional<Path> file() {
        return OwnFolder.of(settings).map(f -> f.resolve("backup.passphrase"));
    }

    /** @param passphrase blank forgets it: later backups are not locked */
    void set(String passphrase) {
        Path file = file().orElseThrow();
        try {
            if (passphrase.isBlank()) {
                Files.deleteIfExists(file);
                return;
            }
            // Made for its owner alone before anything stands in it.
            Path draft = Files.createTempFile(file.getParent(), "passphrase", ".new");
            Files.writeString(draft, passphrase, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new BackupFolder(file.getParent()).fault(e);
        }
    }

    private static String read(Path file) {
        try {
            // Written by hand it may end in a line end.
            return Files.readString(file).replaceFirst("\\R$", "");
        } catch (IOException e) {
            throw new BackupFault("The passphrase for backups in %s cannot be read. Mend its rights, or set it anew.".formatted(file), e);
        }
    }
}
