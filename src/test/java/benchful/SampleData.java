package benchful;

import benchful.classes.CraftClass;
import benchful.samples.Samples;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;

/** The cast that page tests share: an empty database, or one with the sample classes and nothing else. */
@ApplicationScoped
public class SampleData {
    private static final String OWN_TABLES = """
            select quote_ident(tablename) from pg_tables
            where schemaname = 'public' and tablename not in ('flyway_schema_history', 'form_secret')""";

    private final EntityManager database;
    private final Samples samples;

    SampleData(EntityManager database, Samples samples) {
        this.database = database;
        this.samples = samples;
    }

    @Transactional
    public void nothing() {
        @SuppressWarnings("unchecked")
        List<String> tables = database.createNativeQuery(OWN_TABLES, String.class).getResultList();
        database.createNativeQuery("truncate " + String.join(", ", tables) + " restart identity cascade").executeUpdate();
    }

    @Transactional
    public void onlySamples() {
        nothing();
        samples.load();
    }

    /** Makes the database as an earlier version of the program, or something from outside, left it. */
    @Transactional
    public void sql(String statement) {
        database.createNativeQuery(statement).executeUpdate();
    }

    /** The identifier of the sample class whose title starts so. */
    @Transactional
    public long classTitled(String start) {
        return CraftClass.<CraftClass>listAll().stream().filter(c -> c.title().startsWith(start)).findFirst().orElseThrow().id();
    }
}
