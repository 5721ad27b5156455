package benchful.database;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** The program's own database on the carried server, and the role that may use that and nothing else. */
final class ProgramDatabase {
    static final String NAME = "benchful";
    static final String ROLE = "benchful";

    private final ServerAddress server;

    ProgramDatabase(ServerAddress server) {
        this.server = server;
    }

    String url() {
        return server.url(NAME);
    }

    /**
     * Makes the role and the database where they are missing.
     *
     * @param recreated true empties the database first
     */
    void prepare(boolean recreated) throws SQLException {
        try (Connection connection = server.connect("postgres", PostgresCluster.KEEPER);
                Statement statement = connection.createStatement()) {
            if (isMissing(statement, "pg_roles where rolname = '" + ROLE + "'")) {
                statement.execute("create role " + ROLE + " login password '" + server.password() + "'");
            }
            if (recreated) {
                statement.execute("drop database if exists " + NAME + " with (force)");
            }
            if (isMissing(statement, "pg_database where datname = '" + NAME + "'")) {
                statement.execute("create database " + NAME + " owner " + ROLE);
            }
        }
    }

    private static boolean isMissing(Statement statement, String what) throws SQLException {
        try (ResultSet found = statement.executeQuery("select 1 from " + what)) {
            return !found.next();
        }
    }
}
