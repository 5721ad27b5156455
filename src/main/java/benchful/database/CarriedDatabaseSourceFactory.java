package benchful.database;

import io.quarkus.runtime.ExecutionMode;
import io.smallrye.config.ConfigSourceContext;
import io.smallrye.config.ConfigSourceFactory;
import io.smallrye.config.ConfigValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.microprofile.config.spi.ConfigSource;

/**
 * Decides between the carried database and a server of the operator's: if a JDBC address is set anywhere, that is used and nothing
 * is started.
 */
public final class CarriedDatabaseSourceFactory implements ConfigSourceFactory {
    // Below the environment, the command line and application.properties: whatever is set there wins.
    private static final int ORDINAL = 50;

    @Override
    public Iterable<ConfigSource> getConfigSources(ConfigSourceContext context) {
        // The build reads settings too; it must neither start a server nor keep the address of one.
        boolean starting = ExecutionMode.current() == ExecutionMode.RUNTIME_INIT;
        if (!starting || setting(context, CarriedDatabaseSource.URL).isPresent()) {
            return List.of();
        }
        return List.of(new CarriedDatabaseSource(DatabaseSettings.from(name -> setting(context, name)), ORDINAL));
    }

    @Override
    public OptionalInt getPriority() {
        return OptionalInt.of(ORDINAL);
    }

    private static Optional<String> setting(ConfigSourceContext context, String name) {
        ConfigValue value = context.getValue(name);
        return Optional.ofNullable(value == null ? null : value.getValue()).filter(text -> !text.isBlank());
    }
}
