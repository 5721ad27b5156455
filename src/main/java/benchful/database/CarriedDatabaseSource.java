package benchful.database;

import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.config.spi.ConfigSource;

/** Answers where the carried database is. It lists no names: a list would show the password where settings are listed. */
final class CarriedDatabaseSource implements ConfigSource {
    static final String NAME = "the database carried by the program";
    static final String URL = "quarkus.datasource.jdbc.url";
    static final String PASSWORD = "quarkus.datasource.password";

    private final RunningDatabase database;
    private final int ordinal;

    CarriedDatabaseSource(RunningDatabase database, int ordinal) {
        this.database = database;
        this.ordinal = ordinal;
    }

    @Override
    public String getName() {
        return NAME;
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
            case URL -> database.url();
            case PASSWORD -> database.password();
            default -> null;
        };
    }
}
