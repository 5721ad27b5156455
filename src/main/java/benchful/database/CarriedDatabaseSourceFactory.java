package benchful.database;

import io.quarkus.runtime.ExecutionMode;
import io.quarkus.runtime.configuration.ConfigurationException;
import io.smallrye.config.ConfigSourceContext;
import io.smallrye.config.ConfigSourceFactory;
import io.smallrye.config.ConfigValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.microprofile.config.spi.ConfigSource;
import org.jboss.logging.Logger;

/**
 * Decides between the carried database and a server of the operator's: if a JDBC address is set anywhere, that is used and
 * nothing is started.
 */
public final class CarriedDatabaseSourceFactory implements ConfigSourceFactory {
    private static final Logger LOG = Logger.getLogger(CarriedDatabaseSourceFactory.class);
    // Below the environment, the command line and application.properties: whatever is set there wins.
    private static final int ORDINAL = 50;

    @Override
    public Iterable<ConfigSource> getConfigSources(ConfigSourceContext context) {
        // The build reads settings too; it must neither start a server nor keep the address of one.
        boolean starting = ExecutionMode.current() == ExecutionMode.RUNTIME_INIT;
        if (!starting || setting(context, CarriedDatabaseSource.URL).isPresent()) {
            return List.of();
        }
        DatabaseSettings settings = DatabaseSettings.from(name -> setting(context, name));
        return List.of(new CarriedDatabaseSource(start(settings), ORDINAL));
    }

    @Override
    public OptionalInt getPriority() {
        return OptionalInt.of(ORDINAL);
    }

    private static RunningDatabase start(DatabaseSettings settings) {
        try {
            return RunningDatabase.on(settings);
        } catch (DatabaseProblem e) {
            LOG.debug("The carried database cannot run", e);
            // Quarkus prints the message of this one alone, without a trace, and ends the program.
            throw new ConfigurationException(e.getMessage());
        }
    }

    private static Optional<String> setting(ConfigSourceContext context, String name) {
        ConfigValue value = context.getValue(name);
        return Optional.ofNullable(value == null ? null : value.getValue()).filter(text -> !text.isBlank());
    }
}
