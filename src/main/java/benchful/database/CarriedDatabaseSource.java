package benchful.database;

import io.quarkus.runtime.PreventFurtherStepsException;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.config.spi.ConfigSource;
import org.jboss.logging.Logger;

/**
 * Answers where the database is, and starts the carried one when first asked. It lists no names, so that nobody asks by
 * accident while the program is built.
 */
final class CarriedDatabaseSource implements ConfigSource {
    static final String URL = "quarkus.datasource.jdbc.url";
    static final String PASSWORD = "quarkus.datasource.password";

    private static final Logger LOG = Logger.getLogger(CarriedDatabaseSource.class);

    private final DatabaseSettings settings;
    private final int ordinal;

    CarriedDatabaseSource(DatabaseSettings settings, int ordinal) {
        this.settings = settings;
        this.ordinal = ordinal;
    }

    @Override
    public String getName() {
        return "the database carried by the program";
    }

    @Override
    public int getOrdinal() {
        return ordinal;
    }

    @Override
    public Set<String> getPropertyNames() {
        return Set.of();
    }

    @Override
    public Map<String, String> getProperties() {
        return Map.of();
    }

    @Override
    public String getValue(String name) {
        return switch (name) {
            case URL -> database().url();
            case PASSWORD -> database().password();
            default -> null;
        };
    }

    private RunningDatabase database() {
        try {
            return RunningDatabase.on(settings);
        } catch (DatabaseProblem e) {
            LOG.debug("The carried database cannot run", e);
            // Quarkus prints the message of this one alone, without a trace, and ends the program.
            throw new PreventFurtherStepsException(e.getMessage(), 1);
        }
    }
}
