package benchful.backups.tables;

import benchful.backups.archive.BackupFault;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.flywaydb.core.api.resource.LoadableResource;
import org.postgresql.ds.PGSimpleDataSource;

/** Which migrations the program's tables have seen, and how a schema beside them is brought to the same or an earlier state. */
@ApplicationScoped
public class Migrations {
    private final Flyway program;
    private final Config settings;

    Migrations(Flyway program, Config settings) {
        this.program = program;
        this.settings = settings;
    }

    /** The versions that the stored tables have seen, in order. */
    public List<String> applied() {
        return versions(Arrays.stream(program.info().applied()));
    }

    /** @throws BackupFault where a backup has seen migrations that this program does not know */
    void requireKnown(List<String> seen) {
        Set<String> known = Set.copyOf(versions(Arrays.stream(program.info().all())));
        List<String> strange = seen.stream().filter(v -> !known.contains(v)).toList();
        if (!strange.isEmpty() || seen.isEmpty()) {
            throw new BackupFault("This backup was taken by a newer version of Benchful than the one that runs here (its tables are at"
                    + " version %s). Install that version or a later one, then put the backup back.".formatted(seen.isEmpty() ? "none" : strange.get(strange.size() - 1)));
        }
    }

    private static List<String> versions(Stream<MigrationInfo> migrations) {
        return migrations.map(MigrationInfo::getVersion).filter(v -> v != null).map(MigrationVersion::getVersion).distinct().toList();
    }

    /** Makes a schema with just these migrations. */
    public void build(String schema, List<String> seen) {
        ResourceProvider all = program.getConfiguration().getResourceProvider();
        Set<String> starts = seen.stream().map(v -> "V" + v + "__").collect(Collectors.toSet());
        migrate(configuration(schema).resourceProvider(new Some(all, starts)));
    }

    /** Applies the migrations that the schema has not seen yet. */
    void bringUpToDate(String schema) {
        migrate(configuration(schema));
    }

    private static void migrate(FluentConfiguration configuration) {
        try {
            configuration.load().migrate();
        } catch (FlywayException e) {
            throw new BackupFault("The tables for this backup could not be made beside the stored ones. On a database server of your own the"
                    + " program’s account needs the right to create a schema.", e);
        }
    }

    /** Sees nothing but the schema: a migration must not reach the program's own tables. */
    private FluentConfiguration configuration(String schema) {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setURL(settings.getValue("quarkus.datasource.jdbc.url", String.class));
        settings.getOptionalValue("quarkus.datasource.username", String.class).ifPresent(source::setUser);
        settings.getOptionalValue("quarkus.datasource.password", String.class).ifPresent(source::setPassword);
        source.setCurrentSchema(schema);
        return new FluentConfiguration(Thread.currentThread().getContextClassLoader())
                .configuration(program.getConfiguration())
                .resourceProvider(program.getConfiguration().getResourceProvider())
                .dataSource(source).schemas(schema).defaultSchema(schema).createSchemas(true).outOfOrder(true);
    }

    /** Only those of the program's migrations whose file names begin so. */
    private record Some(ResourceProvider all, Set<String> starts) implements ResourceProvider {
        @Override
        public LoadableResource getResource(String name) {
            return all.getResource(name);
        }

        @Override
        public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
            return all.getResources(prefix, suffixes).stream()
                    .filter(r -> starts.stream().anyMatch(r.getFilename()::startsWith)).toList();
        }
    }
}
