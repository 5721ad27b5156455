package benchful.database;

import java.io.IOException;
import org.jboss.logging.Logger;

/**
 * The carried database of this Java process. It outlives the application: a reload in development and the restarts between tests
 * load every class anew, so what must be remembered stands in system properties.
 *
 * @param url      its JDBC address
 * @param password of the program's role
 */
record RunningDatabase(String url, String password) {
    private static final Logger LOG = Logger.getLogger(RunningDatabase.class);

    static synchronized RunningDatabase on(DatabaseSettings settings) {
        String name = "benchful.database.running[" + settings.folder() + "]";
        String url = System.getProperty(name + ".url");
        if (url != null) {
            return new RunningDatabase(url, System.getProperty(name + ".password"));
        }
        CarriedPostgres postgres = CarriedPostgres.start(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(postgres), "database-stop"));
        RunningDatabase database = new RunningDatabase(postgres.url(), postgres.password());
        System.setProperty(name + ".url", database.url());
        System.setProperty(name + ".password", database.password());
        return database;
    }

    private static void stop(CarriedPostgres postgres) {
        try {
            postgres.close();
        } catch (IOException e) {
            LOG.warn("PostgreSQL was not stopped; the next start will do it", e);
        }
    }
}
