package benchful;

import benchful.classes.CraftClass;
import benchful.database.TableMap;
import benchful.samples.Samples;
import benchful.web.Writing;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernate.Session;

/** The cast that page tests share: an empty database, or one with the sample classes and nothing else. */
@ApplicationScoped
public class SampleData {
    private static final String OWN_TABLES = """
            select quote_ident(tablename) from pg_tables
            where schemaname = 'public' and tablename not in ('flyway_schema_history', 'form_secret')""";

    /** PostgreSQL's error codes, class 40. */
    private static final String DEADLOCK = "40P01";
    private static final int TRIES = 5;
    private static final String ASIDE = "samples_put_aside";

    private final EntityManager database;
    private final Samples samples;

    private List<TableMap.Table> aside = List.of();

    SampleData(EntityManager database, Samples samples) {
        this.database = database;
        this.samples = samples;
    }

    @Transactional
    public void nothing() {
        @SuppressWarnings("unchecked")
        List<String> tables = database.createNativeQuery(OWN_TABLES, String.class).getResultList();
        String truncate = "truncate %s restart identity cascade".formatted(String.join(", ", tables));
        database.unwrap(Session.class).doWork(connection -> patiently(connection, truncate));
        Writing.use(Writing.BRITISH);
    }

    /** A page closed a moment ago may still be asked for: then each holds what the other wants, and this one tries again. */
    private static void patiently(Connection connection, String statement) throws SQLException {
        for (int tries = 1;; tries++) {
            try (Statement one = connection.createStatement()) {
                one.execute("savepoint before");
                try {
                    one.execute(statement);
                    return;
                } catch (SQLException e) {
                    one.execute("rollback to savepoint before");
                    if (!DEADLOCK.equals(e.getSQLState()) || tries == TRIES) {
                        throw e;
                    }
                }
            }
        }
    }

    /** They are loaded once while the program runs, and afterwards copied from where their rows were put aside. */
    @Transactional
    public void onlySamples() {
        nothing();
        if (aside.isEmpty()) {
            samples.load();
            database.flush();
            putAside();
        } else {
            aside.forEach(this::copyBack);
        }
    }

    private void putAside() {
        run("drop schema if exists %s cascade".formatted(ASIDE));
        run("create schema " + ASIDE);
        aside = database.unwrap(Session.class).doReturningWork(connection -> TableMap.of(connection, connection.getSchema())).tables();
        aside.forEach(table -> run("create table %s.%s as select %s from %2$s".formatted(ASIDE, table.name(), columns(table))));
    }

    private void copyBack(TableMap.Table table) {
        run("insert into %1$s (%2$s) select %2$s from %3$s.%1$s".formatted(table.name(), columns(table), ASIDE));
        table.numbered().ifPresent(number -> database.createNativeQuery(
                "select setval(pg_get_serial_sequence('%1$s', '%2$s'), (select max(%2$s) from %1$s)) where exists (select 1 from %1$s)"
                        .formatted(table.name(), number)).getResultList());
    }

    private static String columns(TableMap.Table table) {
        return table.columnNames().stream().map("\"%s\""::formatted).collect(Collectors.joining(", "));
    }

    private void run(String statement) {
        database.createNativeQuery(statement).executeUpdate();
    }

    /** Makes the database as an earlier version of the program, or something from outside, left it. */
    @Transactional
    public void sql(String statement) {
        run(statement);
    }

    /** The identifier of the sample class whose title starts so. */
    @Transactional
    public long classTitled(String start) {
        return CraftClass.<CraftClass>listAll().stream().filter(c -> c.title().startsWith(start)).findFirst().orElseThrow().id();
    }
}
