package benchful.database;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.microprofile.config.Config;

/** The data folder, for what the program keeps on this machine beside the database. */
public final class OwnFolder {
    private OwnFolder() {}

    /** Where it is, before the program has read its settings; the usual one where none is named. */
    public static Path of(Function<String, Optional<String>> settings) {
        return DatabaseSettings.from(settings).folder();
    }

    /** Made where it is missing, readable by its owner alone. */
    public static void make(Path folder) {
        DataFolder.open(folder);
    }

    /** None where the database is on a server and no folder was named. */
    public static Optional<Path> of(Config settings) {
        Optional<String> named = settings.getOptionalValue(DatabaseSettings.FOLDER, String.class);
        boolean carried = CarriedDatabaseSource.NAME.equals(settings.getConfigValue(CarriedDatabaseSource.URL).getSourceName());
        return carried || named.isPresent()
                ? Optional.of(DatabaseSettings.from(name -> settings.getOptionalValue(name, String.class)).folder())
                : Optional.empty();
    }
}
