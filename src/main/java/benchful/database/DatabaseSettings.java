package benchful.database;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * How the carried database is to run.
 *
 * @param folder    the data folder; everything the program keeps lies below it
 * @param durable   true: a committed change outlives a power cut; false only where the data are thrown away, in tests
 * @param recreated true: begin with an empty database at every start, in tests
 */
record DatabaseSettings(Path folder, boolean durable, boolean recreated) {
    static final String FOLDER = "benchful.data";

    DatabaseSettings {
        folder = Objects.requireNonNull(folder, "folder").toAbsolutePath().normalize();
    }

    /** Reads {@code benchful.data}, {@code benchful.database.durable} and {@code benchful.database.recreated}. */
    static DatabaseSettings from(Function<String, Optional<String>> settings) {
        Path folder = settings.apply(FOLDER).map(Path::of).orElseGet(DatabaseSettings::standardFolder);
        return new DatabaseSettings(
                folder,
                settings.apply("benchful.database.durable").map(Boolean::valueOf).orElse(true),
                settings.apply("benchful.database.recreated").map(Boolean::valueOf).orElse(false));
    }

    private static Path standardFolder() {
        // HOME first: it may be set for one run, while Java's own answer is the account's entry in the user list.
        String home = Optional.ofNullable(System.getenv("HOME"))
                .filter(name -> !name.isBlank())
                .orElse(System.getProperty("user.home"));
        return Path.of(home, ".benchful");
    }
}
